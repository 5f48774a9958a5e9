/**
 * Everything that arrives while one commit is under way shares the next: one statement, one flush to the disk for all of it. A batch
 * holds one change of each record at most, so that each goes by a state that is already kept, and a change that fails takes
 * no other with it. Nothing is answered before it is durable.
 */
import { setImmediate as nextTurn, setTimeout as pause } from "node:timers/promises";
import type { Advance, Change } from "../../bot/index.ts";
import { OutsideError } from "../errors.ts";
import type { Engine } from "./engine.ts";
import { type Head, headAfter, rowAfter } from "./head.ts";
import { type Heads, keyOf, readOutcome } from "./heads.ts";
import type { StoreWatch } from "./store-watch.ts";
import type { VersionRow } from "./tables.ts";
import { DamagedRecordError } from "./versions-from.ts";

export interface Waiting {
  readonly change: Change;
  readonly advance: Advance<unknown>;
  /** By performance.now(): until then trouble that passes is waited out. */
  readonly deadline: number;
  readonly resolve: (outcome: unknown) => void;
  readonly reject: (failure: unknown) => void;
}

/** What is waiting, with what has become of it so far. */
interface Entry extends Waiting {
  isSettled: boolean;
  /** Outcomes of rows that were sent and not confirmed, by digest: they may be there. */
  readonly sent: Map<string, unknown>;
}

interface Draft {
  readonly entry: Entry;
  readonly row: VersionRow;
  readonly head: Head | undefined;
  readonly outcome: unknown;
}

const LARGEST_BATCH = 128;
const SHORTEST_PAUSE = 20;
const LONGEST_PAUSE = 500;

export interface GroupCommit {
  add(entry: Waiting): void;
  /** Resolves when nothing waits. */
  drained(): Promise<void>;
}

export function groupCommit(engine: Engine, heads: Heads, watch: StoreWatch): GroupCommit {
  let waiting: Entry[] = [];
  let working: Promise<void> | undefined;

  async function work(): Promise<void> {
    let patience = SHORTEST_PAUSE;
    while (waiting.length > 0) {
      // Whatever has arrived meanwhile comes in first, and a synchronous engine lets the others have their turn.
      await nextTurn();
      const { batch, rest } = firstOfEachRecord(waiting);
      waiting = rest;
      const { again, isPassing } = await attempt(batch);
      waiting = [...again, ...waiting];
      if (isPassing) await pause(patience);
      patience = isPassing ? Math.min(2 * patience, LONGEST_PAUSE) : SHORTEST_PAUSE;
    }
    working = undefined;
  }

  async function attempt(batch: readonly Entry[]): Promise<Attempt> {
    const ended = watch.begin();
    try {
      engine.stillThere();
      const drafts = await draftsFor(batch);
      if (drafts.length === 0) return done;
      const again = await settle(drafts, await insert(drafts));
      watch.worked();
      return { again, isPassing: false };
    } catch (failure) {
      return await afterFailure(
        batch.filter(({ isSettled }) => !isSettled),
        failure,
      );
    } finally {
      ended();
    }
  }

  async function draftsFor(batch: readonly Entry[]): Promise<readonly Draft[]> {
    const era = await heads.era();
    // All of them are waited for, also when one fails: what an entry has come to must be known before it is tried again.
    const drafts = await Promise.allSettled(batch.map((entry) => draft(entry, era)));
    return drafts.flatMap((each) => {
      if (each.status === "rejected") throw each.reason;
      return each.value === undefined ? [] : [each.value];
    });
  }

  /** undefined: the entry is settled already. */
  async function draft(entry: Entry, era: number): Promise<Draft | undefined> {
    try {
      if (entry.sent.size > 0 && (await settleByOutcome(entry))) return undefined;
      const head = await heads.of(entry.change);
      const tried = tryTo(() => drafted(entry, head, era));
      if (tried.ok) return tried.value;
      // A message that was taken before may make no sense a second time; it still has its answer.
      if (!(await settleByOutcome(entry))) settled(entry).reject(tried.failure);
    } catch (failure) {
      if (!(failure instanceof DamagedRecordError)) throw failure;
      settled(entry).reject(failure);
    }
    return undefined;
  }

  /** The keys of the records whose rows are now kept. The same order in every process, so that none waits for another in a ring. */
  async function insert(drafts: readonly Draft[]): Promise<ReadonlySet<string>> {
    for (const { entry, row, outcome } of drafts) entry.sent.set(row.digest, outcome);
    const rows = drafts.map(({ row }) => row).sort((one, other) => (keyOf(one) < keyOf(other) ? -1 : 1));
    const kept = await engine.db
      .insertInto("version")
      .values(rows)
      .onConflict((conflict) => conflict.doNothing())
      .returning(["kind", "id"])
      .execute();
    for (const { entry } of drafts) entry.sent.clear();
    return new Set(kept.map(keyOf));
  }

  /** Those for whom somebody else was quicker come back, unless it was their own message. */
  async function settle(drafts: readonly Draft[], kept: ReadonlySet<string>): Promise<readonly Entry[]> {
    const again: Entry[] = [];
    const beaten: Entry[] = [];
    for (const { entry, head, outcome } of drafts) {
      if (!kept.has(keyOf(entry.change))) {
        heads.forget(entry.change);
        beaten.push(entry);
        continue;
      }
      if (head !== undefined) heads.remember(entry.change, head);
      settled(entry).resolve(outcome);
    }
    for (const entry of beaten) if (!(await settleByOutcome(entry))) again.push(entry);
    return again;
  }

  async function settleByOutcome(entry: Entry): Promise<boolean> {
    const found = await readOutcome(engine.db, entry.change, [...entry.sent.keys()]);
    if (found !== undefined) {
      const { outcome, digest } = found;
      settled(entry).resolve(outcome === null ? entry.sent.get(digest) : JSON.parse(outcome));
    }
    entry.sent.clear();
    return found !== undefined;
  }

  async function afterFailure(batch: readonly Entry[], failure: unknown): Promise<Attempt> {
    for (const { change } of batch) heads.forget(change);
    const trouble = engine.troubleOf(failure);
    if (trouble.kind === "refused" && batch.length > 1) return oneByOne(batch);
    if (trouble.kind === "era") heads.forgetAll();
    else if (trouble.kind !== "refused") watch.failed(trouble);
    const isPassing = trouble.kind === "again" || trouble.kind === "era";
    const problem = new OutsideError(trouble.message, failure);
    const again = batch.filter((entry) => isPassing && performance.now() < entry.deadline);
    for (const entry of batch) if (!again.includes(entry)) settled(entry).reject(problem);
    return { again, isPassing };
  }

  async function oneByOne(batch: readonly Entry[]): Promise<Attempt> {
    const attempts: Attempt[] = [];
    for (const entry of batch) attempts.push(await attempt([entry]));
    return {
      again: attempts.flatMap(({ again }) => again),
      isPassing: attempts.some(({ isPassing }) => isPassing),
    };
  }

  return {
    add(entry) {
      waiting.push({ ...entry, isSettled: false, sent: new Map() });
      working ??= work();
    },
    drained: async () => {
      await working;
    },
  };
}

interface Attempt {
  /** Still to be done. */
  readonly again: readonly Entry[];
  /** Something stood in the way that passes: wait a little. */
  readonly isPassing: boolean;
}

const done: Attempt = { again: [], isPassing: false };

function drafted(entry: Entry, head: Head, era: number): Draft {
  const { change, advance } = entry;
  const { state, outcome } = advance(head.text === undefined ? undefined : JSON.parse(head.text));
  const answer = change.message === undefined ? null : (JSON.stringify(outcome) ?? "null");
  const row = rowAfter(head, change, JSON.stringify(state) ?? "null", answer, era);
  return { entry, row, head: headAfter(head, row), outcome };
}

/** The entry, from now on settled. */
function settled(entry: Entry): Entry {
  entry.isSettled = true;
  return entry;
}

function firstOfEachRecord(waiting: readonly Entry[]): {
  readonly batch: readonly Entry[];
  readonly rest: Entry[];
} {
  const batch = new Map<string, Entry>();
  const rest: Entry[] = [];
  for (const entry of waiting) {
    const key = keyOf(entry.change);
    if (batch.has(key) || batch.size >= LARGEST_BATCH) rest.push(entry);
    else batch.set(key, entry);
  }
  return { batch: [...batch.values()], rest };
}

type Tried<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly failure: unknown };

function tryTo<Value>(work: () => Value): Tried<Value> {
  try {
    return { ok: true, value: work() };
  } catch (failure) {
    return { ok: false, failure };
  }
}
