// The time of each turn of a long conversation. The same conversation is held several times over, because a turn is a pure
// function: the least of its times is what it takes when nobody else is at the machine.

import { playTurns, type Talk } from "../support/long-conversation.ts";
import { timedOnProcessor } from "../support/processor-time.ts";
import { chanceFrom } from "../support/random-tables.ts";

export interface Play {
  readonly start: number;
  readonly turns: number;
  /** Turns of another conversation to warm up on. */
  readonly warmUp: number;
}

const PLAYS = 3;

export interface TurnTimes {
  readonly byTheClock: readonly number[];
  /** What the thread took of the processor: what stays of it on a machine with others. */
  readonly onProcessor: readonly number[];
}

/** Milliseconds of each turn, the least of three plays. */
export function timesOfTurns(
  talk: Omit<Talk, "around" | "chance">,
  { start, turns, warmUp }: Play,
): TurnTimes {
  playTurns({ ...talk, chance: chanceFrom(start + 1), around: (work) => work() }, warmUp);
  const byTheClock = new Array<number>(turns).fill(Number.POSITIVE_INFINITY);
  const onProcessor = [...byTheClock];
  for (let play = 0; play < PLAYS; play += 1) {
    let turn = 0;
    const around: Talk["around"] = (work) => {
      const took = timedOnProcessor(work);
      byTheClock[turn] = Math.min(byTheClock[turn] as number, took.byTheClock);
      onProcessor[turn] = Math.min(onProcessor[turn] as number, took.onProcessor);
      turn += 1;
      return took.result;
    };
    playTurns({ ...talk, chance: chanceFrom(start), around }, turns);
  }
  return { byTheClock, onProcessor };
}
