// What goes wrong while people speak. Each fault begins, lasts, and is lifted; what must hold is looked at after that, by whoever strikes it.
import { appendFileSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import type { DiscordDouble } from "../doubles/discord/index.ts";
import type { TelegramDouble } from "../doubles/telegram/index.ts";
import type { Chance } from "../support/random-tables.ts";
import type { Database } from "./database.ts";
import { sendPhotograph } from "./photograph-sender.ts";
import type { Program } from "./program.ts";
import type { SmallDisk } from "./small-disk.ts";
import { waitUntil } from "./waiting.ts";

export interface Struck {
  readonly programs: readonly Program[];
  readonly discord: DiscordDouble;
  readonly telegram: TelegramDouble;
  /** undefined: the store is a file of the one program. */
  readonly database: Database | undefined;
  /** Where the store of the one program lies; or why it lies on no disk of its own. */
  readonly disk: SmallDisk | { readonly missing: string };
  /** A copy of the demonstration's handbook that the programs serve and watch. */
  readonly handbook: string;
  readonly chance: Chance;
}

/** Strikes and lifts; throws what is wrong. A string says why it cannot be had here. */
export type Fault = (struck: Struck) => Promise<void> | string;

const DAY = 86_400_000;
const REFUSED = "changed handbook refused, the edition before serves on";

export const faults = {
  /** One process dies without a word, in the middle of what it does, and is started again. */
  async kill({ programs, chance }) {
    const program = programs[Math.floor(chance() * programs.length)];
    await program?.kill();
    await pause(2000);
    await program?.start();
  },

  database({ database }) {
    return database?.restart(3000) ?? "the store is a file";
  },

  /** The gateway is cut three times: to be resumed, with a code, and with its session forgotten. */
  async gateway({ discord }) {
    for (const cut of [{}, { code: 4000 }, { forget: true }]) {
      const before = discord.gateway.resumed() + discord.gateway.identified();
      discord.gateway.cut(cut);
      for (let wait = 0; wait < 300; wait += 1) {
        if (discord.gateway.resumed() + discord.gateway.identified() > before) break;
        await pause(100);
      }
      await pause(1000);
    }
  },

  /** Too many requests, say both platforms to what is sent, forty times over; acknowledging is not limited on Discord. */
  async storm({ discord, telegram }) {
    discord.fault({
      path: /^(?!.*\/callback$)/u,
      times: 40,
      how: { kind: "status", status: 429, retryAfter: 1 },
    });
    for (const method of ["sendMessage", "editMessageText", "sendChatAction", "getUpdates"]) {
      telegram.fail(method, { kind: "too many", seconds: 1 }, 10);
    }
    await pause(8000);
    for (const fault of discord.requests.faults) fault.times = 0;
  },

  /** Nothing is written beyond the first page of any file of the process; then it may again. A full disk is milder: it takes rewrites. */
  full({ programs: [program], database }) {
    if (database !== undefined || program === undefined) return "the store is no file of one process";
    return (async () => {
      await program.limitFiles(4096);
      await pause(8000);
      await program.limitFiles(undefined);
    })();
  },

  /**
   * Not a byte goes into the disk of the store any more; then there is room again. Photographs are sent until one is refused, because the
   * log that SQLite keeps has room of its own for a while; all that were not refused must be there afterwards, and one more.
   */
  disk({ programs: [program], disk }) {
    if ("missing" in disk || program === undefined) return "missing" in disk ? disk.missing : "no process";
    return (async () => {
      disk.fill();
      const pictures: string[] = [];
      try {
        pictures.push(...(await takenUntilRefused(program.address)));
        await pause(8000);
      } finally {
        disk.clear();
      }
      if (!(await waitUntil(program.isReady, 40_000, 100)))
        throw new Error("it is not ready again once there is room");
      const { status, picture } = await sendPhotograph(program.address, MOST_PHOTOGRAPHS);
      if (picture === undefined)
        throw new Error(`a photograph once there is room is answered with ${status}`);
      for (const one of [...pictures, picture]) {
        const shown = await fetch(one);
        if (shown.headers.get("content-type") !== "image/jpeg")
          throw new Error("a photograph taken in is gone");
      }
    })();
  },

  /** The wall clock jumps a day on, two days back, and to where it was. */
  async clock({ programs }) {
    for (const shift of [DAY, -DAY, 0]) {
      for (const program of programs) await program.shiftClock(shift);
      await pause(2500);
    }
  },

  /** Somebody saves a handbook that is broken: each process says so and serves on. Later it is mended and has one more word: each takes it. */
  async handbook({ programs, handbook, chance }) {
    const part = join(handbook, "parts", "rear-spoiler.yaml");
    const cover = join(handbook, "handbook.yaml");
    const sound = readFileSync(part);
    const refusals = () => programs.map((program) => program.warnings.get(REFUSED) ?? 0);
    const before = refusals();
    appendFileSync(part, "\n  ][: broken\n");
    const isRefused = () => refusals().every((count, index) => count > (before[index] ?? 0));
    const wasRefused = await waitUntil(isRefused, 40_000, 100);
    await pause(3000);
    const word = `mended${Math.floor(1e6 * chance())}`;
    writeFileSync(cover, readFileSync(cover, "utf8").replace("A two-seat", `A ${word} two-seat`));
    writeFileSync(part, sound);
    const takenByAll = async () =>
      (await Promise.all(programs.map(({ address }) => handbookPage(address)))).every((page) =>
        page.includes(word),
      );
    const wasTaken = await waitUntil(takenByAll, 60_000, 500);
    if (!wasRefused) throw new Error("a process did not say that the broken handbook is refused");
    if (!wasTaken) throw new Error("a process did not take the mended handbook");
  },
} as const satisfies Readonly<Record<string, Fault>>;

const MOST_PHOTOGRAPHS = 60;

/** Where those are that were taken in. */
async function takenUntilRefused(address: string): Promise<readonly string[]> {
  const pictures: string[] = [];
  for (let number = 0; number < MOST_PHOTOGRAPHS; number += 1) {
    const { status, picture } = await sendPhotograph(address, number);
    if (status >= 500 && picture === undefined) return pictures;
    if (picture === undefined)
      throw new Error(`a photograph on a full disk is answered with ${status} and is not there`);
    pictures.push(picture);
  }
  throw new Error("a full disk takes in any number of photographs");
}

/** Nothing when the process has no time for it. */
async function handbookPage(address: string): Promise<string> {
  try {
    return await (await fetch(`${address}/handbook/wexcombe-shrike`)).text();
  } catch {
    // It is asked again.
    return "";
  }
}

export type FaultName = keyof typeof faults;
export const faultNames = Object.keys(faults) as readonly FaultName[];
