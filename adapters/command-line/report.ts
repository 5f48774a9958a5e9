/** `witness-mark report`: how well a handbook tells things apart, and what its historians might write next; as text and as a page. */
import { writeFile } from "node:fs/promises";
import { partById } from "../../knowledge/index.ts";
import { demonstrationHandbook } from "../configuration.ts";
import { OutsideError } from "../errors.ts";
import { openHandbook } from "../handbooks.ts";
import { readOptions, UsageError } from "./options.ts";
import { reportAsPage } from "./report/as-page.ts";
import { reportAsText } from "./report/as-text.ts";
import { partReport } from "./report/part-report.ts";
import { unknownPart } from "./unknown-part.ts";
import { wholeNumber } from "./whole-number.ts";

export async function run(written: readonly string[]): Promise<void> {
  const options = readOptions("report", written, {
    handbook: "text",
    part: "text",
    n: "text",
    seed: "text",
    page: "text",
  });
  const { page } = options;
  if (page !== undefined && !/\.html?$/iu.test(page)) {
    throw new UsageError("--page: a file name that ends in .html is needed", "report");
  }
  const cases = wholeNumber("report", "n", options.n, { from: 1, to: 100_000, otherwise: 1000 });
  const seed = wholeNumber("report", "seed", options.seed, {
    from: 0,
    to: Number.MAX_SAFE_INTEGER,
    otherwise: 1,
  });
  const { handbook } = await openHandbook(options.handbook ?? demonstrationHandbook);
  const only = options.part === undefined ? undefined : partById(handbook, options.part);
  if (options.part !== undefined && only === undefined) throw unknownPart(handbook, options.part);
  const parts = only === undefined ? handbook.parts : [only];
  const reports = parts.map((part) => partReport(handbook, part, cases, seed));
  const lines = reports.flatMap((report) => [...reportAsText(report), ""]);
  if (page !== undefined) {
    await keep(page, reportAsPage(handbook, reports));
    lines.push(`written: ${page}`);
  }
  process.stdout.write(`${lines.join("\n").trimEnd()}\n`);
}

async function keep(file: string, page: string): Promise<void> {
  try {
    await writeFile(file, page);
  } catch (failure) {
    throw new OutsideError(`${file}: cannot be written`, failure);
  }
}
