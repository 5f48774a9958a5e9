/** All that a message about the mirror says, a line each, as long as the judge takes whatever is put before it. */
import type { Judging } from "../../knowledge/language/judging.ts";
import type { MessageReading } from "../../knowledge/language/message-reading.ts";
import { readMessage } from "../../knowledge/language/read-message.ts";
import { carInWords, findingsInWords, intentsInWords } from "./reading-in-words.ts";
import { tarnToday } from "./tarn-lexicon.ts";
import { mirrorLexicon } from "./tarn-mirror.ts";
import { judgedBy } from "./weighing.ts";

const lexicon = mirrorLexicon();

export function readMirror(text: string, about = "mirror", judging: Partial<Judging> = {}): MessageReading {
  const [part, askedFeature] = about.split(" ");
  return readMessage(text, judgedBy(lexicon, judging), {
    today: tarnToday,
    ...(part === undefined || part === "" ? {} : { part }),
    ...(askedFeature === undefined ? {} : { askedFeature }),
  });
}

export function inLines(reading: MessageReading): readonly string[] {
  const { parts, variants, misbeliefs, leftAside, inDoubt, nearMisses, isOpaque, isCut } = reading;
  return [
    ...parts.map(({ part, words }) => `part ${part}: ${words}`),
    ...findingsInWords(reading),
    ...carInWords(reading),
    ...variants.map(({ part, variant, as, words }) => `${part} ${variant} as ${as}: ${words}`),
    ...intentsInWords(reading),
    ...misbeliefs.map(({ part, misbelief, words }) => `${part} ${misbelief}: ${words}`),
    ...leftAside.map(({ because, words }) => `aside, ${because}: ${words}`),
    ...inDoubt.map(({ part, feature, state, words }) => `in doubt, ${part} ${feature} ${state}: ${words}`),
    ...nearMisses.map(({ words, meant }) => `${words}, near ${meant}`),
    ...(isCut === true ? ["cut"] : []),
    ...(isOpaque ? ["opaque"] : []),
  ];
}

/** A message "(about what, where not the mirror)", and in the lines below what it says. */
export const readings = (table: string): readonly (readonly [string, string, readonly string[]])[] =>
  table
    .trim()
    .split(/\n\s*\n/)
    .map((block) => {
      const [first = "", ...lines] = block.split("\n").map((line) => line.trim());
      const [, text = "", about = "mirror"] = /^(.+?)(?: \(([\w -]*)\))?$/.exec(first) ?? [];
      return [text, about, lines];
    });
