// How often the intervals of a chain of changeovers hold the truth, and how wide they are: five variants over five
// years, changes at chance months, a tenth of the parts swapped, dates to the month, a quarter of them to the year.
import type { ChainSighting } from "../../knowledge/dating/chain-reports.ts";
import { changeoverChain } from "../../knowledge/dating/changeover-chain.ts";
import { type Chance, chanceFrom } from "../support/random-tables.ts";

export interface ChainCoverage {
  /** Changeovers judged, and intervals that held the truth. */
  readonly changeovers: number;
  readonly held: number;
  readonly medianWidth: number;
}

const MONTHS = 60;
const VARIANTS = 5;
const OVERLAPS = [0, 0, 2, 4] as const;

interface Change {
  readonly at: number;
  readonly overlap: number;
}

/** Changes in order, their overlaps not running into each other. */
function drawChanges(chance: Chance): readonly Change[] {
  for (;;) {
    const changes = Array.from({ length: VARIANTS - 1 }, () => ({
      at: MONTHS * chance(),
      overlap: OVERLAPS[Math.floor(4 * chance())] ?? 0,
    })).sort((one, other) => one.at - other.at);
    const isApart = changes.every(({ at, overlap }, index) => {
      const next = changes[index + 1];
      const start = at - overlap / 2;
      return start >= 0 && at + overlap / 2 <= (next ? next.at - next.overlap / 2 : MONTHS);
    });
    if (isApart) return changes;
  }
}

function drawCar(changes: readonly Change[], index: number, chance: Chance): ChainSighting {
  const built = MONTHS * chance();
  let fitted = 0;
  for (const { at, overlap } of changes) {
    const share = overlap === 0 ? Number(built >= at) : (built - at) / overlap + 0.5;
    if (chance() < share) fitted += 1;
  }
  const isSwapped = chance() < 0.1;
  const carried = isSwapped ? Math.floor(VARIANTS * chance()) : fitted;
  const year = 12 * Math.floor(built / 12);
  const month = Math.floor(built);
  const interval = chance() < 0.25 ? { from: year, to: year + 12 } : { from: month, to: month + 1 };
  return { id: `car-${index}`, variant: carried, built: interval, swap: 0.1, misread: 0.01 };
}

/** Nominal 90 % intervals of `sets` chains of `count` sightings each. */
export function chainCoverage(sets: number, count: number, start: number): ChainCoverage {
  const chance = chanceFrom(start);
  const widths: number[] = [];
  let held = 0;
  for (let set = 0; set < sets; set += 1) {
    const changes = drawChanges(chance);
    const seen = Array.from({ length: count }, (_, index) => drawCar(changes, index, chance));
    const setting = { window: { from: 0, to: MONTHS }, replacements: new Array<number>(VARIANTS).fill(1) };
    const chain = changeoverChain(setting, seen);
    if (!chain.ok) throw new Error(chain.problem.message);
    chain.value.changeovers.forEach(({ interval }, index) => {
      const at = changes[index]?.at ?? Number.NaN;
      held += Number(interval.from <= at && at <= interval.to);
      widths.push(interval.to - interval.from);
    });
  }
  widths.sort((one, other) => one - other);
  return {
    changeovers: widths.length,
    held,
    medianWidth: widths[Math.floor(widths.length / 2)] ?? Number.NaN,
  };
}
