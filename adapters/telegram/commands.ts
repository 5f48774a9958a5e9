/**
 * The commands that Telegram lists, and the words each one stands for. A command is only a handle for words that can be typed as well,
 * so a new one is one line here.
 */
import type { Described } from "./phrases.ts";

export interface Command {
  readonly name: string;
  readonly for: "members" | "keepers";
  /** Said to the bot; what stands behind the command is put after it, unless the words are the whole of it. */
  readonly words: string;
  readonly isWhole?: true;
  readonly description: Described;
}

export const commands: readonly Command[] = [
  member("ask", "", "ask about a part, or in reply to somebody's post", "nach einem Teil fragen"),
  member("help", "help", "what I can tell you", "was ich sagen kann"),
  member("why", "why this?", "why the question is asked", "warum gefragt wird"),
  member("check", "how do I check?", "how to look", "wie man nachsieht"),
  member("undo", "undo", "take the last answer back", "die letzte Antwort zurücknehmen"),
  member("startover", "start over", "put everything said aside", "von vorn beginnen"),
  member("compare", "compare", "two kinds side by side", "zwei Arten nebeneinander"),
  member("cases", "cases", "your cases", "deine Fälle"),
  member("photographs", "photographs", "what to photograph", "was zu fotografieren ist"),
  member("sources", "sources", "the sources behind an answer", "die Quellen einer Antwort"),
  member("pins", "pins", "pinned answers", "angeheftete Antworten"),
  member("showpin", "pin", "one pinned answer, by its number", "eine angeheftete Antwort"),
  member("observe", "record an observation", "record what you saw on a car", "eine Beobachtung eintragen"),
  member("observations", "observations", "observations of this club", "Beobachtungen des Clubs"),
  member("changeovers", "changeovers", "when one kind gave way to another", "wann eine Art wechselte"),
  member("carswanted", "cars wanted", "which cars would tell most", "welche Autos am meisten zeigen"),
  member("carsheet", "car sheet", "all that is known of your car", "alles über dein Auto"),
  member(
    "sharecarsheet",
    "share car sheet",
    "show your car sheet to others",
    "das Blatt deines Autos zeigen",
  ),
  member(
    "stopsharing",
    "stop sharing car sheet",
    "show your car sheet to nobody",
    "das Blatt nicht mehr zeigen",
  ),
  {
    ...member("askkeeper", "ask a keeper", "hand your case to a keeper", "den Fall einem Kundigen geben"),
    isWhole: true,
  },
  member("reply", "reply", "reply to a keeper, by the case's number", "einem Kundigen antworten"),
  member("keepers", "keepers", "who the keepers are", "wer die Kundigen sind"),
  member("redeem", "redeem", "take up an invitation", "eine Einladung annehmen"),
  member("mine", "mine", "what I keep of you", "was ich von dir habe"),
  member("export", "export mine", "all of it as a file", "alles davon als Datei"),
  member("erase", "erase mine", "have it erased", "es löschen lassen"),
  keeper("pin", "pin this:", "pin an answer", "eine Antwort anheften"),
  keeper("withdraw", "withdraw pin", "withdraw a pinned answer", "eine Antwort zurückziehen"),
  keeper("replace", "replace pin", "replace a pinned answer", "eine Antwort ersetzen"),
  keeper("queue", "keepers' queue", "what waits for a keeper", "was auf Kundige wartet"),
  keeper("answer", "answer", "answer a case by its number", "einen Fall beantworten"),
  keeper("askback", "ask back", "ask back about a case", "zu einem Fall zurückfragen"),
  keeper("close", "close", "close a case, with the reason", "einen Fall schließen"),
  keeper("observation", "observation", "one observation, by its number", "eine Beobachtung"),
  keeper("accept", "accept observation", "accept an observation", "eine Beobachtung annehmen"),
  keeper(
    "decline",
    "decline observation",
    "decline an observation, with the reason",
    "eine Beobachtung ablehnen",
  ),
  keeper("openquestions", "open questions", "questions the club could settle", "offene Fragen"),
  keeper("invite", "invite a keeper", "invite a keeper", "einen Kundigen einladen"),
  keeper("audit", "audit", "who changed what", "wer was geändert hat"),
  keeper("settings", "settings", "the club's settings", "Einstellungen des Clubs"),
  keeper("keepershere", "", "the keepers meet in this chat or topic", "die Kundigen treffen sich hier"),
  keeper("keepersgroup", "", "the keepers meet in another group", "die Kundigen treffen sich anderswo"),
  keeper("listen", "", "read everything in this chat or topic", "hier alles mitlesen"),
  keeper("listenless", "", "answer only when called by name", "nur auf Anruf antworten"),
];

function member(name: string, words: string, en: string, de: string): Command {
  return { name, for: "members", words, description: { en, de } };
}

function keeper(name: string, words: string, en: string, de: string): Command {
  return { name, for: "keepers", words, description: { en, de } };
}

/** What the platform sends when somebody opens a private chat. */
const opening = "start";

/** The words that a command with what stands behind it says; undefined for a command that is none of ours. */
export function wordsOfCommand(name: string, rest: string): string | undefined {
  if (name === opening) return "help";
  const command = commands.find((one) => one.name === name);
  if (command === undefined) return undefined;
  return command.isWhole === true ? command.words : `${command.words} ${rest}`.trim();
}
