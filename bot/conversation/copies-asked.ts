/** "How can I tell if it is a repro?" asks what tells a genuine part from its copies, not how the open question is checked. */
import type { Intent, MessageReading } from "../../knowledge/index.ts";

const copyWords =
  /\b(re-?pros?|reproductions?|cop(y|ies)|fakes?|replicas?|re-?makes?|genuine|originals?|legit|authentic|real (one|thing|deal))\b/i;

/** Whether the message asks by what a genuine part differs from copies, without naming a feature or a kind. */
export function asksForCopies({ intents }: MessageReading, text: string): boolean {
  return copyWords.test(text) && (intents.some(isOpenAsking) || givesAway.test(text));
}

/** "What gives a fake away?" */
const givesAway = /^\W*(?:and |so )?what\b.*\b(?:gives?|tells?|shows?)\b.*\b(?:away|from)\b/iu;

/** The reading with that question as its goal. */
export function towardsGenuine(reading: MessageReading): MessageReading {
  const others = reading.intents.filter((intent) => !isOpenAsking(intent) && intent.kind !== "goal");
  return { ...reading, intents: [...others, { kind: "goal", goal: "genuine", words: "" }], leftAside: [] };
}

function isOpenAsking(intent: Intent): boolean {
  if (intent.kind === "how-to-check") return intent.feature === undefined;
  return intent.kind === "compare" && intent.variants.length === 0;
}
