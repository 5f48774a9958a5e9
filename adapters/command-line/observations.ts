/** `witness-mark observations`: a community's observations out of its store, and others in; said to the bot in the words that keepers use. */
import { readFile } from "node:fs/promises";
import type { Block } from "../../bot/index.ts";
import { systemClock } from "../clock.ts";
import { type Configuration, parseConfiguration } from "../configuration.ts";
import { OutsideError } from "../errors.ts";
import { openHandbooks } from "../handbooks.ts";
import { freshSecret } from "../secret-key.ts";
import { fileOf } from "./file-of.ts";
import { readOptions, UsageError } from "./options.ts";

const command = "observations";
const person = "console:owner";

export async function run([action = "", ...written]: readonly string[]): Promise<void> {
  const perform = Object.hasOwn(actions, action) ? actions[action] : undefined;
  if (perform === undefined) throw new UsageError("export or import FILE is needed", command);
  await perform(written);
}

const actions: Readonly<Record<string, (written: readonly string[]) => Promise<void>>> = {
  export: takeOut,
  import: takeIn,
};

async function takeOut(written: readonly string[]): Promise<void> {
  const options = readOptions(command, written, { store: "text", community: "text", json: "flag" });
  const [blocks = []] = await answersTo(`export observations as ${options.json ? "json" : "csv"}`, options);
  process.stdout.write(blocks.find((block) => block.kind === "file")?.text ?? "");
}

async function takeIn(written: readonly string[]): Promise<void> {
  const { file, rest } = fileOf(command, written);
  const options = readOptions(command, rest, { store: "text", community: "text", handbook: "text" });
  const { isImportToGoOn } = await import("../../bot/index.ts");
  const answers = await answersTo(`import observations:\n${await textOf(file)}`, options);
  for (const block of answers.flat()) {
    if (block.kind === "text" && !isImportToGoOn([block])) process.stdout.write(`${block.text}\n`);
    // The only list there is: what could not be read.
    if (block.kind === "list") {
      process.stderr.write(`${file}: ${block.lead}\n${block.items.map((item) => `  ${item}\n`).join("")}`);
      process.exitCode = 2;
    }
  }
}

interface Place {
  readonly store: string | undefined;
  readonly community: string | undefined;
  readonly handbook?: string | undefined;
}

/** The answers to words that are said again until nothing of them is left to do. */
async function answersTo(
  text: string,
  { store: written, community = "home", handbook }: Place,
): Promise<readonly (readonly Block[])[]> {
  if (!/^[\w.:-]{1,120}$/u.test(community)) throw new UsageError("--community: a name is needed", command);
  const configuration = configurationOf(written);
  const folders = handbook === undefined ? configuration.handbookFolders : [handbook];
  const handbooks = await openHandbooks(folders);
  const { communityMemories, isImportToGoOn, knowledgeOf, openBot } = await import("../../bot/index.ts");
  const { openLog } = await import("../log.ts");
  const { openStore, openStoreFile } = await import("../store/open-store.ts");
  const known = handbooks.map((one) => knowledgeOf(one.handbook));
  const log = openLog({ level: "error" });
  const isFile = written !== undefined && configuration.databaseUrl === undefined;
  const store = isFile ? await openStoreFile(written, log) : await openStore(configuration, log);
  try {
    const { receive } = openBot({
      knowledge: () => known,
      store,
      memories: communityMemories(store),
      clock: systemClock(),
      log,
      // Nothing is kept by it: what comes in has its numbers as digests already.
      secretKey: freshSecret(),
      platform: "command-line",
    });
    const speaker = { from: person, name: "console", standing: "owner", isPrivate: true } as const;
    const said = { ...speaker, conversation: "command-line:observations", community, text };
    const answers = [(await receive(said)).blocks];
    while (isImportToGoOn(answers.at(-1) ?? [])) answers.push((await receive(said)).blocks);
    return answers;
  } finally {
    await store.close();
  }
}

/** Of the environment, with the store that was named in its place; a file leaves no database. */
function configurationOf(written: string | undefined): Configuration {
  const { DATA_DIR, HANDBOOKS, DATABASE_URL } = process.env;
  const isAddress = written !== undefined && /^postgres(?:ql)?:/u.test(written);
  const address = written === undefined ? DATABASE_URL : isAddress ? written : undefined;
  const parsed = parseConfiguration({ DATA_DIR, HANDBOOKS, DATABASE_URL: address });
  if (!parsed.ok) throw new OutsideError(parsed.problems.join("; "));
  return parsed.configuration;
}

async function textOf(file: string): Promise<string> {
  try {
    // A mark of byte order is no part of the first heading.
    return (await readFile(file, "utf8")).replace(/^\uFEFF/u, "");
  } catch (failure) {
    throw new OutsideError(`${file}: cannot be read`, failure);
  }
}
