// How many messages a second the store keeps for good, beside how many commits a second its engine makes at all: a disk has moods, and
// only the ratio of two numbers of the same minute says something about the store.
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import pg from "pg";
import { type DatabaseStore, databaseStore } from "../../adapters/store/database-store.ts";
import { openEngine } from "../../adapters/store/open-engine.ts";
import { silentLog } from "../support/logs.ts";
import { startPostgres } from "../support/postgres.ts";

export interface DurableMessages {
  /** One-row insertions a second, one after another, each its own commit, through the bare driver. */
  readonly rawCommits: number;
  /** Messages a second of one conversation, each sent when the one before is acknowledged. */
  readonly oneConversation: number;
  /** The same of 64 conversations at once. */
  readonly manyConversations: number;
  /** As oneConversation, each message with a change of two other records in the same commit. */
  readonly threeRecords: number;
  /** As manyConversations, each message with a change of two records of its own conversation. */
  readonly manyThreeRecords: number;
  /** oneConversation / rawCommits; to be at least 0.8. */
  readonly sequentialRatio: number;
  /** manyConversations / oneConversation; to be at least 5. */
  readonly concurrentRatio: number;
  /** threeRecords / rawCommits, and manyThreeRecords / threeRecords; to be the same. */
  readonly threeRecordsRatio: number;
  readonly threeRecordsConcurrentRatio: number;
  /**
   * What this process's processor works on a message of one conversation beyond a bare commit, as a share of the time of such a
   * commit; with more than a quarter of it a ratio of 0.8 cannot be had, however quick the rest.
   */
  readonly processorShare: number;
}

const CONVERSATIONS = 64;
/** What a message adds to a conversation, about. */
const ADDED = "rough inside, square tips, two drain notches; ".repeat(12);

/** Each rate is taken in turns of `turnMilliseconds`, and the median turn counts. */
export async function durableMessages(
  turns = 7,
  turnMilliseconds = 400,
): Promise<Readonly<Record<"SQLite" | "Postgres", DurableMessages>>> {
  const folder = mkdtempSync(join(tmpdir(), "wm-bench-"));
  const postgres = await startPostgres();
  try {
    const sqlite = await measured(
      databaseStore(await openEngine({ dataFolder: folder }), { log: silentLog }),
      rawSqlite(join(folder, "raw.sqlite")),
      turns,
      turnMilliseconds,
    );
    const server = await measured(
      databaseStore(await openEngine({ dataFolder: folder, databaseUrl: postgres.address }), {
        log: silentLog,
      }),
      await rawPostgres(postgres.address),
      turns,
      turnMilliseconds,
    );
    return { SQLite: sqlite, Postgres: server };
  } finally {
    await postgres.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

interface RawEngine {
  insert(key: string): Promise<void>;
  close(): Promise<void>;
}

function rawSqlite(file: string): RawEngine {
  const db = new DatabaseSync(file);
  db.exec(
    "pragma journal_mode = wal; pragma synchronous = full; create table raw (key text primary key, value text)",
  );
  const statement = db.prepare("insert into raw values (?, ?)");
  return {
    insert: async (key) => {
      statement.run(key, ADDED);
    },
    close: async () => db.close(),
  };
}

async function rawPostgres(address: string): Promise<RawEngine> {
  const client = new pg.Client({ connectionString: address });
  await client.connect();
  await client.query("create table raw (key text primary key, value text)");
  return {
    insert: async (key) => {
      await client.query("insert into raw values ($1, $2)", [key, ADDED]);
    },
    close: () => client.end(),
  };
}

async function measured(
  store: DatabaseStore,
  raw: RawEngine,
  turns: number,
  turnMilliseconds: number,
): Promise<DurableMessages> {
  let number = 0;
  const next = () => {
    number += 1;
    return `m${number}`;
  };
  const added = (state: unknown, most: number) => [...((state ?? []) as string[]).slice(-most), ADDED];
  const say = (conversation: string, beside: readonly string[] = []) => {
    const change = { id: conversation, by: "u1", at: 0, why: "said" };
    return store.advance({ ...change, kind: "conversation", message: next() }, (state) => ({
      state: added(state, 40),
      outcome: { text: ADDED },
      alongside: beside.map((kind) => ({ change: { ...change, kind }, advance: (state) => added(state, 2) })),
    }));
  };
  const sayInThree = (conversation: string) => say(conversation, ["observation", "notice"]);
  const rates: Rates[] = [];
  // The first turn warms up and is not counted.
  for (let turn = 0; turn <= turns; turn++) {
    const bare = () => raw.insert(next());
    const one = await alternating(2 * turnMilliseconds, bare, () => say("one"));
    const three = await alternating(2 * turnMilliseconds, bare, () => sayInThree("three"));
    const rate = {
      raw: one.raw,
      one: one.own,
      moreProcessor: one.moreProcessor,
      many: await rateOf(CONVERSATIONS, turnMilliseconds, (lane) => say(`conversation ${lane}`)),
      rawBesideThree: three.raw,
      three: three.own,
      manyThree: await rateOf(CONVERSATIONS, turnMilliseconds, (lane) => sayInThree(`three ${lane}`)),
    };
    if (turn > 0) rates.push(rate);
  }
  await store.close();
  await raw.close();
  return {
    rawCommits: median(rates.map((rate) => rate.raw)),
    oneConversation: median(rates.map((rate) => rate.one)),
    manyConversations: median(rates.map((rate) => rate.many)),
    threeRecords: median(rates.map((rate) => rate.three)),
    manyThreeRecords: median(rates.map((rate) => rate.manyThree)),
    sequentialRatio: median(rates.map((rate) => rate.one / rate.raw)),
    concurrentRatio: median(rates.map((rate) => rate.many / rate.one)),
    threeRecordsRatio: median(rates.map((rate) => rate.three / rate.rawBesideThree)),
    threeRecordsConcurrentRatio: median(rates.map((rate) => rate.manyThree / rate.three)),
    processorShare: median(rates.map((rate) => (rate.moreProcessor * rate.raw) / 1000)),
  };
}

interface Rates {
  readonly raw: number;
  readonly one: number;
  /** Milliseconds a message, beyond a bare commit's. */
  readonly moreProcessor: number;
  readonly many: number;
  readonly rawBesideThree: number;
  readonly three: number;
  readonly manyThree: number;
}

/**
 * The rates of two kinds of work done by turns, one and one: a disk that changes its mood meanwhile changes it for both. What is left of
 * it is against us: some disks flush slower after the shortest rest (on one, under load, a bare commit took 1.25 to 1.6 times as long
 * after 0.4 ms of it), and the bare commits come without any while ours come after the thinking.
 */
async function alternating(
  milliseconds: number,
  rawWork: () => Promise<unknown>,
  ownWork: () => Promise<unknown>,
): Promise<{ readonly raw: number; readonly own: number; readonly moreProcessor: number }> {
  const until = performance.now() + milliseconds;
  let rawMilliseconds = 0;
  let ownMilliseconds = 0;
  let microseconds = 0;
  let done = 0;
  while (performance.now() < until) {
    const raw = await spentOn(rawWork);
    const own = await spentOn(ownWork);
    rawMilliseconds += raw.milliseconds;
    ownMilliseconds += own.milliseconds;
    microseconds += own.microseconds - raw.microseconds;
    done += 1;
  }
  return {
    raw: (1000 * done) / rawMilliseconds,
    own: (1000 * done) / ownMilliseconds,
    moreProcessor: microseconds / 1000 / done,
  };
}

/** On the wall, and of the processor. */
async function spentOn(
  work: () => Promise<unknown>,
): Promise<{ readonly milliseconds: number; readonly microseconds: number }> {
  const processor = process.cpuUsage();
  const from = performance.now();
  await work();
  const milliseconds = performance.now() - from;
  const { user, system } = process.cpuUsage(processor);
  return { milliseconds, microseconds: user + system };
}

/** How often a second `work` was done by `lanes` that each do it again and again. */
async function rateOf(
  lanes: number,
  milliseconds: number,
  work: (lane: number) => Promise<unknown>,
): Promise<number> {
  const from = performance.now();
  let done = 0;
  await Promise.all(
    Array.from({ length: lanes }, async (_, lane) => {
      while (performance.now() - from < milliseconds) {
        await work(lane);
        done += 1;
      }
    }),
  );
  return (1000 * done) / (performance.now() - from);
}

function median(values: readonly number[]): number {
  return values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)] ?? 0;
}
