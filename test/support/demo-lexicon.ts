/** The demo handbook compiled for reading, once for all tests of the language room. */
import { fileURLToPath } from "node:url";
import { loadHandbookFolder } from "../../adapters/handbook-folder/index.ts";
import { monthInterval } from "../../knowledge/calendar/interval.ts";
import { compileLexicon, type Lexicon } from "../../knowledge/language/lexicon.ts";

const folder = fileURLToPath(new URL("../../knowledge/handbooks/wexcombe-shrike", import.meta.url));

export async function demoLexicon(): Promise<Lexicon> {
  const loaded = await loadHandbookFolder(folder);
  if (!loaded.ok) throw new Error(`the demo handbook does not load: ${JSON.stringify(loaded).slice(0, 300)}`);
  return compileLexicon(loaded.handbook);
}

/** "Today" of the tests. */
export const testToday = monthInterval(2025, 6);
