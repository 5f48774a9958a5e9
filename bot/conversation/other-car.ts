/**
 * "New case: my other car …", "I have another car: built May 1978": the speaker's own other car. It is neither the car of the case in hand,
 * whose date it must not change, nor somebody else's, whose facts are left aside.
 */
import type { MessageReading } from "../../knowledge/index.ts";

const otherCar =
  /\b(?:another|(?:my|our) (?:other|second|third|next)|an? (?:second|third|different|further)) car\b/giu;
const owned =
  /\b(?:i|we)(?: also)?(?:['’]ve| have| own| got| bought)\b[^.;:!?\n]{0,30}\b(?:another|second|third|different|further) car\b/iu;

/** The message read as being about that car, in a case of its own; undefined when it speaks of no such car. */
export function readOfOtherCar(
  text: string,
  reading: MessageReading,
  read: (words: string) => MessageReading,
): MessageReading | undefined {
  if (text.search(otherCar) < 0) return undefined;
  const isOpening = reading.intents.some(({ kind }) => kind === "new-case");
  if (!(isOpening || owned.test(text))) return undefined;
  const ofIt = read(text.replace(otherCar, "my car"));
  if (isOpening) return ofIt;
  // Without a word of a new case, only what is told of the car makes one of it.
  return ofIt.car.length === 0 ? undefined : { ...ofIt, intents: [...ofIt.intents, { kind: "new-case" }] };
}
