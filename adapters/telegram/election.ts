/**
 * Which of several processes fetches updates: one at a time, by a record in the store that they share. The holder keeps its place
 * without writing anything, for a history that only grows should not grow by the clock; whoever waits may call it in question, and
 * takes the place when the holder has not answered in time. Each waits by its own clock, so that clocks need not agree.
 */
import { randomUUID } from "node:crypto";
import { z } from "zod";
import type { Store } from "../../bot/index.ts";

const Place = z
  .strictObject({
    holder: z.string().nullable(),
    /** Counts the calls in question; an open one is unanswered. */
    calls: z.number().int(),
    isOpen: z.boolean(),
  })
  .readonly();
type Place = z.output<typeof Place>;

const kind = "telegram-poller";
const nobody: Place = { holder: null, calls: 0, isOpen: false };

export interface ElectionOptions {
  readonly store: Store;
  /** What is to be held by one: the bot's number on the platform. */
  readonly what: string;
  /** Milliseconds that only go forward. */
  readonly now?: () => number;
  /** How often the record is looked at; the holder answers within this. */
  readonly lookEvery?: number;
  /** How long a holder may leave a call unanswered. */
  readonly patience?: number;
  /** How often somebody who waits calls the holder in question. */
  readonly callEvery?: number;
}

export interface Candidate {
  isElected(): boolean;
  /** Looks at the record once; what `start` does again and again. */
  look(): Promise<void>;
  start(onFailure: (failure: unknown) => void): void;
  /** Gives the place up, so that the next one need not wait. */
  close(): Promise<void>;
}

export function candidate(options: ElectionOptions): Candidate {
  const { store, what, now = () => performance.now() } = options;
  const { lookEvery = 2000, patience = 10_000, callEvery = 60_000 } = options;
  const self = randomUUID();
  let isElected = false;
  let lastSeen = now();
  let waiting: { readonly calls: number; readonly since: number } | undefined;
  let nextCall = now();
  let timer: NodeJS.Timeout | undefined;
  let looking: Promise<void> = Promise.resolve();

  const change = async (why: string, next: (place: Place) => Place): Promise<Place> =>
    store.advance({ kind, id: what, by: self, at: Date.now(), why }, (state) => {
      const changed = next(read(state));
      return { state: changed, outcome: changed };
    });
  const take = (from: Place) =>
    change("takes the place", (place) =>
      place.holder === from.holder && place.calls === from.calls && place.isOpen === from.isOpen
        ? { holder: self, calls: place.calls, isOpen: false }
        : place,
    );

  async function look(): Promise<void> {
    const place = read(await store.current(kind, what));
    const after = await answered(place);
    isElected = after.holder === self;
    lastSeen = now();
  }

  async function answered(place: Place): Promise<Place> {
    if (place.holder === self) {
      return place.isOpen
        ? change("is here", (one) => (one.holder === self ? { ...one, isOpen: false } : one))
        : place;
    }
    if (place.holder === null) return take(place);
    if (!place.isOpen) return called(place);
    if (waiting?.calls !== place.calls) waiting = { calls: place.calls, since: now() };
    return now() - waiting.since >= patience ? take(place) : place;
  }

  async function called(place: Place): Promise<Place> {
    if (now() < nextCall) return place;
    nextCall = now() + callEvery;
    return change("calls in question", (one) =>
      one.holder === place.holder && !one.isOpen ? { ...one, calls: one.calls + 1, isOpen: true } : one,
    );
  }

  return {
    // Who has not been able to look for long may have been replaced.
    isElected: () => isElected && now() - lastSeen < patience,
    look,
    start(onFailure) {
      const again = async (): Promise<void> => {
        await look().catch(onFailure);
        timer = setTimeout(() => {
          looking = again();
        }, lookEvery);
        timer.unref();
      };
      looking = again();
    },
    async close() {
      await looking;
      clearTimeout(timer);
      if (!isElected) return;
      isElected = false;
      await change("gives the place up", (place) =>
        place.holder === self ? { ...place, holder: null } : place,
      );
    },
  };
}

function read(state: unknown): Place {
  const parsed = Place.safeParse(state);
  return parsed.success ? parsed.data : nobody;
}
