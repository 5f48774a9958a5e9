/** The reader's work in the light of the dialogue: short words that always work, bare answers, figures that are no sizes. */
import {
  type FeatureFinding,
  featureById,
  type Handbook,
  type Intent,
  type MessageReading,
  partById,
  type ReadingContext,
  readMessage,
  stateName,
} from "../../knowledge/index.ts";
import { plainWish } from "../commands/plain-words.ts";
import { answerOfCar } from "./answer-of-car.ts";
import type { Knowledge } from "./knowledge.ts";
import { withMonthOfBuild } from "./month-of-build.ts";

const supposing = /^\W*(and |but |so |let'?s )?(what if|suppose|supposing|imagine)\b/i;

/** Sizes side by side are told in a line. A story is not read a second time for them: its bare figures are left aside. */
const longestList = 400;

/** What the words say where the dialogue now stands. */
export function readWords(knowledge: Knowledge, text: string, context: ReadingContext): MessageReading {
  const read = withStatedMisbeliefs(readMessage(text, knowledge.lexicon, context));
  const wish = plainWish(text);
  if (wish !== undefined) return { ...read, findings: [], intents: [wish], isOpaque: false };
  if (supposing.test(text)) return supposed(read, text);
  if (asksForKinds(read, text)) return { ...read, intents: [kindsOf(read)], isOpaque: false };
  if (read.intents.length === 0 && whenAsked.test(text))
    return { ...read, findings: [], car: [], intents: [kindsOf(read)], isOpaque: false };
  const { askedFeature: _, ...unasked } = context;
  const named = () =>
    text.length > longestList ? [] : readMessage(text, knowledge.lexicon, unasked).findings;
  const spoken = { ...read, findings: soundFindings(knowledge.handbook, read, named) };
  const answered = answerOfCar(text, knowledge.lexicon, context, spoken);
  const car = withMonthOfBuild(text, answered.length === 0 ? spoken.car : answered, context.built);
  return car === spoken.car ? spoken : { ...spoken, car, isOpaque: false };
}

const kindsAsked = /\b(which|what|how many)\b.*\b(are|were) there\b|\blist of (all|the)\b/i;

/** "When did they change to the second spoiler?" is answered by the kinds with their times, and tells nothing. */
const whenAsked =
  /^\W*(?:(?:and|so|but|ok) )?(?:when|(?:what|which|from what|from which) (?:years?|months?|dates?))\b.*\b(?:change[ds]?|switch(?:ed)?|fit(?:ted)?|introduced?|start(?:ed)?|stop(?:ped)?|made|used?|come|came|get|got|have|had)\b/i;

/** "Which spoilers are there?" asks for the kinds, whatever the part is called. */
function asksForKinds({ intents, findings, car }: MessageReading, text: string): boolean {
  return intents.length + findings.length + car.length === 0 && kindsAsked.test(text);
}

function kindsOf({ parts }: MessageReading): Intent {
  return { kind: "list-variants", part: parts[0]?.part ?? null };
}

// A belief is a rule about all cars; "rear spoiler, six screws, no drains" only describes one.
const ruling =
  /\b(mean|means|meant|always|never|every|all|only|must|if|cannot|came|replaced|introduced|were|are|have|would)\b/i;

/** Without misbeliefs found in words that state no rule: a plain description is evidence, not a belief. */
function withStatedMisbeliefs(reading: MessageReading): MessageReading {
  return { ...reading, misbeliefs: reading.misbeliefs.filter(({ words }) => ruling.test(words)) };
}

/**
 * Without what was read into a message that says something else: its whole length as a short answer beside other
 * findings or a wish ("case 2"), a bare figure of a date, the very words of a misbelief. `named`: what the words say whatever is asked;
 * "1180 wide, 62 high" names its sizes, and "4 studs" says none.
 */
function soundFindings(
  handbook: Handbook,
  reading: MessageReading,
  named: () => readonly FeatureFinding[],
): readonly FeatureFinding[] {
  const { findings, car, intents, misbeliefs, shownText } = reading;
  if (intents.some((intent) => intent.kind === "switch-case")) return [];
  const isWish = intents.some((intent) => !answering.has(intent.kind));
  const isDated = car.length > 0 || findings.some(({ value }) => value.kind === "date");
  const isDoubtful = ({ words, value }: FeatureFinding) =>
    value.kind === "measurement" &&
    value.unit === null &&
    (isDated || (findings.length > 1 && !/\p{L}/u.test(words)));
  const sure = findings.some(isDoubtful) ? named() : [];
  const isNamed = ({ feature, value }: FeatureFinding) =>
    sure.some((one) => one.feature === feature && JSON.stringify(one.value) === JSON.stringify(value));
  return findings.filter((finding) => {
    const { words } = finding;
    const isGuess = lettersOf(words) === lettersOf(shownText) && !namesItsState(handbook, finding);
    if (isGuess && (isWish || findings.length > 1 || car.length > 0)) return false;
    if (isDoubtful(finding) && !isNamed(finding)) return false;
    return !misbeliefs.some((misbelief) => lettersOf(misbelief.words).includes(lettersOf(words)));
  });
}

/** Whether the words hold a word of the state's own name, and so are more than a figure or a "yes". */
function namesItsState(
  handbook: Handbook,
  { part: partId, feature: id, value, words }: FeatureFinding,
): boolean {
  const part = partId === null ? undefined : partById(handbook, partId);
  const feature = part && featureById(part, id);
  if (feature === undefined || value.kind !== "state") return false;
  const said = lettersOf(words).split(" ");
  return lettersOf(stateName(feature, value.state))
    .split(" ")
    .some((word) => word.length > 3 && said.includes(word));
}

/** Wishes that are themselves a way of answering, or go well with an answer. */
const answering: ReadonlySet<string> = new Set(["yes", "no", "cannot-tell", "goal", "small-talk"]);

function lettersOf(words: string): string {
  return words
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}

/** What is only supposed is no evidence, and is not dropped in silence. */
function supposed(spoken: MessageReading, text: string): MessageReading {
  const leftAside = [...spoken.leftAside, { words: text, because: "question" } as const];
  return { ...spoken, findings: [], car: [], leftAside, isOpaque: false };
}
