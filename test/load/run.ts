// One run: platforms, database, programs, people; faults one after another with a look at the store after each; and what it came to.
import { randomBytes } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { checkStore } from "../../adapters/store/check-store.ts";
import { databaseStore } from "../../adapters/store/database-store.ts";
import { openEngine } from "../../adapters/store/open-engine.ts";
import { openDiscordDouble } from "../doubles/discord/index.ts";
import { openTelegramDouble } from "../doubles/telegram/index.ts";
import { silentLog } from "../support/logs.ts";
import { chanceFrom } from "../support/random-tables.ts";
import { crowdOf } from "./crowd.ts";
import { openDatabase } from "./database.ts";
import { addHistory, copyHandbook } from "./earlier.ts";
import type { FaultName, Struck } from "./faults.ts";
import { lookedAt, strike } from "./looks.ts";
import { busiestRate, errorsOf, latencies, type Outcome, usedBetween } from "./outcome.ts";
import { discordSpeakers, telegramSpeakers } from "./platform-speakers.ts";
import { forums, programsOf, speakersOf } from "./programs.ts";
import { mountSmallDisk, type SmallDisk } from "./small-disk.ts";
import type { DoorName, Speaker } from "./speaker.ts";

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

/** So many people's first words are copied to make a history. */
const MOULDS = 8;

/** Everything that is started is stopped again, and every file removed, also when the run is told to stop. */
export async function runOf(scenario: Scenario): Promise<Outcome> {
  const folder = mkdtempSync(join(tmpdir(), "wm-load-"));
  const closing: (() => Promise<unknown>)[] = [];
  const end = async () => {
    for (let close = closing.pop(); close !== undefined; close = closing.pop()) await close();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  };
  const told = () => void end().finally(() => process.exit(1));
  for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, told);
  try {
    return await run(scenario, folder, closing);
  } finally {
    await end();
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

  const disk = diskOf(scenario, join(folder, "data0"), closing);
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
  const patience = scenario.faults.length === 0 ? 300_000 : 40_000;
  const crowd = crowdOf(present, { rate: scenario.rate, patience, mostTries: 8 }, chance);
  const telling = setInterval(() => {
    const minutes = ((performance.now() - begun) / 60_000).toFixed(0);
    note(`after ${minutes} min: ${crowd.said().once} things said, ${crowd.answers.length} answered`);
  }, 60_000);
  closing.push(async () => clearInterval(telling));
  const problems: string[] = [];
  const struck: Struck = { programs, discord, telegram, database, disk, handbook, chance };
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
    used: after.map((used, index) => usedBetween(before[index], used, seconds)),
    own: (own.user + own.system) / 1e6 / seconds,
    store: { records: check.records, versions: check.versions },
  };
}

/** Only where it is to be filled. */
function diskOf(
  { faults: wanted, postgres }: Scenario,
  folder: string,
  closing: (() => Promise<unknown>)[],
): SmallDisk | { readonly missing: string } {
  if (!wanted.includes("disk")) return { missing: "no disk is to be filled" };
  if (postgres) return { missing: "the store is no file of one process" };
  const mounted = mountSmallDisk(folder);
  if ("missing" in mounted) return mounted;
  closing.push(async () => mounted.unmount());
  return mounted.disk;
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
