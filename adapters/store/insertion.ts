/**
 * A batch becomes rows of one insertion, which is one commit. As long as each entry is one row, the engine leaves out the rows whose
 * place is taken and keeps the others. An entry of several rows must not be kept in part, so a batch with one in it is inserted as it
 * is or not at all: a single statement that fails takes all its rows back, in either engine, without a transaction around it whose
 * lock would outlive us. Then whoever was beaten is looked for, and the batch is inserted again without them. That costs a second
 * statement only when somebody else was quicker, and somebody else then has been: no two processes can hold each other up for ever.
 */
import type { Kysely } from "kysely";
import type { Asked, Draft } from "./draft.ts";
import type { Engine } from "./engine.ts";
import { keyOf } from "./heads.ts";
import type { Tables, VersionRow } from "./tables.ts";

/** So many places are asked for at once. */
const PAGE = 50;

/** Those of `drafts` whose rows are now kept, all of each; nothing is kept of the others. */
export async function insertDrafts<Each extends Draft<Asked>>(
  engine: Engine,
  drafts: readonly Each[],
): Promise<ReadonlySet<Each>> {
  if (drafts.every(({ steps }) => steps.length === 1)) return insertFree(engine.db, drafts);
  let left = drafts;
  while (left.length > 0 && !(await insertAll(engine, left))) {
    const taken = await takenAmong(engine.db, rowsOf(left));
    const free = left.filter(({ steps }) => steps.every(({ key }) => !taken.has(key)));
    // Whoever stood there is gone again, with a backup that was put back perhaps: all of them look again at what there is.
    if (free.length === left.length) return new Set();
    left = free;
  }
  return new Set(left);
}

async function insertFree<Each extends Draft<Asked>>(
  db: Kysely<Tables>,
  drafts: readonly Each[],
): Promise<ReadonlySet<Each>> {
  const kept = await db
    .insertInto("version")
    .values(rowsOf(drafts))
    .onConflict((conflict) => conflict.doNothing())
    .returning(["kind", "id"])
    .execute();
  const keys = new Set(kept.map(keyOf));
  return new Set(drafts.filter(({ main }) => keys.has(main.key)));
}

/** False, and nothing is kept: the place of some row is taken. */
async function insertAll(engine: Engine, drafts: readonly Draft<Asked>[]): Promise<boolean> {
  try {
    await engine.db.insertInto("version").values(rowsOf(drafts)).execute();
    return true;
  } catch (failure) {
    if (engine.troubleOf(failure).kind !== "taken") throw failure;
    return false;
  }
}

/** The records in which some row's number or message is there already. */
async function takenAmong(db: Kysely<Tables>, rows: readonly VersionRow[]): Promise<ReadonlySet<string>> {
  const taken = new Set<string>();
  for (let from = 0; from < rows.length; from += PAGE) {
    const found = await db
      .selectFrom("version")
      .select(["kind", "id"])
      .where((each) =>
        each.or(
          rows.slice(from, from + PAGE).map(({ kind, id, version, message }) => {
            const places = [each("version", "=", version)];
            if (message !== null) places.push(each("message", "=", message));
            return each.and([each("kind", "=", kind), each("id", "=", id), each.or(places)]);
          }),
        ),
      )
      .execute();
    for (const row of found) taken.add(keyOf(row));
  }
  return taken;
}

/** In the same order in every process, so that none waits for another in a ring. */
function rowsOf(drafts: readonly Draft<Asked>[]): readonly VersionRow[] {
  const steps = drafts.flatMap((draft) => draft.steps);
  return steps.toSorted((one, other) => (one.key < other.key ? -1 : 1)).map(({ row }) => row);
}
