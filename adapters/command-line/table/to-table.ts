/** `table to FILE`: the claims of one part kind or of all, as CSV or XLSX. */
import { partById, tableOfPart } from "../../../knowledge/index.ts";
import { demonstrationHandbook } from "../../configuration.ts";
import { openHandbook } from "../../handbooks.ts";
import { writeSheets } from "../../spreadsheets/index.ts";
import { fileOf } from "../file-of.ts";
import { readOptions } from "../options.ts";
import { unknownPart } from "../unknown-part.ts";

export async function run(words: readonly string[]): Promise<void> {
  const { file, rest } = fileOf("table", words);
  const options = readOptions("table", rest, { handbook: "text", part: "text" });
  const { handbook } = await openHandbook(options.handbook ?? demonstrationHandbook);
  const only = options.part === undefined ? undefined : partById(handbook, options.part);
  if (options.part !== undefined && only === undefined) throw unknownPart(handbook, options.part);
  const parts = only === undefined ? handbook.parts : [only];
  await writeSheets(file, parts.map(tableOfPart));
  const variants = parts.reduce((sum, part) => sum + part.variants.length, 0);
  process.stdout.write(`${file}: ${parts.map(({ id }) => id).join(", ")}; ${variants} variants\n`);
}
