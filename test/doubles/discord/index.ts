// Discord on the loopback: the HTTP API and the gateway in one server that an unmodified discord.js logs in to.
import { createServer } from "node:http";
import { type Gateway, openGateway } from "./gateway.ts";
import { type Fault, handler, type Requests } from "./http.ts";
import { type People, peopleIn } from "./people.ts";
import type { Interaction, Message } from "./wire-shapes.ts";
import { newWorld, type World } from "./world.ts";

export interface DiscordDouble {
  /** What DISCORD_API_BASE is set to. */
  readonly base: string;
  readonly world: World;
  readonly gateway: Gateway;
  readonly people: People;
  readonly requests: Requests;
  /** The next requests that fit go wrong so. */
  fault(fault: Fault): void;
  /** Every token given out so far is no longer valid. */
  expireTokens(): void;
  /** Waits until `look` gives something; fails with what was waited for. */
  until<Value>(what: string, look: () => Value | undefined | false, milliseconds?: number): Promise<Value>;
  /** Waits until no request has come for a while and every interaction is acknowledged. */
  quiet(milliseconds?: number): Promise<void>;
  /** What the bot has written that still stands, the oldest first. */
  written(channel: string): readonly Message[];
  close(): Promise<void>;
}

export async function openDiscordDouble(
  options: { readonly hasMessageContent?: boolean; readonly shards?: number; readonly port?: number } = {},
): Promise<DiscordDouble> {
  const world = newWorld(options);
  const requests: Requests = { faults: [], open: 0, last: 0, seen: [] };
  let gateway: Gateway | undefined;
  const opened = () => {
    if (gateway === undefined) throw new RangeError("discord double: not open");
    return gateway;
  };
  const server = createServer(handler(world, opened, requests));
  gateway = openGateway(world, server);
  await new Promise<void>((resolve) => server.listen(options.port ?? 0, "127.0.0.1", resolve));
  const at = server.address();
  const host = `http://127.0.0.1:${typeof at === "object" && at !== null ? at.port : 0}`;
  const own = gateway;

  async function until<Value>(
    what: string,
    look: () => Value | undefined | false,
    milliseconds = 10_000,
  ): Promise<Value> {
    const end = performance.now() + milliseconds;
    for (;;) {
      const seen = look();
      if (seen !== undefined && seen !== false) return seen as Value;
      if (performance.now() > end) throw new Error(`discord double: waited in vain for ${what}`);
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
  }

  return {
    base: `${host}/api`,
    world,
    gateway: own,
    people: peopleIn(world, own, () => host),
    requests,
    fault: (fault) => void requests.faults.push(fault),
    expireTokens() {
      for (const interaction of world.interactions.values()) interaction.isExpired = true;
    },
    until,
    async quiet(milliseconds = 80) {
      await until("silence", () => {
        const isAcknowledged = [...world.interactions.values()].every(isSettled);
        const isStill =
          requests.open === 0 && performance.now() - Math.max(requests.last, own.lastSent()) > milliseconds;
        return isAcknowledged && isStill;
      });
    },
    written: (channel) =>
      [...world.messages.values()].filter(
        (message) => message.channel_id === channel && message.author.id === world.bot.id,
      ),
    async close() {
      await own.close();
      server.closeAllConnections();
      await new Promise<void>((resolve) => server.close(() => resolve()));
    },
  };
}

function isSettled({ acknowledgedAt, isExpired }: Interaction): boolean {
  return acknowledgedAt !== undefined || isExpired === true;
}
