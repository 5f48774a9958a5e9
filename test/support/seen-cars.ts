// Cars that members saw, as observations: kinds of a part on build dates, accepted or not, and a store that holds them.

import { ledgerStep } from "../../bot/community/ledger.ts";
import type { Observation } from "../../bot/community/observations/observation.ts";
import type { Store } from "../../bot/index.ts";
import { demoKnowledge } from "./demo-knowledge.ts";

export interface SeenCar {
  readonly part?: string;
  readonly variant: string;
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  readonly grade?: Observation["saw"]["grade"];
  readonly stands?: Observation["stands"];
  readonly by?: string;
  readonly car?: Observation["saw"]["car"];
}

/** The car as an observation; by default of a spoiler, documented from new, accepted. */
export function seenCar(number: number, seen: SeenCar): Observation {
  const from = 12 * seen.year + seen.month - 1;
  const { part = "rear-spoiler", variant, grade = "documented-from-new", stands = "accepted" } = seen;
  const by = seen.by ?? `member ${number}`;
  return {
    by,
    byName: by,
    at: 1000 * number,
    conversation: "club:bench",
    edition: demoKnowledge().handbook.edition,
    saw: {
      handbook: demoKnowledge().handbook.cover.id,
      part,
      variant,
      reports: [],
      car: { built: { from, to: from + 1 }, trim: "s", ...seen.car },
      grade,
      seen: null,
      photographs: [],
      links: [],
      credit: false,
    },
    stands,
    kinds: [{ variant, chance: 0.95 }],
    reason: null,
    isRuledAsBuilt: false,
    sayings: [],
  };
}

const alphabet = "0123456789abcdefghjkmnpqrstvwxyz";

/** "a000-0007": an id of the form that people read out. */
export function seenId(number: number): string {
  const figures = Array.from({ length: 7 }, (_, place) => {
    const worth = alphabet.length ** (6 - place);
    return alphabet[Math.floor(number / worth) % alphabet.length];
  }).join("");
  return `a${figures.slice(0, 3)}-${figures.slice(3)}`;
}

/** Keeps the observations in a community, with the ledger's step for each. */
export async function keepSeen(
  store: Store,
  observations: readonly Observation[],
  community = "home",
): Promise<void> {
  for (const [number, observation] of observations.entries()) {
    const id = seenId(number);
    const change = {
      kind: "observation",
      id: `${community}/${id}`,
      by: observation.by,
      at: observation.at,
      why: "seen",
    };
    await store.advance(change, () => ({
      state: observation,
      outcome: null,
      alongside: [
        ledgerStep(community, [{ kind: "observation", id }], observation.by, observation.at, "seen"),
      ],
    }));
  }
}

/** Nine spoilers about the change of April 1980, one of them on a car of 1983 and so a suspect. */
export const seenSpoilers: readonly SeenCar[] = [
  ...[1, 2, 3, 4].map((month) => ({ variant: "first-drained", year: 1980, month })),
  ...[5, 6, 7, 8].map((month) => ({ variant: "second", year: 1980, month })),
  { variant: "first-drained", year: 1983, month: 3, grade: "history-unknown" },
];

/** Twelve panels of three kinds that followed each other. */
export const seenPanels: readonly SeenCar[] = [
  { variant: "engine-turned", year: 1977 },
  { variant: "crackle", year: 1979 },
  { variant: "crackle-symbols", year: 1983 },
].flatMap((kind) => [1, 4, 7, 10].map((month) => ({ part: "instrument-panel", ...kind, month })));
