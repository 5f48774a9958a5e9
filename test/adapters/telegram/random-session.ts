// A session that chance draws: members who write whatever, press what is there and what is not, send again what was sent, while the
// platform refuses, cuts and forgets. What must hold all the time is looked at after every few steps.

import type { Store } from "../../../bot/index.ts";
import { botId, type Kept } from "../../doubles/telegram/world.ts";
import { annotatedMessages } from "../../support/corpus-folder.ts";
import { demoKnowledge } from "../../support/demo-knowledge.ts";
import { pick } from "../../support/draws.ts";
import { hostileMessages } from "../../support/hostile-messages.ts";
import type { Chance } from "../../support/random-tables.ts";
import { type Club, group, newDouble, openClub } from "./club.ts";

export interface Session {
  readonly club: Club;
  /** Takes so many steps; gives the milliseconds from each to the bot's being done with it. */
  steps(count: number): Promise<readonly number[]>;
  /** What did not hold, in words. */
  readonly broken: readonly string[];
  close(): Promise<void>;
}

const members = 12;
const faults = ["too many", "server error", "server error after", "cut before", "cut after"] as const;
const failing = ["sendMessage", "editMessageText", "answerCallbackQuery", "getUpdates"] as const;

export async function randomSession(chance: Chance, store: Store): Promise<Session> {
  const double = await newDouble();
  const club = await openClub({ double, store });
  const { people, world } = double;
  const persons = Array.from({ length: members }, (_, index) => 1000 + index);
  for (const person of persons) {
    people.person(person, `Member ${person}`);
    people.privateChat(person);
    people.join(group, person);
  }
  const texts = annotatedMessages("development").map(({ text }) => text);
  const hostile = hostileMessages(demoKnowledge().handbook, texts);
  const commands = [
    "/help",
    "/undo",
    "/why",
    "/check",
    "/cases",
    "/pins",
    "/queue",
    "/askkeeper",
    "/observe",
    "/pin x",
  ];
  const broken: string[] = [];

  function words(): string {
    const luck = chance();
    if (luck < 0.15) return pick(chance, commands);
    return luck < 0.75 ? pick(chance, texts) : (hostile(chance).text ?? "");
  }

  function act(): void {
    const person = pick(chance, persons);
    const chat = chance() < 0.3 ? group : person;
    const shown = mineIn(chat).findLast(({ buttons }) => buttons.length > 0);
    const luck = chance();
    if (luck < 0.3 && shown !== undefined)
      people.press(chat, shown.id, person, pick(chance, labelsOf(shown)));
    else if (luck < 0.34 && shown !== undefined) people.forge(chat, shown.id, person, pick(chance, forged));
    else if (luck < 0.38 && world.delivered.length > 0) people.redeliver();
    else if (luck < 0.41) people.ask(person, words().slice(0, 256));
    else write(chat, person);
    if (chance() < 0.04) double.fail(pick(chance, failing), faultOf(pick(chance, faults)));
  }

  function write(chat: number, person: number): void {
    const last = mineIn(chat).at(-1)?.id;
    const text = chat === group ? `@${world.bot.username} ${words()}` : words();
    people.say(chat, person, text, last === undefined || chance() < 0.7 ? {} : { replyTo: last });
  }

  function mineIn(chat: number): readonly Kept[] {
    const messages = world.rooms.get(chat)?.messages ?? [];
    return messages.filter(({ from, isDeleted }) => from === botId && !isDeleted);
  }

  function look(): void {
    for (const { id, messages } of world.rooms.values()) {
      const keys = messages.filter(({ isDeleted }) => !isDeleted).flatMap(keysOf);
      if (new Set(keys).size < keys.length) broken.push(`the same was said twice in ${id}`);
    }
    for (const [id, { count }] of world.callbacks) if (count === 0) broken.push(`${id} was not acknowledged`);
  }

  return {
    club,
    broken,
    async steps(count) {
      const times: number[] = [];
      for (let step = 1; step <= count; step += 1) {
        const begun = performance.now();
        act();
        await club.settled();
        times.push(performance.now() - begun);
        if (step % 20 === 0) {
          look();
          club.forget();
        }
      }
      return times;
    },
    async close() {
      await club.close();
      await double.close();
      broken.push(...double.violations, ...double.rung.map((one) => `it rang for ${one}`));
    },
  };
}

function labelsOf({ buttons }: Kept): readonly string[] {
  return buttons.flat().flatMap(({ text, callback_data }) => (callback_data === undefined ? [] : [text]));
}

/** The board that a message shows. */
function keysOf({ buttons }: Kept): readonly string[] {
  const [data] = buttons.flat().flatMap(({ callback_data }) => callback_data ?? []);
  return data === undefined ? [] : [data.split(".")[0] ?? ""];
}

const forged = ["", "x.0", "AAAAAAAAAAA.0", "AAAAAAAAAAA.zz", "🦊", "\u0000"];

function faultOf(kind: (typeof faults)[number]) {
  return kind === "too many" ? { kind, seconds: 1 } : { kind };
}
