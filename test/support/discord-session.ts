// A server full of members who ask, press, mistype, quarrel and lose their connection, in an order that a number decides.
import { type ChildProcess, fork } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { type DiscordDouble, openDiscordDouble } from "../doubles/discord/index.ts";
import type { Channel, Component, Interaction, Message, User } from "../doubles/discord/wire-shapes.ts";
import { addChannel, addGuild } from "../doubles/discord/world.ts";
import { annotatedMessages } from "./corpus-folder.ts";
import { chanceFrom } from "./random-tables.ts";

const PATIENCE_MILLISECONDS = 60_000;

export interface Crowd {
  readonly double: DiscordDouble;
  readonly people: readonly User[];
  readonly channels: readonly Channel[];
}

/** A server with so many members and channels; the double is open, nobody is logged in yet. */
export async function crowdOf(members: number, channels: number): Promise<Crowd> {
  const double = await openDiscordDouble();
  const { world } = double;
  const owner: User = { id: world.nextId(), username: "Orla" };
  const guild = addGuild(world, "Shrike Register", owner);
  const people = Array.from({ length: members }, (_, at) => {
    const user: User = { id: world.nextId(), username: `member ${at}` };
    guild.members.set(user.id, { user, roles: [] });
    return user;
  });
  return {
    double,
    people,
    channels: Array.from({ length: channels }, (_, at) => addChannel(world, guild, `parts-${at}`)),
  };
}

export interface RemoteDoor {
  heap(): Promise<number>;
  close(): Promise<void>;
}

/** The door in a process of its own, logged in to the double, its memory in a new folder. */
export async function remoteDoor({ world, base }: DiscordDouble): Promise<RemoteDoor> {
  const folder = mkdtempSync(join(tmpdir(), "discord-door-"));
  const child = fork(fileURLToPath(new URL("./discord-door.ts", import.meta.url)), {
    execArgv: ["--expose-gc"],
    env: { ...process.env, DOUBLE_TOKEN: world.token, DOUBLE_BASE: base, DOOR_FOLDER: folder },
    stdio: ["ignore", "inherit", "inherit", "ipc"],
  });
  await answerOf(child);
  return {
    async heap() {
      child.send("heap");
      return Number((await answerOf(child)).heap);
    },
    async close() {
      child.send("close");
      if (child.exitCode === null) await once(child, "exit");
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function answerOf(child: ChildProcess): Promise<{ readonly heap?: number }> {
  const [answer] = await Promise.race([
    once(child, "message"),
    once(child, "exit").then(() => {
      throw new Error("the door's process has ended");
    }),
  ]);
  return answer;
}

export interface Played {
  /** Milliseconds from an event to its acknowledgement. */
  readonly acknowledged: readonly number[];
  readonly events: number;
}

/**
 * Plays `events` events one after another in the order that `start` decides, as many at once as there are members. With `troubles` every
 * fiftieth is something that goes wrong with Discord itself.
 */
export async function playSession(
  { double, people, channels }: Crowd,
  options: {
    readonly start: number;
    readonly events: number;
    readonly troubles: boolean;
    /** Between what one member does and the next thing of the same member. */
    readonly thinkMilliseconds: number;
    readonly half?: () => Promise<void>;
  },
): Promise<Played> {
  const chance = chanceFrom(options.start);
  const texts = annotatedMessages("development").map(({ text }) => text);
  const acknowledged: number[] = [];
  const shown = new Map<string, Message>();
  let events = 0;

  const any = <Value>(values: readonly Value[]): Value | undefined =>
    values[Math.floor(chance() * values.length)];
  const words = () => (any(texts) ?? "which rear spoiler is this?").slice(0, 1500);

  async function took(interaction: Interaction): Promise<void> {
    await cameTo(double, interaction, "an acknowledgement", () => interaction.acknowledgedAt !== undefined);
    if (interaction.acknowledgedAt !== undefined)
      acknowledged.push(interaction.acknowledgedAt - interaction.sentAt);
  }

  async function act(user: User): Promise<void> {
    const channel = any(channels);
    if (channel === undefined) return;
    const own = shown.get(user.id);
    const isThere = own !== undefined && double.world.messages.has(own.id) && own.components.length > 0;
    const draw = chance();
    if (isThere && draw < 0.7) return press(user, own);
    if (draw < 0.85) return ask(user, channel);
    if (draw < 0.93) return void double.people.mention(user, channel, words());
    double.people.direct(user, words());
  }

  async function ask(user: User, channel: Channel): Promise<void> {
    const interaction = double.people.slash(user, channel, "ask", {
      question: words(),
      private: chance() < 0.3,
    });
    await took(interaction);
    await cameTo(double, interaction, "an answer", () => interaction.original !== undefined);
    if (interaction.original !== undefined) shown.set(user.id, interaction.original);
  }

  async function press(user: User, message: Message): Promise<void> {
    const component = any(message.components.flatMap(({ components }) => components ?? []));
    if (component?.custom_id === undefined) return;
    const interaction = double.people.pressId(user, message, component.custom_id, valuesOf(component));
    if (chance() < 0.05) double.people.again(interaction);
    await took(interaction);
    if (interaction.modal === undefined) return;
    const field = interaction.modal.components.find(({ type }) => type === 18)?.label ?? "";
    await took(double.people.fill(interaction, { [field]: words() }));
  }

  function valuesOf({ options: offered }: Component): readonly string[] | undefined {
    return offered === undefined ? undefined : [any(offered)?.value ?? "0"];
  }

  async function member(user: User): Promise<void> {
    await pause(options.thinkMilliseconds * chance());
    while (events < options.events) {
      events += 1;
      if (options.troubles && events % 50 === 0) trouble(double, chance());
      if (events === Math.floor(options.events / 2)) await options.half?.();
      await act(user);
      await pause(options.thinkMilliseconds * (0.5 + chance()));
    }
  }

  await Promise.all(people.map((user) => member(user)));
  await double.quiet(300);
  return { acknowledged, events };
}

/**
 * Waits for what comes of an interaction. An answer whose token has expired meanwhile comes another way, and what Discord sent before a new
 * session began is never delivered.
 */
function cameTo(
  { gateway }: DiscordDouble,
  interaction: Interaction,
  what: string,
  look: () => boolean,
): Promise<void> {
  const sessions = gateway.identified();
  return new Promise((resolve, reject) => {
    const end = setTimeout(() => {
      const mayBeLost = interaction.isExpired === true || gateway.identified() > sessions;
      if (mayBeLost) resolve();
      else
        reject(new Error(`waited in vain for ${what}: ${JSON.stringify({ ...interaction, watchers: 0 })}`));
    }, PATIENCE_MILLISECONDS);
    const watcher = () => {
      const isRefused = interaction.isExpired === true && interaction.acknowledgedAt === undefined;
      if (!(look() || isRefused)) return;
      clearTimeout(end);
      resolve();
    };
    interaction.watchers.push(watcher);
    watcher();
  });
}

/** One thing that goes wrong with Discord. */
function trouble(double: DiscordDouble, draw: number): void {
  const callback = /\/callback$/u;
  const message = /\/messages/u;
  const troubles: readonly (() => void)[] = [
    () => double.gateway.cut(),
    () => double.fault({ path: message, times: 1, how: { kind: "status", status: 503 } }),
    () => double.fault({ path: message, times: 1, how: { kind: "cut", when: "after" } }),
    () => double.fault({ path: callback, times: 1, how: { kind: "cut", when: "after" } }),
    () => double.fault({ path: message, times: 1, how: { kind: "status", status: 429, retryAfter: 1 } }),
    () => double.expireTokens(),
    () => {
      const last = [...double.world.messages.values()].findLast(
        ({ author }) => author.id === double.world.bot.id,
      );
      if (last !== undefined) double.people.erase(last);
    },
  ];
  troubles[Math.floor(draw * troubles.length)]?.();
}

/** Messages that were written twice: by one nonce, or in answer to one message. */
export function doubled({ world }: DiscordDouble): number {
  const nonces = [...world.messages.values()].flatMap(({ nonce, channel_id }) =>
    nonce === undefined ? [] : [`${channel_id} ${nonce}`],
  );
  return nonces.length - new Set(nonces).size;
}
