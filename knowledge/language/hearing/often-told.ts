/**
 * Which part kinds enough messages tell of for their words to be learnt: all states of one, or none, because a state is heard by
 * comparison with the others. Measured on the demo handbook with messages of unseen writers: names alone F1 0.882; words of all
 * parts by 50, 400, 1000, 2000 messages 0.839, 0.881, 0.890, 0.911; by 300 of one part, the other parts' 0.784, without ears for them 0.874.
 */
import type { LearntWords } from "../../handbook/schema.ts";
import type { TaughtMessage, ToldState } from "./learn-words.ts";

/** How often the states of a part kind must be told, on the average of its states; 400 messages tell about 2, 1000 about 5. */
export const leastTimes = 5;

/** "part/feature/state": ids hold no slash. */
export function stateKey({ part, feature, state }: ToldState): string {
  return `${part}/${feature}/${state}`;
}

/** In how many messages each state is told, by its key; those told in none are not in it. */
export function timesTold(messages: readonly TaughtMessage[]): ReadonlyMap<string, number> {
  const times = new Map<string, number>();
  for (const { told } of messages) {
    for (const key of new Set(told.map(stateKey))) times.set(key, (times.get(key) ?? 0) + 1);
  }
  return times;
}

/**
 * The words without the ears of part kinds that are told too seldom: these are read by their names. What tells parts apart goes
 * with them, because it would hear every part as one of those it knows.
 */
export function ofOftenTold(learnt: LearntWords, messages: readonly TaughtMessage[]): LearntWords {
  const times = timesTold(messages);
  const kept = Object.entries(learnt.parts).filter(([part, features]) => {
    const keys = Object.entries(features).flatMap(([feature, ears]) =>
      Object.keys(ears).map((state) => stateKey({ part, feature, state })),
    );
    return isOftenTold(keys, times);
  });
  const isWhole = kept.length === Object.keys(learnt.parts).length;
  return { ...learnt, parts: Object.fromEntries(kept), spokenOf: isWhole ? learnt.spokenOf : {} };
}

/** Whether states, by their keys, are told often enough together; of no states there is nothing to learn. */
export function isOftenTold(states: readonly string[], times: ReadonlyMap<string, number>): boolean {
  const told = states.reduce((sum, key) => sum + (times.get(key) ?? 0), 0);
  return states.length > 0 && told >= leastTimes * states.length;
}
