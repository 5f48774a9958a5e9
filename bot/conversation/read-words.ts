/** The reader's work in the light of the dialogue: short words that always work, bare answers, figures that are no sizes. */
import { type MessageReading, type ReadingContext, readMessage } from "../../knowledge/index.ts";
import { plainWish } from "../commands/plain-words.ts";
import { answerOfCar } from "./answer-of-car.ts";
import type { Knowledge } from "./knowledge.ts";

const supposing = /^\W*(and |but |so )?(what if|suppose|supposing)\b/i;

/** What the words say where the dialogue now stands. */
export function readWords(knowledge: Knowledge, text: string, context: ReadingContext): MessageReading {
  const spoken = readMessage(text, knowledge.lexicon, context);
  const wish = plainWish(text);
  if (wish !== undefined) return { ...spoken, findings: [], intents: [wish], isOpaque: false };
  if (supposing.test(text)) return supposed(spoken, text);
  // "case 2" is no measurement, whatever question is open.
  if (spoken.intents.some((intent) => intent.kind === "switch-case")) return { ...spoken, findings: [] };
  if (spoken.car.length > 0) return { ...spoken, findings: spoken.findings.filter(hasUnit) };
  const car = answerOfCar(text, knowledge.lexicon, context, spoken);
  return car.length === 0 ? spoken : { ...spoken, car, isOpaque: false };
}

/** Beside a date ("built June 79") a bare figure belongs to the date. */
function hasUnit({ value }: MessageReading["findings"][number]): boolean {
  return value.kind !== "measurement" || value.unit !== null;
}

/** What is only supposed is no evidence, and is not dropped in silence. */
function supposed(spoken: MessageReading, text: string): MessageReading {
  const leftAside = [...spoken.leftAside, { words: text, because: "question" } as const];
  return { ...spoken, findings: [], car: [], leftAside, isOpaque: false };
}
