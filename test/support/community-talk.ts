// A conversation of a community as text: "> (ann) words", "> (kim, keeper) words", "> (ann) [feature: state]"; what follows is the reply,
// and after "--> to ann:" or "--> to the keepers:" what is told elsewhere. Ids are written <1>, <2> … in the order in which they turn up.
import { memoryStore } from "../../adapters/store/memory.ts";
import {
  type Bot,
  type Clock,
  communityMemories,
  IncomingMessage,
  type Knowledge,
  type Log,
  openBot,
  type Pages,
  pagesOf,
  plainText,
  type Standing,
  type Store,
  standings,
} from "../../bot/index.ts";
import type { Surroundings } from "../../bot/receive.ts";
import { demoKnowledge } from "./demo-knowledge.ts";

export interface CommunityTalk {
  readonly bot: Bot;
  readonly store: Store;
  readonly pages: Pages;
  /** What somebody says, and everything that is told because of it, as text. */
  say(line: string): Promise<string>;
}

/** 1 November 2026, noon. */
const noon = Date.UTC(2026, 10, 1, 12);

export const silentLog: Log = { info: () => undefined, warn: () => undefined, error: () => undefined };

/** A clock of its own: a second a look, always the same day. */
export function clockFrom(start: number = noon): Clock {
  let milliseconds = start;
  return {
    today: () => ({ from: 12 * 2026 + 10, to: 12 * 2026 + 10 + 1 / 30 }),
    milliseconds() {
      milliseconds += 1000;
      return milliseconds;
    },
  };
}

export function communityTalk(
  store: Store = memoryStore(),
  clock: Clock = clockFrom(),
  served: () => readonly Knowledge[] = () => [demoKnowledge()],
): CommunityTalk {
  const surroundings: Surroundings = {
    knowledge: served,
    store,
    memories: communityMemories(store),
    clock,
    log: silentLog,
    platform: "club",
    secretKey: "a secret that only tests know, and they tell everybody",
  };
  const bot = openBot(surroundings);
  const names = new Map<string, string>();

  const masked = (text: string): string =>
    text.replace(/\b[0-9a-hjkmnp-tv-z]{4}-[0-9a-hjkmnp-tv-z]{4}\b|\b[0-9a-f]{20}\b/gu, (id) => {
      if (!names.has(id)) names.set(id, `<${names.size + 1}>`);
      return names.get(id) ?? id;
    });
  const unmasked = (text: string): string =>
    text.replace(/<\d+>/gu, (mark) => [...names].find(([, name]) => name === mark)?.[0] ?? mark);

  return {
    bot,
    store,
    pages: pagesOf(surroundings),
    async say(line) {
      const reply = await bot.receive(communityMessage(unmasked(line)));
      const told: string[] = [];
      for (const { id, to, reply: notice } of await bot.notices(100)) {
        const whom = to.audience === "keepers" ? "the keepers" : to.person;
        told.push(`--> to ${whom}:\n${plainText(notice)}`);
        await bot.noticeSettled(id, "told");
      }
      const edition = demoKnowledge().handbook.edition.slice(0, 8);
      const text = [reply.isPrivate === true ? "(only to the one who asked)" : "", plainText(reply), ...told];
      return masked(text.filter((piece) => piece !== "").join("\n")).replaceAll(edition, "current");
    },
  };
}

/** Keepers meet on this platform, so that what is for them is told there. */
export async function withKeepersPlace(talk: CommunityTalk): Promise<CommunityTalk> {
  const settings = await talk.bot.settings("home");
  await talk.bot.changeSettings("home", "set-up", { ...settings, platforms: { club: {} } });
  return talk;
}

function communityMessage(line: string): IncomingMessage {
  const [, from = "owner", standing, words = line] = /^\((\w+)(?:, (\w+))?\) (.*)$/u.exec(line) ?? [];
  const pressed = /^\[([^:\]]+(?::[^:\]]+)?): ([^\]]+)\]$/u.exec(words);
  const said =
    pressed?.[1] === undefined || pressed[2] === undefined
      ? { text: words }
      : { answer: { feature: pressed[1], state: pressed[2] } };
  return IncomingMessage.parse({
    conversation: "club:bench",
    from,
    name: from,
    ...said,
    ...(standing === undefined ? {} : { standing: standingNamed(standing) }),
  });
}

function standingNamed(name: string): Standing {
  const standing = standings.find((one) => one === name);
  if (standing === undefined) throw new Error(`no standing is called ${name}`);
  return standing;
}
