/** `witness-mark changeover`: a club's list of sightings in, what it says of the change out: as text, JSON or CSV, and as a timeline. */
import { writeFile } from "node:fs/promises";
import { OutsideError } from "../errors.ts";
import { chainTimeline } from "../pictures/chain-timeline.ts";
import { pngOf } from "../pictures/png.ts";
import { timeline } from "../pictures/timeline.ts";
import { type ChainFindings, chainFindings } from "./changeover/chain-findings.ts";
import { chainPictureOf } from "./changeover/chain-picture-of.ts";
import { type ChangeoverFindings, changeoverFindings } from "./changeover/findings.ts";
import { findingsAsCsv } from "./changeover/findings-as-csv.ts";
import { chainAsJson, findingsAsJson } from "./changeover/findings-as-json.ts";
import { optionRefusals } from "./changeover/phrases.ts";
import { pictureOf } from "./changeover/picture-of.ts";
import { pictureTable } from "./changeover/picture-table.ts";
import { type ChangeoverQuestion, changeoverOptions, openQuestion } from "./changeover/question.ts";
import { sayChain } from "./changeover/say-chain.ts";
import { sayFindings } from "./changeover/say-findings.ts";
import { readOptions, UsageError } from "./options.ts";

type Findings = ChangeoverFindings | ChainFindings;

export async function run(written: readonly string[]): Promise<void> {
  const options = readOptions("changeover", written, changeoverOptions);
  const { picture, json, csv } = options;
  if (json && csv) throw new UsageError(optionRefusals.twoForms, "changeover");
  if (picture !== undefined && !/\.(?:svg|png)$/iu.test(picture)) {
    throw new UsageError(optionRefusals.picture, "changeover");
  }
  const question = await openQuestion(options);
  const findings = question.chain.length > 0 ? chainFindings(question) : changeoverFindings(question);
  if (picture !== undefined) await keepPicture(picture, drawn(question, findings));
  if (csv) process.stdout.write(findingsAsCsv(question, findings));
  else if (json) process.stdout.write(`${JSON.stringify(asJson(question, findings))}\n`);
  else process.stdout.write(`${asText(question, findings, picture !== undefined).join("\n")}\n`);
}

function drawn(question: ChangeoverQuestion, findings: Findings): string {
  return findings.kind === "chain"
    ? chainTimeline(chainPictureOf(question, findings))
    : timeline(pictureOf(question, findings));
}

function asJson(question: ChangeoverQuestion, findings: Findings): object {
  return findings.kind === "chain" ? chainAsJson(question, findings) : findingsAsJson(question, findings);
}

function asText(question: ChangeoverQuestion, findings: Findings, hasPicture: boolean): readonly string[] {
  const said = findings.kind === "chain" ? sayChain(question, findings) : sayFindings(question, findings);
  return hasPicture ? [...said, "", ...pictureTable(question, findings)] : said;
}

async function keepPicture(file: string, svg: string): Promise<void> {
  try {
    await writeFile(file, /\.png$/iu.test(file) ? await pngOf(svg) : svg);
  } catch (error) {
    if (!(error instanceof Error && "code" in error)) throw error;
    throw new OutsideError(`--picture ${file}: cannot be written (${String(error.code)})`, error);
  }
}
