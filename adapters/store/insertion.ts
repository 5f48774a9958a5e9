/**
 * A batch becomes rows of one insertion, which is one commit. As long as each entry is one row, the engine leaves out the rows whose
 * place is taken and keeps the others. An entry of several rows must not be kept in part, so a batch with one in it is inserted as it
 * is or not at all: a single statement that fails takes all its rows back, in either engine, without a transaction around it whose
 * lock would outlive us. Then whoever was beaten is looked for, and the batch is inserted again without them. That costs a second
 * statement only when somebody else was quicker, and somebody else then has been: no two processes can hold each other up for ever.
 */
import { CompiledQuery, type Kysely } from "kysely";
import type { Asked, Draft } from "./draft.ts";
import type { Engine } from "./engine.ts";
import { keyOf, type RecordName } from "./heads.ts";
import type { Tables, VersionRow } from "./tables.ts";

/** Insertions of more rows are rare, and their texts long. */
const MOST_PREPARED = 200;
/** So many places are asked for at once. */
const PAGE = 50;

export interface Insertion {
  /** Those of `drafts` whose rows are now kept, all of each; nothing is kept of the others. */
  insert<Each extends Draft<Asked>>(drafts: readonly Each[]): Promise<ReadonlySet<Each>>;
}

export function insertionInto(engine: Engine): Insertion {
  const { db } = engine;
  const free = preparedInsertion((rows) =>
    db
      .insertInto("version")
      .values(rows)
      .onConflict((conflict) => conflict.doNothing())
      .returning(["kind", "id"]),
  );
  const whole = preparedInsertion((rows) => db.insertInto("version").values(rows));

  async function insertFree<Each extends Draft<Asked>>(drafts: readonly Each[]): Promise<ReadonlySet<Each>> {
    const rows = rowsOf(drafts);
    const kept = await engine.insert<RecordName>(free(rows), rows.length);
    const keys = new Set(kept.map(keyOf));
    return new Set(drafts.filter(({ main }) => keys.has(main.key)));
  }

  /** False, and nothing is kept: the place of some row is taken. */
  async function insertAll(drafts: readonly Draft<Asked>[]): Promise<boolean> {
    const rows = rowsOf(drafts);
    try {
      await engine.insert(whole(rows), rows.length);
      return true;
    } catch (failure) {
      if (engine.troubleOf(failure).kind !== "taken") throw failure;
      return false;
    }
  }

  return {
    async insert(drafts) {
      if (drafts.every(({ steps }) => steps.length === 1)) return insertFree(drafts);
      let left = drafts;
      while (left.length > 0 && !(await insertAll(left))) {
        const taken = await takenAmong(db, rowsOf(left));
        const fitting = left.filter(({ steps }) => steps.every(({ key }) => !taken.has(key)));
        // Whoever stood there is gone again, with a backup that was put back perhaps: all of them look again at what there is.
        if (fitting.length === left.length) return new Set();
        left = fitting;
      }
      return new Set(left);
    },
  };
}

/**
 * The insertion of so many rows, whose text is kept: to build it anew for each batch took a quarter of all that a message takes of the
 * processor. All rows are made in one place and have their columns in one order.
 */
function preparedInsertion<Returned>(
  build: (rows: readonly VersionRow[]) => { compile(): CompiledQuery<Returned> },
): (rows: readonly VersionRow[]) => CompiledQuery<Returned> {
  const texts = new Map<number, string>();
  return (rows) => {
    const text = texts.get(rows.length) ?? build(rows).compile().sql;
    if (rows.length <= MOST_PREPARED) texts.set(rows.length, text);
    return CompiledQuery.raw(text, rows.flatMap(Object.values));
  };
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
