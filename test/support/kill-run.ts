// Writers on one store, killed (SIGKILL) at drawn moments and started again, as a crash or an impatient administrator would. What was
// acknowledged must be there, once, in all records it changes; what was sent and not acknowledged is sent again, as platforms do.
import { type ChildProcess, spawn } from "node:child_process";
import { fileURLToPath } from "node:url";
import { checkStore } from "../../adapters/store/check-store.ts";
import { databaseStore } from "../../adapters/store/database-store.ts";
import { openEngine, type StorePlace } from "../../adapters/store/open-engine.ts";
import type { Store } from "../../bot/index.ts";
import { type Counted, folded, LEDGERS, ledgerName, recordName, type WriterTask } from "./counted-record.ts";
import { silentLog } from "./logs.ts";
import { type Chance, chanceFrom } from "./random-tables.ts";

const RECORDS = 6;
const LANES = 2;
const writer = fileURLToPath(new URL("./store-writer.ts", import.meta.url));

export interface KillReport {
  readonly kills: number;
  readonly acknowledged: number;
  /** Sent, not acknowledged before the writer died, and sent again. */
  readonly sentAgain: number;
  /** Empty: nothing lost, nothing twice, every history whole, every entry in all of its records. */
  readonly problems: readonly string[];
}

interface Lane {
  readonly name: string;
  readonly acknowledged: Map<string, { readonly record: number; readonly count: number }>;
  readonly unconfirmed: Map<string, number>;
  next: number;
  sentAgain: number;
  readonly problems: string[];
}

/** After the kills each writer writes `last` messages more and ends by itself. */
export async function killRun(
  place: StorePlace,
  kills: number,
  start: number,
  last = 20,
): Promise<KillReport> {
  const lanes = Array.from({ length: LANES }, (_, index) => newLane(`writer${index}`));
  await Promise.all(
    lanes.map(async (lane, index) => {
      const chance = chanceFrom(start + index);
      for (let kill = index; kill < kills; kill += LANES) await runAndKill(lane, place, chance);
      await runToTheEnd(lane, place, last);
    }),
  );
  return {
    kills,
    acknowledged: lanes.reduce((sum, lane) => sum + lane.acknowledged.size, 0),
    sentAgain: lanes.reduce((sum, lane) => sum + lane.sentAgain, 0),
    problems: [...lanes.flatMap(({ problems }) => problems), ...(await problemsIn(place, lanes))],
  };
}

function newLane(name: string): Lane {
  return { name, acknowledged: new Map(), unconfirmed: new Map(), next: 0, sentAgain: 0, problems: [] };
}

/** One kill in four may fall into the start (opening, migrating); the others fall among the writes. */
async function runAndKill(lane: Lane, place: StorePlace, chance: Chance): Promise<void> {
  const isEarly = chance() < 0.25;
  const delay = chance() * (isEarly ? 400 : 120);
  const { child, writing, ended } = begin(lane, place, Number.MAX_SAFE_INTEGER);
  if (!isEarly) await Promise.race([writing, ended]);
  await new Promise((resolve) => setTimeout(resolve, delay));
  child.kill("SIGKILL");
  const { signal, printed } = await ended;
  if (signal !== "SIGKILL") lane.problems.push(`${lane.name} ended by itself: ${printed}`);
}

/** A last writer sends again what is open, adds a little, and closes as it should. */
async function runToTheEnd(lane: Lane, place: StorePlace, last: number): Promise<void> {
  const { signal, printed } = await begin(lane, place, lane.next + last).ended;
  if (signal !== null || lane.unconfirmed.size > 0)
    lane.problems.push(`${lane.name} did not finish: ${printed}`);
}

interface Begun {
  readonly child: ChildProcess;
  /** Resolves at the first acknowledgement. */
  readonly writing: Promise<void>;
  readonly ended: Promise<{ readonly signal: NodeJS.Signals | null; readonly printed: string }>;
}

function begin(lane: Lane, place: StorePlace, most: number): Begun {
  const unconfirmed = [...lane.unconfirmed].map(([message, record]) => ({ message, record }));
  lane.sentAgain += unconfirmed.length;
  const task: WriterTask = {
    dataFolder: place.dataFolder,
    ...(place.databaseUrl === undefined ? {} : { databaseUrl: place.databaseUrl }),
    name: lane.name,
    from: lane.next,
    most,
    records: RECORDS,
    unconfirmed,
  };
  const child = spawn(process.execPath, [writer, JSON.stringify(task)], {
    stdio: ["ignore", "pipe", "pipe"],
  });
  let printed = "";
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    printed = (printed + text).slice(-2000);
  });
  let begun = () => {};
  const writing = new Promise<void>((resolve) => {
    begun = resolve;
  });
  let open = "";
  child.stdout.setEncoding("utf8").on("data", (text: string) => {
    const lines = (open + text).split("\n");
    open = lines.pop() ?? "";
    for (const line of lines) if (take(lane, line)) begun();
  });
  const ended = new Promise<{ signal: NodeJS.Signals | null; printed: string }>((resolve) => {
    child.on("close", (_, signal) => resolve({ signal, printed }));
  });
  return { child, writing, ended };
}

/** Takes note of a line of a writer; true when something was acknowledged. */
function take(lane: Lane, line: string): boolean {
  const [word, record = "", message = "", count = ""] = line.split(" ");
  if (word === "sent") {
    lane.unconfirmed.set(message, Number(record));
    lane.next = Math.max(lane.next, Number(message.split("-")[1]) + 1);
  }
  if (word !== "kept") return false;
  lane.unconfirmed.delete(message);
  lane.acknowledged.set(message, { record: Number(record), count: Number(count) });
  return true;
}

async function problemsIn(place: StorePlace, lanes: readonly Lane[]): Promise<readonly string[]> {
  const engine = await openEngine(place);
  const { problems } = await checkStore(engine);
  const store = databaseStore(engine, { log: silentLog });
  const { positions, found } = await replayed(store);
  const torn = await tornIn(store, positions);
  await store.close();
  const acknowledged = lanes.flatMap((lane) => [...lane.acknowledged]);
  const lost = acknowledged.flatMap(([message, { record, count }]) => {
    const position = positions.get(message);
    if (position === undefined) return [`${message}: acknowledged and lost`];
    const isSame = position.record === record && position.count === count;
    return isSame ? [] : [`${message}: answered otherwise`];
  });
  return [...problems, ...found, ...torn, ...lost];
}

type Positions = ReadonlyMap<string, { readonly record: number; readonly count: number }>;

/** Every history run through again from its first message, with where each message stands in it. */
async function replayed(
  store: Store,
): Promise<{ readonly positions: Positions; readonly found: readonly string[] }> {
  const positions = new Map<string, { readonly record: number; readonly count: number }>();
  const found: string[] = [];
  for (let record = 0; record < RECORDS; record++) {
    let state: Counted | undefined;
    for (const version of await store.history("record", recordName(record))) {
      const message = version.message ?? "";
      state = folded(state, message);
      if (JSON.stringify(version.state) !== JSON.stringify(state))
        found.push(`${message}: replayed differently`);
      if (positions.has(message)) found.push(`${message}: there twice`);
      positions.set(message, { record, count: version.version });
    }
  }
  return { positions, found };
}

/** Messages that are not in each of their ledgers exactly once, and those in a ledger of which the record knows nothing. */
async function tornIn(store: Store, positions: Positions): Promise<readonly string[]> {
  const found: string[] = [];
  for (let ledger = 0; ledger < LEDGERS; ledger++) {
    const expected = [...positions].filter(([, { record }]) => ledger === 0 || record % LEDGERS === ledger);
    const missing = new Set(expected.map(([message]) => message));
    let state: Counted | undefined;
    for (const { why, state: kept } of await store.history("ledger", ledgerName(ledger))) {
      state = folded(state, why);
      if (JSON.stringify(kept) !== JSON.stringify(state)) found.push(`${why}: entered differently`);
      if (!missing.delete(why)) found.push(`${why}: in ledger ${ledger} and not where it belongs`);
    }
    for (const message of missing) found.push(`${message}: missing in ledger ${ledger}`);
  }
  return found;
}
