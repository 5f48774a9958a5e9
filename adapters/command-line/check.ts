/**
 * `witness-mark check`: everything somebody who knows the trade would remark on in a handbook, for people, scripts or editors.
 * Status 2 when it cannot be served, or, with --strict, when a doubt is left.
 */
import { relative, sep } from "node:path";
import { type Review, reviewHandbook } from "../../knowledge/index.ts";
import { demonstrationHandbook } from "../configuration.ts";
import { OutsideError } from "../errors.ts";
import { readHandbookFolder } from "../handbook-folder/index.ts";
import { remarksAsJson } from "./check/remarks-as-json.ts";
import { remarksAsSarif } from "./check/remarks-as-sarif.ts";
import { countOf, remarksAsText } from "./check/remarks-as-text.ts";
import { readOptions, UsageError } from "./options.ts";

export async function run(written: readonly string[]): Promise<void> {
  const options = readOptions("check", written, {
    handbook: "text",
    json: "flag",
    sarif: "flag",
    strict: "flag",
  });
  const { handbook: folder = demonstrationHandbook, json, sarif, strict } = options;
  if (json && sarif) throw new UsageError("--json or --sarif, not both", "check");
  const review = await reviewFolder(folder);
  const base = relative(process.cwd(), folder).split(sep).join("/");
  if (sarif) process.stdout.write(`${remarksAsSarif(base, review)}\n`);
  else if (json) process.stdout.write(`${remarksAsJson(folder, review)}\n`);
  else process.stdout.write(`${remarksAsText(folder, review).join("\n")}\n`);

  const faults = countOf(review.remarks, "fault");
  if (faults > 0) throw new OutsideError(`handbook ${folder}: ${faults} to mend`);
  const doubts = countOf(review.remarks, "doubt");
  if (strict && doubts > 0) throw new OutsideError(`handbook ${folder}: ${doubts} in doubt`);
}

async function reviewFolder(folder: string): Promise<Review> {
  const reading = await readHandbookFolder(folder);
  if (reading.ok) return reviewHandbook(reading.files);
  const remarks = reading.problems.map((problem) => ({ severity: "fault" as const, ...problem }));
  return { loaded: reading, remarks };
}
