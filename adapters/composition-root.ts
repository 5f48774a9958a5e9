/**
 * The composition root of `npm start`: configuration, log, handbooks, store, bot, then every door people come in by. The only file
 * that sees all adapters. Whatever is wrong before serving ends the program with status 1 and says why.
 */
import { join } from "node:path";
import type { Logger } from "pino";
import {
  type Bot,
  type Clock,
  communityMemories,
  editionWatch,
  type Knowledge,
  openBot,
  type Pages,
  pagesOf,
  type Store,
} from "../bot/index.ts";
import { systemClock } from "./clock.ts";
import { type Configuration, parseConfiguration } from "./configuration.ts";
import { doorKinds } from "./door-kinds.ts";
import { failureLine, OutsideError } from "./errors.ts";
import { givingWay } from "./give-way.ts";
import { BrokenHandbookError, type OpenHandbook, openHandbooks } from "./handbooks.ts";
import { keepPrivate } from "./keep-private.ts";
import { liveHandbooks, toldThrough } from "./live-handbooks.ts";
import { openLog } from "./log.ts";
import { type PhotographKeeper, photographKeeper } from "./photographs/index.ts";
import { secretKeyIn } from "./secret-key.ts";
import { openStore } from "./store/open-store.ts";
import { locateIn } from "./terminal/drawing-paths.ts";
import { greetingFor } from "./terminal/greeting.ts";
import { startTerminal } from "./terminal/index.ts";
import { openWebDoor } from "./web/index.ts";

/** What a door may need. */
interface Context {
  readonly configuration: Configuration;
  /** The bot, for one platform, named as the log shall name it. */
  readonly botFor: (platform: string) => Bot;
  /** What its communities know, for pages to show. */
  readonly pages: Pages;
  readonly knowledge: () => readonly Knowledge[];
  /** The community's memory, for what a door has to remember itself, and the time by which it is kept. */
  readonly store: Store;
  readonly clock: Clock;
  readonly handbooks: readonly OpenHandbook[];
  /** Where members' photographs are kept. */
  readonly photographs: PhotographKeeper;
  readonly log: Logger;
  /** May messages be taken now? */
  readonly isReady: () => boolean;
}

interface OpenDoor {
  /** One line for whoever started the program. */
  readonly where: string;
  close(): Promise<void>;
}

/** A door opens, or is not configured (undefined), or throws OutsideError. */
type Door = (context: Context) => Promise<OpenDoor | undefined>;

/** In the order they open; they close the other way round. A platform is one line here. */
const doors: readonly Door[] = [web, discord, telegram];

async function web({ configuration, ...context }: Context): Promise<OpenDoor> {
  const { host, port, publicAddress, webhookSecrets } = configuration;
  const own = { host, port, publicAddress, webhookSecrets };
  const { address, close } = await openWebDoor({ ...own, ...context });
  return { where: `web at ${publicAddress ?? address}/`, close };
}

/** Its library is loaded only where there is a token: it takes longer to load than everything else. */
async function discord(context: Context): Promise<OpenDoor | undefined> {
  const { discordToken: token, discordApiBase: apiBase, publicAddress } = context.configuration;
  if (token === undefined) return undefined;
  const [{ startDiscord }, { pngOf }] = await Promise.all([
    import("./discord/index.ts"),
    import("./pictures/png.ts"),
  ]);
  const { store, clock, log, photographs } = context;
  const handbooks = context.handbooks.map(({ handbook: { cover } }) => ({ id: cover.id, name: cover.name }));
  const bot = context.botFor("discord");
  return startDiscord({
    token,
    apiBase,
    bot,
    store,
    clock,
    log,
    handbooks,
    pngOf,
    photographs,
    publicAddress,
  });
}

async function telegram({ configuration, ...context }: Context): Promise<OpenDoor | undefined> {
  const { telegram: place, host, publicAddress } = configuration;
  if (place === undefined) return undefined;
  const [{ openTelegram }, { pngOf }] = await Promise.all([
    import("./telegram/index.ts"),
    import("./pictures/png.ts"),
  ]);
  const { token, root } = place;
  const { store, photographs, log } = context;
  const own = { bot: context.botFor("telegram"), store, photographs, log, pictureOf: pngOf, publicAddress };
  const webhook = place.webhook === undefined ? undefined : { ...place.webhook, host };
  const { name, way, close } = await openTelegram({ token, root, webhook, ...own });
  return { where: `Telegram as @${name}, by ${way}`, close };
}

async function main(): Promise<void> {
  const parsed = parseConfiguration(process.env);
  if (!parsed.ok) return refuse(parsed.problems);
  const { configuration, hints } = parsed;
  const isTerminal = process.stdin.isTTY === true && process.stdout.isTTY === true;
  const file = isTerminal ? { file: join(configuration.dataFolder, "witness-mark.log") } : {};
  const log = openLog({ level: configuration.logLevel, ...file });
  for (const hint of hints) log.warn({ hint }, "a variable of the environment is not read");

  const stop = stopSignal();
  const handbooks = await openHandbooks(configuration.handbookFolders);
  const store = await openStore(configuration, log);
  let isReady = false;
  const open: OpenDoor[] = [];
  const closing: { close(): Promise<void> }[] = [];
  try {
    const clock = systemClock();
    const events = toldThrough(editionWatch({ store, clock, log, inPieces: givingWay }), log);
    for (const { handbook, files } of handbooks) await events.onTaken(handbook, files);
    const live = liveHandbooks(handbooks, events);
    closing.push(live);
    const secretKey =
      configuration.secretKey ?? (await secretKeyIn(join(configuration.dataFolder, "secret.key")));
    const memories = communityMemories(store);
    const surroundings = { knowledge: live.known, store, memories, clock, log, secretKey, doorKinds };
    closing.push(await keepPrivate({ store, memories, clock, log, doorKinds }));
    const botFor = (platform: string) => openBot({ ...surroundings, platform });
    const photographs = photographKeeper(store, clock);
    const context = {
      configuration,
      botFor,
      pages: pagesOf({ ...surroundings, platform: "web" }),
      knowledge: live.known,
      store,
      clock,
      handbooks,
      photographs,
      log,
      isReady: () => isReady && store.isReady(),
    };
    for (const door of doors) open.push(...(await opened(door, context, isTerminal)));
    isReady = true;
    if (isTerminal) {
      process.stdout.write(open.map(({ where }) => `${where}\n`).join(""));
      await talk(context, stop);
    } else await serve(open, handbooks, stop, log);
  } finally {
    isReady = false;
    for (const each of [...closing, ...open].toReversed()) await each.close();
    await store.close();
  }
}

/** Somebody at a terminal can talk without the other doors: there a door that does not open is only mentioned. */
async function opened(door: Door, context: Context, isTerminal: boolean): Promise<readonly OpenDoor[]> {
  try {
    const open = await door(context);
    return open === undefined ? [] : [open];
  } catch (failure) {
    if (!isTerminal || !(failure instanceof OutsideError)) throw failure;
    process.stdout.write(`${failure.message}; going on without it\n`);
    return [];
  }
}

async function talk(context: Context, stop: AbortSignal): Promise<void> {
  const { configuration, handbooks, photographs, log } = context;
  await startTerminal({
    input: process.stdin,
    output: process.stdout,
    greeting: await greetingFor(handbooks.map(({ handbook }) => handbook)),
    bot: context.botFor("terminal"),
    takePhotograph: photographs.take,
    log,
    folder: process.cwd(),
    exports: join(configuration.dataFolder, "exports"),
    locate: locateIn(handbooks, process.cwd()),
    signal: stop,
  });
}

async function serve(
  open: readonly OpenDoor[],
  handbooks: readonly OpenHandbook[],
  stop: AbortSignal,
  log: Logger,
): Promise<void> {
  const names = handbooks.map(({ handbook }) => handbook.cover.name).join("; ");
  const lines = [`witness-mark serves ${names}`, ...open.map(({ where }) => `  ${where}`)];
  process.stdout.write(`${lines.join("\n")}\n`);
  log.info({ handbooks: handbooks.map(({ handbook }) => handbook.edition) }, "serving");
  await aborted(stop);
  log.info({}, "stopping");
}

/** Aborted by the first SIGTERM, SIGINT or SIGHUP; a second one ends the program at once, as the system would. */
function stopSignal(): AbortSignal {
  const controller = new AbortController();
  for (const name of ["SIGTERM", "SIGINT", "SIGHUP"] as const) {
    process.once(name, () => controller.abort());
  }
  return controller.signal;
}

function aborted(signal: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    if (signal.aborted) return resolve();
    // A signal handler keeps no process alive, and without a door nothing else would.
    const alive = setInterval(() => undefined, 60_000);
    signal.addEventListener("abort", () => {
      clearInterval(alive);
      resolve();
    });
  });
}

function refuse(lines: readonly string[]): void {
  process.stderr.write(`${lines.join("\n")}\n`);
  process.exitCode = 1;
}

try {
  await main();
} catch (failure) {
  if (failure instanceof BrokenHandbookError) {
    refuse([`handbook ${failure.folder}: ${failure.problems.length} to mend`, ...failure.problems]);
  } else {
    refuse([failureLine(failure)]);
  }
}
