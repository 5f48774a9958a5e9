// All who speak in one run, each on an errand of their own, at a rate for all of them together; and what each was answered.
import { setTimeout as pause } from "node:timers/promises";
import type { Chance } from "../support/random-tables.ts";
import { errandOf, type Role, type Saying } from "./errands.ts";
import type { Speaker } from "./speaker.ts";
import { waitUntil } from "./waiting.ts";

/** One thing said by one person, as often as it took. */
export interface Spoken {
  readonly saying: Saying;
  /** What the platform called each try; undefined where only the program knows. */
  readonly ids: (string | undefined)[];
  isAnswered: boolean;
}

export interface Member {
  readonly speaker: Speaker;
  readonly role: Role;
  readonly spoken: Spoken[];
}

export interface Answer {
  readonly door: Speaker["door"];
  /** From when it was said first to when the answer could be read. */
  readonly milliseconds: number;
  /** By performance.now(). */
  readonly at: number;
}

export interface Crowd {
  readonly members: readonly Member[];
  readonly answers: readonly Answer[];
  /** What went wrong, a line each. */
  readonly troubles: readonly string[];
  /** Resolves when everybody has had their say. */
  readonly finished: Promise<void>;
  /** How many things were said again because nobody answered, or the bot said it had lost them. */
  said(): { readonly once: number; readonly again: number };
  /** Lets nobody begin to speak, and waits for what is open; false when something stays unanswered. */
  quiet(milliseconds: number): Promise<boolean>;
  goOn(): void;
  isFinished(): boolean;
}

export interface Pace {
  /** Things said a second by all together. */
  readonly rate: number;
  /** How long one waits for an answer before saying it again, in milliseconds. */
  readonly patience: number;
  readonly mostTries: number;
}

export function crowdOf(
  speakers: readonly { readonly speaker: Speaker; readonly role: Role }[],
  pace: Pace,
  chance: Chance,
): Crowd {
  const members: Member[] = speakers.map(({ speaker, role }) => ({ speaker, role, spoken: [] }));
  const answers: Answer[] = [];
  const troubles: string[] = [];
  const meanPause = (1000 * speakers.length) / pace.rate;
  let isHeld = false;
  let isOver = false;
  let open = 0;
  let again = 0;

  async function speak(member: Member, saying: Saying): Promise<void> {
    const spoken: Spoken = { saying, ids: [], isAnswered: false };
    member.spoken.push(spoken);
    const outcomes: string[] = [];
    const from = performance.now();
    for (let number = 1; number <= pace.mostTries && !spoken.isAnswered; number += 1) {
      again += Number(number > 1);
      const { id, outcome } = await member.speaker.say(saying.words, pace.patience);
      spoken.ids.push(id);
      outcomes.push(`${outcome} after ${((performance.now() - from) / 1000).toFixed(1)} s`);
      spoken.isAnswered = outcome === "answered";
      if (outcome === "lost") await pause(1000);
    }
    const at = performance.now();
    if (spoken.isAnswered) answers.push({ door: member.speaker.door, milliseconds: at - from, at });
    else
      troubles.push(
        `${member.speaker.conversation}: "${saying.words}" was never answered: ${outcomes.join(", ")}`,
      );
  }

  async function live(member: Member, index: number): Promise<void> {
    // Spread over the first pause, so that the rate is even from the beginning.
    await pause(2 * meanPause * chance());
    for (const saying of errandOf(member.role, `keeper${index}`, chance)) {
      while (isHeld) await pause(50);
      open += 1;
      try {
        await speak(member, saying);
      } finally {
        open -= 1;
      }
      await pause(2 * meanPause * chance());
    }
  }

  const finished = Promise.all(members.map(live)).then(() => {
    isOver = true;
  });
  return {
    members,
    answers,
    troubles,
    finished,
    said: () => ({ once: members.reduce((sum, { spoken }) => sum + spoken.length, 0), again }),
    quiet(milliseconds) {
      isHeld = true;
      return waitUntil(() => open === 0, milliseconds, 50);
    },
    goOn() {
      isHeld = false;
    },
    isFinished: () => isOver,
  };
}
