// The conversations of a community that people have read, held in a group on the double: the replies are the same, word for word, and
// what is said, there or to one alone, and what is told to keepers and askers, can be read.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { communityMemories, openBot, plainText, type Reply } from "../../../bot/index.ts";
import { clockFrom } from "../../support/community-talk.ts";
import { demoKnowledge } from "../../support/demo-knowledge.ts";
import { asKept, parseGolden } from "../../support/golden-conversation.ts";
import { silentLog } from "../../support/logs.ts";
import { type Club, group, openClub } from "./club.ts";

const folder = join(import.meta.dirname, "../../conversations/community");
const desk = -1009;
const statuses = { owner: "creator", keeper: "administrator" } as const;

test.each(readdirSync(folder).filter((name) => name.endsWith(".txt")))(
  "%s is held in a group as it is anywhere",
  async (name) => {
    const turns = parseGolden(readFileSync(join(folder, name), "utf8"));
    const { club, speak, close } = await openedClub(turns.map(({ said }) => spokenBy(said)));
    const ids = maskOf();
    for (const { said, reply } of turns) {
      if (isUnpressable(spokenBy(said).words, club.replies.at(-1))) continue;
      const read = await speak(ids.unmasked(said));
      const last = club.replies.at(-1);
      if (last === undefined) throw new Error("nothing was replied");
      const [there = ""] = reply.split(/\n?--> /u);
      const replied = withoutAddresses(ids.masked(asText(last, club)));
      expect(`> ${said}\n${replied}`).toBe(`> ${said}\n${withoutAddresses(there.trim())}`);
      for (const block of last.blocks) {
        if (block.kind === "text") expect(read, said).toContain(inOneLine(block.text));
      }
      for (const [, told = ""] of reply.matchAll(/^--> to [^\n]*:\n([^\n]*)/gmu)) {
        expect(ids.masked(read), said).toContain(inOneLine(told.split(" – ")[0] ?? ""));
      }
    }
    await close();
  },
  120_000,
);

interface Spoken {
  readonly name: string;
  readonly standing: string | undefined;
  readonly words: string;
}

function spokenBy(line: string): Spoken {
  const [, name = "owner", standing, words = line] = /^\((\w+)(?:, (\w+))?\) (.*)$/u.exec(line) ?? [];
  return { name, standing, words };
}

async function openedClub(all: readonly Spoken[]) {
  const store = memoryStore();
  const bot = openBot({
    knowledge: () => [demoKnowledge()],
    store,
    memories: communityMemories(store),
    clock: clockFrom(),
    log: silentLog,
    secretKey: "a secret that only tests know, and they tell everybody",
    platform: "telegram",
  });
  const platforms = { telegram: { keepersPlace: { chat: desk } } };
  const community = `telegram-${group}`;
  await bot.changeSettings(community, "set-up", { ...(await bot.settings(community)), platforms });
  const club = await openClub({ bot, store });
  const { people, world } = club.double;
  people.group(desk, "Keepers");
  const persons = new Map<string, number>();

  // Who keeps and who owns was so before anybody spoke.
  for (const { name, standing } of all) {
    const id = persons.get(name) ?? 300 + persons.size;
    if (!persons.has(name)) people.person(id, name);
    persons.set(name, id);
    people.privateChat(id);
    const isVouched = standing === "owner" || standing === "keeper";
    if (isVouched || !world.rooms.get(group)?.members.has(id)) {
      people.join(group, id, isVouched ? statuses[standing] : "member");
    }
  }

  const stands = () =>
    new Map(
      [...world.rooms.keys()].flatMap((chat) =>
        club.written(chat).map((kept) => [kept, kept.edits] as const),
      ),
    );

  return {
    club,
    /** What can be read anew, anywhere, once it was said and told. */
    async speak(line: string): Promise<string> {
      const { name, words } = spokenBy(line);
      const before = stands();
      const person = persons.get(name) ?? 0;
      const label = labelPressed(words, club.replies.at(-1));
      const shown = club
        .written(group)
        .findLast(({ buttons }) => buttons.flat().some(({ text }) => text === label));
      if (label === undefined) people.say(group, person, `@${world.bot.username} ${words}`);
      else people.press(group, shown?.id ?? 0, person, label);
      await club.settled();
      await expect.poll(async () => (await bot.notices(9)).length).toBe(0);
      const changed = [...stands()].filter(([kept, edits]) => before.get(kept) !== edits);
      return inOneLine(changed.map(([{ text, caption }]) => text ?? caption ?? "").join(" "));
    },
    async close() {
      await club.close();
      expect(club.double.violations).toEqual([]);
      expect(club.double.rung).toEqual([]);
    },
  };
}

/** What a script may press and nobody can: here only what is on offer can be pressed. */
function isUnpressable(words: string, before: Reply | undefined): boolean {
  return /^\[[^\]]+: [^\]]+\]$/u.test(words) && labelPressed(words, before) === undefined;
}

/** "[feature: state]" presses the answer of that state; undefined for words. */
function labelPressed(words: string, before: Reply | undefined): string | undefined {
  const state = /^\[[^\]]+: ([^\]]+)\]$/u.exec(words)?.[1];
  const question = before?.blocks.findLast((block) => block.kind === "question");
  return question?.answers.find(({ id }) => id === state)?.label;
}

/** As the conversation's file has it: people by name, the edition by its place. */
function asText(reply: Reply, club: Club): string {
  const names = [...club.double.world.users.values()];
  const text = names.reduce(
    (sum, { id, first_name }) => sum.replaceAll(`telegram:${id}`, first_name),
    plainText(reply),
  );
  const kept = asKept(
    text.replaceAll("settings: telegram", "settings: club"),
    demoKnowledge().handbook.edition,
  );
  return reply.isPrivate === true ? `(only to the one who asked)\n${kept}` : kept;
}

/** The address of a page names its community and nothing else that is the same elsewhere. */
function withoutAddresses(text: string): string {
  return text.replace(/(\/[a-z]+\/)\S+\/[0-9a-f]{32}/gu, "$1…");
}

/** Ids by the order in which they turn up. */
function maskOf() {
  const names = new Map<string, string>();
  return {
    masked: (text: string) =>
      text.replace(/\b[0-9a-hjkmnp-tv-z]{4}-[0-9a-hjkmnp-tv-z]{4}\b|\b[0-9a-f]{20}\b/gu, (id) => {
        if (!names.has(id)) names.set(id, `<${names.size + 1}>`);
        return names.get(id) ?? id;
      }),
    unmasked: (text: string) =>
      text.replace(/<\d+>/gu, (mark) => [...names].find(([, name]) => name === mark)?.[0] ?? mark),
  };
}

function inOneLine(text: string): string {
  return text.replaceAll(/\s+/gu, " ").trim();
}
