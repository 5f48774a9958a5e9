/**
 * The names of a handbook as stems. The same few names are asked for again and again, by every word of a message that may be one
 * of them and by every word of every other name while a handbook is compiled: cut up once, they take a third of the time.
 */
import { cleanText } from "./clean-text.ts";
import { glueWords } from "./common-words.ts";
import { tokenise } from "./tokens.ts";

/** As many names as a large handbook has. A full cache is emptied: its values are the same each time. */
const MOST_KNOWN = 5000;

/** Stems of a name in order, without glue words unless nothing else is left. */
export const stemsOf = remembered((name) => {
  const tokens = tokenise(cleanText(name).text);
  const telling = tokens.filter((token) => !glueWords.has(token.folded));
  return (telling.length > 0 ? telling : tokens).map((token) => token.stem);
});

/** Stems of a name as it is written, in order, without glue words; none when it has no others. */
export const tellingStems = remembered((name) =>
  tokenise(name)
    .filter((token) => !glueWords.has(token.folded))
    .map((token) => token.stem),
);

function remembered(work: (name: string) => readonly string[]): (name: string) => readonly string[] {
  const known = new Map<string, readonly string[]>();
  return (name) => {
    const before = known.get(name);
    if (before !== undefined) return before;
    const stems = work(name);
    if (known.size >= MOST_KNOWN) known.clear();
    known.set(name, stems);
    return stems;
  };
}
