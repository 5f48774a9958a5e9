/** discord.js as this door uses it: few intents, little remembered, shards as many as Discord asks for. */
import { Client, GatewayIntentBits, Options, Partials, REST, Routes } from "discord.js";
import { z } from "zod";
import { OutsideError } from "../errors.ts";
import { insisted, troubleOf } from "./trouble.ts";

const Application = z.object({ id: z.string(), flags: z.number().optional() });
/** Discord's application flags: the privileged intent granted, or granted to a bot in few servers. */
const MAY_READ_CONTENT = (1 << 18) | (1 << 19);
const MINUTE = 60_000;
const MESSAGES_REMEMBERED = 25;
const MEMBERS_REMEMBERED = 200;

export interface Opened {
  readonly client: Client;
  readonly rest: REST;
  readonly application: string;
}

/** Throws OutsideError when the token is refused. */
export async function openClient(token: string, apiBase: string | undefined): Promise<Opened> {
  const api = apiBase === undefined ? {} : { api: apiBase };
  const rest = new REST(api).setToken(token);
  const application = await ownApplication(rest);
  const isGranted = ((application.flags ?? 0) & MAY_READ_CONTENT) !== 0;
  const client = new Client({
    intents: [
      GatewayIntentBits.Guilds,
      GatewayIntentBits.GuildMessages,
      GatewayIntentBits.DirectMessages,
      ...(isGranted ? [GatewayIntentBits.MessageContent] : []),
    ],
    partials: [Partials.Channel, Partials.Message],
    // Answers to interactions do not count against the 50 requests a second a bot may make, and may not wait for them. What does
    // count is told by Discord with a 429, which is waited out.
    // Every interaction has a queue of its own there, which is of no more use after its one call.
    rest: { ...api, globalRequestsPerSecond: 10_000, handlerSweepInterval: MINUTE },
    shards: "auto",
    allowedMentions: { parse: [], repliedUser: false },
    failIfNotExists: false,
    makeCache: Options.cacheWithLimits({
      ...Options.DefaultMakeCacheSettings,
      MessageManager: MESSAGES_REMEMBERED,
      GuildMemberManager: {
        maxSize: MEMBERS_REMEMBERED,
        keepOverLimit: (member) => member.id === member.client.user.id,
      },
      UserManager: { maxSize: 1000, keepOverLimit: (user) => user.id === user.client.user?.id },
      ReactionManager: 0,
      PresenceManager: 0,
      VoiceStateManager: 0,
      GuildScheduledEventManager: 0,
    }),
  });
  return { client, rest, application: application.id };
}

async function ownApplication(rest: REST): Promise<z.output<typeof Application>> {
  try {
    return Application.parse(await insisted(() => rest.get(Routes.currentApplication())));
  } catch (failure) {
    const reason = troubleOf(failure) === "unreachable" ? "cannot be reached" : "refuses the token";
    throw new OutsideError(
      `DISCORD_TOKEN: Discord ${reason}; look at the token and at DISCORD_API_BASE`,
      failure,
    );
  }
}
