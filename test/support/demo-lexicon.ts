/** The demo handbook compiled for reading, once for all tests of the language room. */
import { fileURLToPath } from "node:url";
import { readHandbookFolder } from "../../adapters/handbook-folder/index.ts";
import { monthInterval } from "../../knowledge/calendar/interval.ts";
import type { HandbookFile } from "../../knowledge/handbook/handbook-file.ts";
import { loadHandbook } from "../../knowledge/handbook/load-handbook.ts";
import { compileLexicon, type Lexicon } from "../../knowledge/language/lexicon.ts";

const folder = fileURLToPath(new URL("../../knowledge/handbooks/wexcombe-shrike", import.meta.url));

export async function demoLexicon(): Promise<Lexicon> {
  return lexiconOf(() => true);
}

/** The same as if no words of its states had been learnt; the file with those that were is not even read. */
export async function plainDemoLexicon(): Promise<Lexicon> {
  return lexiconOf(({ path }) => path !== "learnt-words.json");
}

async function lexiconOf(isWanted: (file: HandbookFile) => boolean): Promise<Lexicon> {
  const reading = await readHandbookFolder(folder);
  const loaded = reading.ok ? loadHandbook(reading.files.filter(isWanted)) : reading;
  if (!loaded.ok) throw new Error(`the demo handbook does not load: ${JSON.stringify(loaded).slice(0, 300)}`);
  return compileLexicon(loaded.handbook);
}

/** "Today" of the tests. */
export const testToday = monthInterval(2025, 6);
