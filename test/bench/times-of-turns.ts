// The time of each turn of a long conversation. The same conversation is held several times over, because a turn is a pure
// function: the least of its times is what it takes when nobody else is at the machine.

import { playTurns, type Talk } from "../support/long-conversation.ts";
import { chanceFrom } from "../support/random-tables.ts";
import { timed } from "./percentiles.ts";

export interface Play {
  readonly start: number;
  readonly turns: number;
  /** Turns of another conversation to warm up on. */
  readonly warmUp: number;
}

const PLAYS = 3;

/** Milliseconds of each turn, the least of three plays. */
export function timesOfTurns(
  talk: Omit<Talk, "around" | "chance">,
  { start, turns, warmUp }: Play,
): readonly number[] {
  playTurns({ ...talk, chance: chanceFrom(start + 1), around: (work) => work() }, warmUp);
  const least = new Array<number>(turns).fill(Number.POSITIVE_INFINITY);
  for (let play = 0; play < PLAYS; play += 1) {
    let turn = 0;
    const around: Talk["around"] = (work) => {
      const { milliseconds, result } = timed(work);
      least[turn] = Math.min(least[turn] ?? milliseconds, milliseconds);
      turn += 1;
      return result;
    };
    playTurns({ ...talk, chance: chanceFrom(start), around }, turns);
  }
  return least;
}
