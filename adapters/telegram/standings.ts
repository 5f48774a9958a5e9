/**
 * What the platform vouches for: who made the group decides who keeps, its administrators keep. Asked of the platform at most once a
 * minute a chat, because a group of thousands asks more often than its administrators change.
 */
import type { Api } from "grammy";
import type { Standing } from "../../bot/index.ts";
import { patiently } from "./patiently.ts";
import { chatOfCommunity } from "./places.ts";
import type { Records } from "./records.ts";
import type { TelegramSettings } from "./settings.ts";
import { isPassing, troubleOf } from "./trouble.ts";

const FRESH_MILLISECONDS = 60_000;

export interface Standings {
  /** Undefined: the platform vouches for nothing, and what the bot itself knows of the person counts. */
  of(community: string, person: number, settings: TelegramSettings): Promise<Standing | undefined>;
}

interface Known {
  readonly at: number;
  readonly standings: ReadonlyMap<number, Standing>;
}

export function standingsBy(api: Api, records: Records, now: () => number = Date.now): Standings {
  const known = new Map<number, Known>();

  async function administrators(chat: number): Promise<ReadonlyMap<number, Standing>> {
    const kept = known.get(chat);
    if (kept !== undefined && now() - kept.at < FRESH_MILLISECONDS) return kept.standings;
    const standings = await asked(api, chat);
    known.set(chat, { at: now(), standings });
    return standings;
  }

  return {
    async of(community, person, { keepers, keeperIds }) {
      const origin = chatOfCommunity(community);
      if (origin === undefined) return keeperIds.includes(person) ? "keeper" : undefined;
      const { now: chat = origin } = await records.chat(origin);
      const vouched = (await administrators(chat)).get(person);
      if (vouched === "owner") return vouched;
      if (keeperIds.includes(person)) return "keeper";
      return keepers === "administrators" ? vouched : undefined;
    },
  };
}

/** A chat that cannot be asked vouches for nobody. */
async function asked(api: Api, chat: number): Promise<ReadonlyMap<number, Standing>> {
  try {
    const members = await patiently(() => api.getChatAdministrators(chat));
    return new Map(
      members.map(({ user, status }) => [user.id, status === "creator" ? "owner" : "keeper"] as const),
    );
  } catch (failure) {
    const trouble = troubleOf(failure);
    // What passes is tried again: an administrator must not be told for a minute that they are none.
    if (trouble.kind === "other" || isPassing(trouble)) throw failure;
    return new Map();
  }
}
