// One run: platforms, database, programs, people; faults one after another with a look at the store after each; and what it came to.
import { randomBytes } from "node:crypto";
import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { checkStore } from "../../adapters/store/check-store.ts";
import { databaseStore } from "../../adapters/store/database-store.ts";
import { openEngine } from "../../adapters/store/open-engine.ts";
import { percentile } from "../bench/percentiles.ts";
import { openDiscordDouble } from "../doubles/discord/index.ts";
import { openTelegramDouble } from "../doubles/telegram/index.ts";
import { silentLog } from "../support/logs.ts";
import { type Chance, chanceFrom } from "../support/random-tables.ts";
import { differences } from "./compare.ts";
import { type Answer, type Crowd, crowdOf } from "./crowd.ts";
import { openDatabase } from "./database.ts";
import { addHistory, copyHandbook } from "./earlier.ts";
import type { Role } from "./errands.ts";
import { type FaultName, faults, type Struck } from "./faults.ts";
import { discordSpeakers, telegramSpeakers } from "./platform-speakers.ts";
import { type Program, programOf } from "./program.ts";
import type { DoorName, Speaker } from "./speaker.ts";
import { forumSpeaker, webSpeaker } from "./web-speakers.ts";

export interface Scenario {
  /** More than one needs Postgres. */
  readonly processes: number;
  readonly postgres: boolean;
  readonly conversations: number;
  /** Things said a second, all doors together. */
  readonly rate: number;
  readonly doors: readonly DoorName[];
  /** Does every process log in to Discord, or the first alone? */
  readonly discordInAll: boolean;
  readonly faults: readonly FaultName[];
  /** How many times the conversations of the run are there already from before. */
  readonly history: number;
  /** How many times the part kinds of the demonstration its handbook has. */
  readonly handbook: number;
  readonly start: number;
  /** A folder for what each process did with the processor, as V8 writes it; undefined: it is not looked at. */
  readonly profiles: string | undefined;
  readonly note: (line: string) => void;
}

export interface Outcome {
  readonly problems: readonly string[];
  readonly errors: Readonly<Record<string, number>>;
  readonly said: { readonly once: number; readonly again: number };
  readonly answered: number;
  readonly seconds: number;
  /** Answers a second over the busiest ten seconds: before and after them people come and go one by one. */
  readonly busiest: number;
  readonly latency: Readonly<Record<string, Latency>>;
  /** Of each process: megabytes when nobody has spoken and at the end, and how much of a processor it needed between. */
  readonly used: readonly UsedBetween[];
  /** How much of a processor the doubles and the people needed themselves, who share the machine. */
  readonly own: number;
  readonly store: { readonly records: number; readonly versions: number };
}

export interface UsedBetween {
  readonly before: number;
  readonly after: number;
  readonly heap: number;
  /** 1: a whole processor, all the time. */
  readonly processor: number;
}

export interface Latency {
  readonly answers: number;
  readonly p50: number;
  readonly p95: number;
  readonly p99: number;
  readonly most: number;
}

const forums = Array.from({ length: 12 }, (_, index) => `forum${index}`);
const QUIET_WITHIN = 180_000;
/** So many people's first words are copied to make a history. */
const MOULDS = 8;

/** Everything that is started is stopped again, and every file removed. */
export async function runOf(scenario: Scenario): Promise<Outcome> {
  const folder = mkdtempSync(join(tmpdir(), "wm-load-"));
  const closing: (() => Promise<unknown>)[] = [];
  try {
    return await run(scenario, folder, closing);
  } finally {
    for (const close of closing.toReversed()) await close();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}

async function run(
  scenario: Scenario,
  folder: string,
  closing: (() => Promise<unknown>)[],
): Promise<Outcome> {
  const { note } = scenario;
  const chance = chanceFrom(scenario.start);
  const discord = await openDiscordDouble();
  closing.push(() => discord.close());
  const telegram = await openTelegramDouble();
  closing.push(() => telegram.close());
  const database = scenario.postgres ? await openDatabase() : undefined;
  if (database !== undefined) closing.push(() => database.stop());
  const handbook = join(folder, "handbook");
  copyHandbook(handbook, scenario.handbook);

  const secret = `whsec_${randomBytes(32).toString("base64")}`;
  const programs = await programsOf(scenario, {
    folder,
    discord: { DISCORD_TOKEN: discord.world.token, DISCORD_API_BASE: discord.base },
    shared: {
      HANDBOOKS: handbook,
      SECRET_KEY: randomBytes(32).toString("hex"),
      WEBHOOK_SECRETS: forums.map((name) => `${name}=${secret}`).join(","),
      LOG_LEVEL: "warn",
      ...(database === undefined ? {} : { DATABASE_URL: database.address }),
      ...(scenario.doors.includes("telegram")
        ? { TELEGRAM_BOT_TOKEN: telegram.token, TELEGRAM_API_ROOT: telegram.root }
        : {}),
    },
  });
  closing.push(() => Promise.all(programs.map((program) => (program.isRunning() ? program.stop() : null))));
  const members = { discord: discordSpeakers(discord), telegram: telegramSpeakers(telegram) };
  const speakers = await speakersOf(scenario, { programs, secret, members, chance });
  const place = { dataFolder: join(folder, "data0"), databaseUrl: database?.address };
  if (scenario.history > 0) note(`${await addEarlier(place, speakers, scenario)} versions from before`);
  const before = await Promise.all(programs.map((program) => program.used()));
  const ownBefore = process.cpuUsage();
  // Whose talk was the mould of the history has said something that no errand knows of.
  const present = scenario.history > 0 ? speakers.slice(MOULDS) : speakers;

  const begun = performance.now();
  const patience = scenario.faults.length === 0 ? 60_000 : 25_000;
  const crowd = crowdOf(present, { rate: scenario.rate, patience, mostTries: 8 }, chance);
  const problems: string[] = [];
  const struck: Struck = { programs, discord, telegram, database, handbook, chance };
  for (const fault of scenario.faults) {
    await pause(Math.min(10_000, 500_000 / scenario.rate));
    problems.push(...(await strike(fault, struck, crowd, place, note)));
  }
  await crowd.finished;
  const seconds = (performance.now() - begun) / 1000;
  const after = await Promise.all(programs.map((program) => program.used()));
  const own = process.cpuUsage(ownBefore);
  problems.push(...(await lookedAt("at the end", crowd, place)));
  for (const program of programs) {
    const status = await program.stop();
    if (status !== 0)
      problems.push(`a process ended with status ${status}: ${program.printed().slice(-500)}`);
  }
  problems.push(...discord.world.violations.slice(0, 5).map((line) => `Discord: ${line}`));
  problems.push(...telegram.violations.slice(0, 5).map((line) => `Telegram: ${line}`));
  const engine = await openEngine(place, true);
  const check = await checkStore(engine);
  await engine.close();
  return {
    problems: [...problems, ...crowd.troubles.slice(0, 20), ...check.problems],
    errors: errorsOf(programs),
    said: crowd.said(),
    answered: crowd.answers.length,
    seconds,
    busiest: busiestRate(crowd.answers),
    latency: latencies(crowd.answers),
    used: after.map(({ resident, heap, processor }, index) => ({
      before: before[index]?.resident ?? 0,
      after: resident,
      heap,
      // One that was killed counts from its new start.
      processor: Math.max(0, processor - (before[index]?.processor ?? 0)) / seconds,
    })),
    own: (own.user + own.system) / 1e6 / seconds,
    store: { records: check.records, versions: check.versions },
  };
}

type Variables = Readonly<Record<string, string>>;

/** Not yet started. */
async function programsOf(
  { processes, doors, discordInAll, profiles }: Scenario,
  {
    folder,
    shared,
    discord,
  }: { readonly folder: string; readonly shared: Variables; readonly discord: Variables },
): Promise<readonly Program[]> {
  const programs: Program[] = [];
  for (let index = 0; index < processes; index += 1) {
    const data = join(folder, `data${index}`);
    mkdirSync(data);
    const isOnDiscord = doors.includes("discord") && (index === 0 || discordInAll);
    const environment = { ...shared, DATA_DIR: data, ...(isOnDiscord ? discord : {}) };
    programs.push(await programOf(environment, join(folder, `clock${index}`), profiles));
  }
  return programs;
}

interface Peopled {
  readonly speaker: Speaker;
  readonly role: Role;
}

interface Surrounded {
  readonly programs: readonly Program[];
  readonly secret: string;
  readonly members: Readonly<Record<"discord" | "telegram", (role: Role) => Speaker>>;
  readonly chance: Chance;
}

/** Starts the programs in between: servers must be there before they log in, and visitors need them. */
async function speakersOf(
  { conversations, doors }: Scenario,
  { programs, secret, members, chance }: Surrounded,
): Promise<readonly Peopled[]> {
  const plans = Array.from({ length: conversations }, (_, index) => {
    const door = doors[index % doors.length] ?? "web";
    const role = roleOf(index, chance());
    return {
      index,
      door,
      role,
      speaker: door in members ? members[door as keyof typeof members](role) : undefined,
    };
  });
  for (const program of programs) await program.start();
  const speakers: Peopled[] = [];
  for (const { index, door, role, speaker } of plans) {
    const address = programs[index % programs.length]?.address ?? "";
    // Who comes by a page or a forum is not known to have a standing there.
    if (speaker !== undefined) speakers.push({ speaker, role });
    else if (door === "web") speakers.push({ speaker: await webSpeaker(address, index), role: "asker" });
    else {
      const forum = forums[index % forums.length] ?? "";
      speakers.push({ speaker: forumSpeaker(address, forum, secret, index), role: "asker" });
    }
  }
  return speakers;
}

/** One in ten records what they saw, one in fifty is a keeper. */
function roleOf(index: number, luck: number): Role {
  if (index % 50 < 2) return "keeper";
  return luck < 0.1 ? "observer" : "asker";
}

async function strike(
  name: FaultName,
  struck: Struck,
  crowd: Crowd,
  place: Parameters<typeof openEngine>[0],
  note: (line: string) => void,
): Promise<readonly string[]> {
  const from = crowd.said();
  const lasting = faults[name](struck);
  if (lasting === undefined) {
    note(`${name}: not with this store`);
    return [];
  }
  const problems: string[] = [];
  try {
    await lasting;
  } catch (failure) {
    problems.push(`${name}: ${failure instanceof Error ? failure.message : String(failure)}`);
  }
  problems.push(...(await lookedAt(name, crowd, place)));
  const to = crowd.said();
  note(
    `${name}: ${to.once - from.once} things said meanwhile, ${to.again - from.again} of them again; ${problems.length} problems`,
  );
  crowd.goOn();
  return problems;
}

/** Everybody is silent while the store is compared; nobody may be left without an answer. */
async function lookedAt(
  when: string,
  crowd: Crowd,
  place: Parameters<typeof openEngine>[0],
): Promise<readonly string[]> {
  const isQuiet = await crowd.quiet(QUIET_WITHIN);
  const store = databaseStore(await openEngine(place, true), { log: silentLog });
  const found = await differences(store, crowd.members);
  await store.close();
  const lines = found.slice(0, 20).map((line) => `${when}: ${line}`);
  return isQuiet ? lines : [...lines, `${when}: somebody is still unanswered after ${QUIET_WITHIN / 1000} s`];
}

async function addEarlier(
  place: Parameters<typeof openEngine>[0],
  speakers: readonly { readonly speaker: Speaker }[],
  { history }: Scenario,
): Promise<number> {
  // Something of each door must be there to be copied.
  await Promise.all(
    speakers
      .slice(0, MOULDS)
      .map(({ speaker }) => speaker.say("which rear spoiler is this? rough inside", 60_000)),
  );
  const store = databaseStore(await openEngine(place, true), { log: silentLog });
  const { versions } = await addHistory(store, Math.ceil((history * speakers.length) / MOULDS));
  await store.close();
  return versions;
}

function errorsOf(programs: readonly Program[]): Readonly<Record<string, number>> {
  const all = new Map<string, number>();
  for (const { errors } of programs) {
    for (const [words, count] of errors) all.set(words, (all.get(words) ?? 0) + count);
  }
  return Object.fromEntries(all);
}

const BUSY_MILLISECONDS = 10_000;

function busiestRate(answers: readonly Answer[]): number {
  const times = answers.map(({ at }) => at).toSorted((one, other) => one - other);
  let from = 0;
  let most = 0;
  for (const [index, at] of times.entries()) {
    while ((times[from] ?? at) <= at - BUSY_MILLISECONDS) from += 1;
    most = Math.max(most, index - from + 1);
  }
  return (1000 * most) / BUSY_MILLISECONDS;
}

function latencies(answers: readonly Answer[]): Readonly<Record<string, Latency>> {
  const byDoor = new Map<string, number[]>([["all", answers.map(({ milliseconds }) => milliseconds)]]);
  for (const { door, milliseconds } of answers) byDoor.set(door, [...(byDoor.get(door) ?? []), milliseconds]);
  return Object.fromEntries(
    [...byDoor].map(([door, times]) => [
      door,
      {
        answers: times.length,
        p50: percentile(times, 0.5),
        p95: percentile(times, 0.95),
        p99: percentile(times, 0.99),
        most: Math.max(0, ...times),
      },
    ]),
  );
}
