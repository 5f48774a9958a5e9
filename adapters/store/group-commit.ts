/**
 * Everything that arrives while one commit is under way shares the next: one statement, one flush to the disk for all of it. A batch
 * holds one change of each record at most, those alongside counted, so that each goes by a state that is already kept, and a change
 * that fails takes no other with it. Nothing is answered before it is durable.
 */
import { setImmediate as nextTurn, setTimeout as pause } from "node:timers/promises";
import { chosenBatch, withoutCollisions } from "./batch.ts";
import { type Asked, type Draft, drafted } from "./draft.ts";
import { type Engine, problemOfTrouble } from "./engine.ts";
import { answerErased } from "./erased-rows.ts";
import { type Heads, keyOf } from "./heads.ts";
import { insertionInto } from "./insertion.ts";
import { readOutcome } from "./reads.ts";
import type { StoreWatch } from "./store-watch.ts";
import type { VersionRow } from "./tables.ts";
import { DamagedRecordError } from "./versions-from.ts";

export interface Waiting extends Asked {
  /** By performance.now(): until then trouble that passes is waited out. */
  readonly deadline: number;
  readonly resolve: (outcome: unknown) => void;
  readonly reject: (failure: unknown) => void;
}

/** What is waiting, with what has become of it so far. */
interface Entry extends Waiting {
  isSettled: boolean;
  /** Keys of the records it changes, as far as is known: at first its own, then those its last run has named. */
  records: ReadonlySet<string>;
  /** Outcomes of rows that were sent and not confirmed, by digest: they may be there. */
  readonly sent: Map<string, unknown>;
}

const SHORTEST_PAUSE = 20;
const LONGEST_PAUSE = 500;

export interface GroupCommit {
  add(entry: Waiting): void;
  /** Resolves when nothing waits. */
  drained(): Promise<void>;
}

export function groupCommit(engine: Engine, heads: Heads, watch: StoreWatch): GroupCommit {
  const insertion = insertionInto(engine);
  let waiting: Entry[] = [];
  let working: Promise<void> | undefined;

  async function work(): Promise<void> {
    let patience = SHORTEST_PAUSE;
    while (waiting.length > 0) {
      // Whatever has arrived meanwhile comes in first, and a synchronous engine lets the others have their turn.
      await nextTurn();
      const { batch, rest } = chosenBatch(waiting);
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
      const drafts = withoutCollisions(await draftsFor(batch));
      if (drafts.length > 0) {
        await settle(drafts, await insert(drafts));
        watch.worked();
      }
      return { again: batch.filter(isOpen), isPassing: false };
    } catch (failure) {
      return await afterFailure(batch.filter(isOpen), failure);
    } finally {
      ended();
    }
  }

  async function draftsFor(batch: readonly Entry[]): Promise<readonly Draft<Entry>[]> {
    const era = await heads.era();
    // All of them are waited for, also when one fails: what an entry has come to must be known before it is tried again.
    const drafts = await Promise.allSettled(batch.map((entry) => draft(entry, era)));
    return drafts.flatMap((each) => {
      if (each.status === "rejected") throw each.reason;
      return each.value === undefined ? [] : [each.value];
    });
  }

  /** undefined: the entry is settled already. */
  async function draft(entry: Entry, era: number): Promise<Draft<Entry> | undefined> {
    try {
      if (entry.sent.size > 0 && (await settleByOutcome(entry))) return undefined;
      const tried = await drafted(entry, heads.of, era);
      if (tried.ok) return taken(entry, tried.value);
      // A message that was taken before may make no sense a second time; it still has its answer.
      if (await settleByOutcome(entry)) return undefined;
      // What it refused may have been a state that is out of date: it may refuse only what is kept.
      const anew = await drafted(entry, heads.read, era);
      if (anew.ok) return taken(entry, anew.value);
      settled(entry).reject(anew.failure);
    } catch (failure) {
      if (!(failure instanceof DamagedRecordError)) throw failure;
      settled(entry).reject(failure);
    }
    return undefined;
  }

  async function insert(drafts: readonly Draft<Entry>[]): Promise<ReadonlySet<Draft<Entry>>> {
    // The main row stands for those alongside: they are there when it is.
    for (const { entry, main, outcome } of drafts) entry.sent.set(main.row.digest, outcome);
    const kept = await insertion.insert(drafts);
    for (const { entry } of drafts) entry.sent.clear();
    return kept;
  }

  /** Those for whom somebody else was quicker stay open, unless it was their own message. */
  async function settle(drafts: readonly Draft<Entry>[], kept: ReadonlySet<Draft<Entry>>): Promise<void> {
    for (const draft of drafts) {
      if (kept.has(draft)) finish(draft);
      else forget(draft.entry);
    }
    for (const { entry } of drafts) if (isOpen(entry)) await settleByOutcome(entry);
  }

  function finish({ entry, steps, outcome }: Draft<Entry>): void {
    for (const { key, head } of steps) if (head !== undefined) heads.remember(key, head);
    settled(entry).resolve(outcome);
  }

  function forget({ records }: Entry): void {
    for (const key of records) heads.forget(key);
  }

  async function settleByOutcome(entry: Entry): Promise<boolean> {
    const found = await readOutcome(engine.db, entry.change, [...entry.sent.keys()]);
    if (found !== undefined) answer(entry, found);
    entry.sent.clear();
    return found !== undefined;
  }

  async function afterFailure(batch: readonly Entry[], failure: unknown): Promise<Attempt> {
    batch.forEach(forget);
    const trouble = engine.troubleOf(failure);
    if (trouble.kind === "refused" && batch.length > 1) return oneByOne(batch);
    if (trouble.kind === "era") heads.forgetAll();
    else if (trouble.kind !== "refused") watch.failed(trouble);
    const isPassing = trouble.kind === "again" || trouble.kind === "era";
    const problem = problemOfTrouble(trouble, failure);
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
      const records = new Set([keyOf(entry.change)]);
      waiting.push({ ...entry, isSettled: false, records, sent: new Map() });
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

/** The draft, and its entry from now on known by all that it changes. */
function taken(entry: Entry, draft: Draft<Entry>): Draft<Entry> {
  entry.records = new Set(draft.steps.map(({ key }) => key));
  return draft;
}

/** By what is kept of it already. */
function answer(entry: Entry, { outcome, digest }: Pick<VersionRow, "outcome" | "digest">): void {
  const { resolve, reject } = settled(entry);
  if (outcome !== null) resolve(JSON.parse(outcome));
  else if (entry.sent.has(digest)) resolve(entry.sent.get(digest));
  else reject(answerErased(entry.change));
}

/** The entry, from now on settled. */
function settled(entry: Entry): Entry {
  entry.isSettled = true;
  return entry;
}

function isOpen({ isSettled }: Entry): boolean {
  return !isSettled;
}
