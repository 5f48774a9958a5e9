/** `witness-mark changeover`: a club's list of sightings in, what it says of the change out: as text, as JSON, as a timeline. */
import { writeFile } from "node:fs/promises";
import { OutsideError } from "../errors.ts";
import { timeline } from "../pictures/timeline.ts";
import { chainFindings } from "./changeover/chain-findings.ts";
import { changeoverFindings } from "./changeover/findings.ts";
import { findingsAsJson } from "./changeover/findings-as-json.ts";
import { optionRefusals } from "./changeover/phrases.ts";
import { pictureOf, pictureTable } from "./changeover/picture-of.ts";
import { changeoverOptions, openQuestion } from "./changeover/question.ts";
import { chainAsJson, sayChain } from "./changeover/say-chain.ts";
import { sayFindings } from "./changeover/say-findings.ts";
import { readOptions, UsageError } from "./options.ts";

export async function run(written: readonly string[]): Promise<void> {
  const options = readOptions("changeover", written, changeoverOptions);
  const { picture, json } = options;
  if (picture !== undefined && !/\.svg$/iu.test(picture)) {
    throw new UsageError("--picture: a file name that ends in .svg is needed", "changeover");
  }
  const question = await openQuestion(options);
  if (question.chain.length > 0) {
    if (picture !== undefined) throw new UsageError(optionRefusals.pictureOfChain, "changeover");
    const chain = chainFindings(question);
    const said = json ? [JSON.stringify(chainAsJson(question, chain))] : sayChain(question, chain);
    process.stdout.write(`${said.join("\n")}\n`);
    return;
  }
  const findings = changeoverFindings(question);
  if (picture !== undefined) await keepPicture(picture, timeline(pictureOf(question, findings)));
  const text = json
    ? [JSON.stringify(findingsAsJson(question, findings))]
    : [
        ...sayFindings(question, findings),
        ...(picture === undefined ? [] : ["", ...pictureTable(question, findings)]),
      ];
  process.stdout.write(`${text.join("\n")}\n`);
}

async function keepPicture(file: string, svg: string): Promise<void> {
  try {
    await writeFile(file, svg);
  } catch (error) {
    if (!(error instanceof Error && "code" in error)) throw error;
    throw new OutsideError(`--picture ${file}: cannot be written (${String(error.code)})`, error);
  }
}
