// The main noun of a feature standing by itself ("the mark", "any coat"): which feature it names, if it is not the
// noun of something else ("lathe marks", "flow coat").
import { commonWords, glueWords } from "./common-words.ts";
import type { MessageView } from "./message-view.ts";

/** The feature whose main noun stands at a token; undefined when the word before it makes it another thing. */
export function headFeatureAt(view: MessageView, part: string, at: number): string | undefined {
  const token = view.tokens[at];
  const words = view.lexicon.parts.get(part);
  const feature = token === undefined ? undefined : words?.heads.get(token.stem);
  return feature === undefined || isOtherKind(view, part, at, feature) ? undefined : feature;
}

/** Whether the word right before is a telling one that the feature's names do not hold. */
export function isOtherKind(view: MessageView, part: string, at: number, feature: string): boolean {
  const before = view.tokens[at - 1];
  if (before === undefined || view.tokens[at]?.breakBefore !== "none") return false;
  if (glueWords.has(before.folded) || commonWords.has(before.folded)) return false;
  const words = view.lexicon.parts.get(part);
  const isStateWord = words?.features.get(feature)?.tellingWords.has(before.stem) === true;
  return !isStateWord && words?.cues.get(before.stem)?.has(feature) !== true;
}
