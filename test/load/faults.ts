// What goes wrong while people speak. Each fault begins, lasts, and is lifted; what must hold is looked at after that, by whoever strikes it.
import { appendFileSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import type { DiscordDouble } from "../doubles/discord/index.ts";
import type { TelegramDouble } from "../doubles/telegram/index.ts";
import type { Chance } from "../support/random-tables.ts";
import type { Database } from "./database.ts";
import type { Program } from "./program.ts";

export interface Struck {
  readonly programs: readonly Program[];
  readonly discord: DiscordDouble;
  readonly telegram: TelegramDouble;
  /** undefined: the store is a file of the one program. */
  readonly database: Database | undefined;
  /** A copy of the demonstration's handbook that the programs serve and watch. */
  readonly handbook: string;
  readonly chance: Chance;
}

/** Strikes and lifts; throws what is wrong. undefined: it cannot be had here. */
export type Fault = (struck: Struck) => Promise<void> | undefined;

const DAY = 86_400_000;

export const faults = {
  /** One process dies without a word, in the middle of what it does, and is started again. */
  async kill({ programs, chance }) {
    const program = programs[Math.floor(chance() * programs.length)];
    await program?.kill();
    await pause(2000);
    await program?.start();
  },

  database({ database }) {
    return database?.restart(3000);
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
    if (database !== undefined || program === undefined) return undefined;
    return (async () => {
      await program.limitFiles(4096);
      await pause(8000);
      await program.limitFiles(undefined);
    })();
  },

  /** The wall clock jumps a day on, two days back, and to where it was. */
  async clock({ programs }) {
    for (const shift of [DAY, -DAY, 0]) {
      for (const program of programs) await program.shiftClock(shift);
      await pause(2500);
    }
  },

  /** Somebody saves a handbook that is broken, and later mends it. */
  async handbook({ handbook }) {
    const file = join(handbook, "parts", "rear-spoiler.yaml");
    const sound = readFileSync(file);
    appendFileSync(file, "\n  ][: broken\n");
    await pause(5000);
    writeFileSync(file, sound);
    await pause(3000);
  },
} as const satisfies Readonly<Record<string, Fault>>;

export type FaultName = keyof typeof faults;
export const faultNames = Object.keys(faults) as readonly FaultName[];
