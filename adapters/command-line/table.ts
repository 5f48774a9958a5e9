/** `witness-mark table`: what variants show, as a spreadsheet and back; the way in for whoever keeps lists and no YAML. */
import { UsageError } from "./options.ts";

type Perform = (written: readonly string[]) => Promise<void>;

const actions: Readonly<Record<string, () => Promise<{ readonly run: Perform }>>> = {
  to: () => import("./table/to-table.ts"),
  from: () => import("./table/from-table.ts"),
};

export async function run([action = "", ...written]: readonly string[]): Promise<void> {
  const load = Object.hasOwn(actions, action) ? actions[action] : undefined;
  if (load === undefined) throw new UsageError("to FILE or from FILE is needed", "table");
  const { run: perform } = await load();
  await perform(written);
}
