/** `witness-mark store`: checks the community's memory, backs it up and puts a backup back, also while programs serve from it. */
import { parseConfiguration } from "../configuration.ts";
import { OutsideError } from "../errors.ts";
import type { Engine } from "../store/engine.ts";
import { fileOf } from "./file-of.ts";
import { readOptions, UsageError } from "./options.ts";

export async function run([action = "", ...written]: readonly string[]): Promise<void> {
  const perform = Object.hasOwn(actions, action) ? actions[action] : undefined;
  if (perform === undefined) throw new UsageError("check, backup FILE or restore FILE is needed", "store");
  await perform(written);
}

const actions: Readonly<Record<string, (written: readonly string[]) => Promise<void>>> = {
  check,
  backup,
  restore,
};

async function check(written: readonly string[]): Promise<void> {
  const { store } = readOptions("store", written, { store: "text" });
  const { checkStore } = await import("../store/check-store.ts");
  await withEngine(store, async (engine) => {
    const { problems, records, versions } = await checkStore(engine);
    if (problems.length === 0)
      return print(`${engine.place}: sound, ${records} records, ${versions} versions`);
    print(problems.join("\n"));
    throw new OutsideError(`store: ${engine.place}: ${problems.length} wrong; put a backup back to mend it`);
  });
}

async function backup(written: readonly string[]): Promise<void> {
  const { file, rest } = fileOf("store", written);
  const { store } = readOptions("store", rest, { store: "text" });
  const { writeBackup } = await import("../store/backup-file.ts");
  const { rowsOf } = await import("../store/row-stream.ts");
  await withEngine(store, async (engine) => {
    const versions = await engine.readMoment((moment) => writeBackup(file, rowsOf(moment)));
    print(`${file}: ${versions} versions of ${engine.place}`);
  });
}

async function restore(written: readonly string[]): Promise<void> {
  const { file, rest } = fileOf("store", written);
  const { store, replace } = readOptions("store", rest, { store: "text", replace: "flag" });
  const { restore: putBack } = await import("../store/restore.ts");
  await withEngine(store, async (engine) => {
    const { records, versions } = await putBack(engine, file, { replace, at: Date.now() });
    print(`${engine.place}: ${records} records, ${versions} versions put back from ${file}`);
  });
}

/** The store of the environment, or the one in `file`; whatever the engine says comes out in words fit to be shown. */
async function withEngine(file: string | undefined, work: (engine: Engine) => Promise<void>): Promise<void> {
  const engine = await open(file);
  try {
    await work(engine);
  } catch (failure) {
    if (failure instanceof OutsideError) throw failure;
    throw new OutsideError(engine.troubleOf(failure).message, failure);
  } finally {
    await engine.close();
  }
}

async function open(file: string | undefined): Promise<Engine> {
  const { openEngine, openEngineFile } = await import("../store/open-engine.ts");
  if (file !== undefined) return openEngineFile(file);
  const { DATA_DIR, DATABASE_URL } = process.env;
  const parsed = parseConfiguration({ DATA_DIR, DATABASE_URL });
  if (!parsed.ok) throw new OutsideError(parsed.problems.join("; "));
  return openEngine(parsed.configuration, true);
}

function print(text: string): void {
  process.stdout.write(`${text}\n`);
}
