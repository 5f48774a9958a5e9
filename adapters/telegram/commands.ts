/**
 * The commands that Telegram lists, and the words each one stands for. A command is only a handle for words that can be typed as well,
 * so a new one is one line here.
 */
import type { Described } from "./phrases.ts";

export interface Command {
  readonly name: string;
  readonly for: "members" | "keepers";
  /** Said to the bot; what stands behind the command is put after it. */
  readonly words: string;
  /** The words are the whole of it: what stands behind is left aside. */
  readonly isWhole?: true;
  /** Something must stand behind it, for example this: a command that is touched in the list is sent alone. */
  readonly example?: string;
  /** The words with what stands behind, where that is said otherwise. */
  readonly with?: (rest: string) => string;
  readonly description: Described;
}

type More = Partial<Pick<Command, "isWhole" | "example" | "with">>;

const whole: More = { isWhole: true };

export const commands: readonly Command[] = [
  member("ask", "", "ask about a part, or in reply to somebody's post", "nach einem Teil fragen"),
  member("help", "help", "what I can tell you", "was ich sagen kann", whole),
  member("why", "why this?", "why the question is asked", "warum gefragt wird", whole),
  member("check", "how do I check?", "how to look", "wie man nachsieht", whole),
  member("undo", "undo", "take the last answer back", "die letzte Antwort zurücknehmen", whole),
  member("startover", "start over", "put everything said aside", "von vorn beginnen", whole),
  member("compare", "compare", "two kinds side by side", "zwei Arten nebeneinander"),
  member("cases", "cases", "your cases", "deine Fälle", whole),
  member("photographs", "photographs", "what to photograph", "was zu fotografieren ist", {
    with: (part) => `what photographs should I ask for of the ${part}`,
  }),
  member("sources", "sources", "the sources behind an answer", "die Quellen einer Antwort", whole),
  member("pins", "pins", "pinned answers", "angeheftete Antworten", {
    with: (words) => `pins about ${words}`,
  }),
  member("showpin", "pin", "one pinned answer, by its number", "eine angeheftete Antwort", {
    example: "4rz2-9kd1",
  }),
  member(
    "observe",
    "record an observation",
    "record what you saw on a car",
    "eine Beobachtung eintragen",
    whole,
  ),
  member("observations", "observations", "observations of this club", "Beobachtungen des Clubs", whole),
  member("changeovers", "changeovers", "when one kind gave way to another", "wann eine Art wechselte", {
    with: (part) => `changeovers of the ${part}`,
  }),
  member("carswanted", "cars wanted", "which cars would tell most", "welche Autos am meisten zeigen", {
    with: (part) => `cars wanted for the ${part}`,
  }),
  member("carsheet", "car sheet", "all that is known of your car", "alles über dein Auto", whole),
  member(
    "sharecarsheet",
    "share car sheet",
    "show your car sheet to others",
    "das Blatt deines Autos zeigen",
    whole,
  ),
  member(
    "stopsharing",
    "stop sharing car sheet",
    "show your car sheet to nobody",
    "das Blatt nicht mehr zeigen",
    whole,
  ),
  member("askkeeper", "ask a keeper", "hand your case to a keeper", "den Fall einem Kundigen geben", {
    with: (words) => `ask a keeper: ${words}`,
  }),
  member("reply", "reply", "reply to a keeper, by the case's number", "einem Kundigen antworten", {
    example: "4rz2-9kd1: it has three screws",
  }),
  member("keepers", "keepers", "who the keepers are", "wer die Kundigen sind", whole),
  member("redeem", "redeem", "take up an invitation", "eine Einladung annehmen", {
    example: "d5f6f47356567df69931",
  }),
  member("mine", "mine", "what I keep of you", "was ich von dir habe", whole),
  member("export", "export mine", "all of it as a file", "alles davon als Datei", whole),
  member("erase", "erase mine", "have it erased", "es löschen lassen", whole),
  keeper("pin", "pin this:", "pin an answer", "eine Antwort anheften", {
    example: "two screws: the first type",
  }),
  keeper("withdraw", "withdraw pin", "withdraw a pinned answer", "eine Antwort zurückziehen", {
    example: "4rz2-9kd1",
  }),
  keeper("replace", "replace pin", "replace a pinned answer", "eine Antwort ersetzen", {
    example: "4rz2-9kd1: the new words",
  }),
  keeper("queue", "keepers' queue", "what waits for a keeper", "was auf Kundige wartet", whole),
  keeper("answer", "answer", "answer a case by its number", "einen Fall beantworten", {
    example: "4rz2-9kd1: the first type, by its screws",
  }),
  keeper("askback", "ask back", "ask back about a case", "zu einem Fall zurückfragen", {
    example: "4rz2-9kd1: how many screws has it?",
  }),
  keeper("close", "close", "close a case, with the reason", "einen Fall schließen", {
    example: "4rz2-9kd1: asked twice",
  }),
  keeper("observation", "observation", "one observation, by its number", "eine Beobachtung", {
    example: "4rz2-9kd1",
  }),
  keeper("accept", "accept observation", "accept an observation", "eine Beobachtung annehmen", {
    example: "4rz2-9kd1",
  }),
  keeper(
    "decline",
    "decline observation",
    "decline an observation, with the reason",
    "eine Beobachtung ablehnen",
    { example: "4rz2-9kd1: the car was rebuilt" },
  ),
  keeper("openquestions", "open questions", "questions the club could settle", "offene Fragen", whole),
  keeper("invite", "invite a keeper", "invite a keeper", "einen Kundigen einladen", whole),
  keeper("audit", "audit", "who changed what", "wer was geändert hat", whole),
  keeper("settings", "settings", "the club's settings", "Einstellungen des Clubs", {
    with: (words) => (/^(?:set|forget|keep)\b/iu.test(words) ? words : `set ${words}`),
  }),
  keeper("keepershere", "", "the keepers meet in this chat or topic", "die Kundigen treffen sich hier"),
  keeper("keepersgroup", "", "the keepers meet in another group", "die Kundigen treffen sich anderswo"),
  keeper("listen", "", "read everything in this chat or topic", "hier alles mitlesen"),
  keeper("listenless", "", "answer only when called by name", "nur auf Anruf antworten"),
];

function member(name: string, words: string, en: string, de: string, more: More = {}): Command {
  return { name, for: "members", words, ...more, description: { en, de } };
}

function keeper(name: string, words: string, en: string, de: string, more: More = {}): Command {
  return { name, for: "keepers", words, ...more, description: { en, de } };
}

/** What the platform sends when somebody opens a private chat. */
const opening = "start";

/** The words that a command with what stands behind it says; undefined for a command that is none of ours. */
export function wordsOfCommand(name: string, rest: string): string | undefined {
  if (name === opening) return "help";
  const command = commandNamed(name);
  if (command === undefined) return undefined;
  if (command.isWhole === true || rest === "") return command.words;
  return command.with?.(rest) ?? `${command.words} ${rest}`.trim();
}

/** What must stand behind a command that was sent alone, by an example of the whole; undefined where nothing must. */
export function exampleOfCommand(name: string): string | undefined {
  const example = commandNamed(name)?.example;
  return example === undefined ? undefined : `/${name} ${example}`;
}

function commandNamed(name: string): Command | undefined {
  return commands.find((one) => one.name === name);
}
