// What a date of change costs: a whole chain of twenty variants, and one more sighting beside two hundred.

import { type CellGrid, cellGrid } from "../../../knowledge/dating/cells.ts";
import { changeoverChain } from "../../../knowledge/dating/changeover-chain.ts";
import { posteriorOf, whenChanged } from "../../../knowledge/dating/dated-change.ts";
import { groupReports } from "../../../knowledge/dating/report-groups.ts";
import { leastProcessorMilliseconds } from "../../support/processor-time.ts";
import { type Chance, chanceFrom } from "../../support/random-tables.ts";
import { simulatedProduction, simulatedWindow, simulateSightings } from "../../support/simulated-works.ts";
import type { Row } from "../row.ts";

const START = 8;
const SIGHTINGS = 10_000;
const VARIANTS = 20;
const MONTHS = 240;

export const changeoverTimes: Row = {
  name: "changeover-times",
  about: "processor time of one estimate, the least of a few runs",
  starts: [START],
  measure: () => [
    {
      what: `${SIGHTINGS} sightings of ${VARIANTS} variants, one in seven known to the year`,
      value: wholeChain(),
      unit: "ms",
      budget: { atMost: 300 },
    },
    { what: "one more sighting beside 200", value: oneMore(), unit: "ms", budget: { atMost: 20 } },
  ],
};

function wholeChain(): number {
  const chance = chanceFrom(START);
  const seen = Array.from({ length: SIGHTINGS }, (_, index) => sighting(index, chance));
  const setting = { window: { from: 0, to: MONTHS }, replacements: new Array<number>(VARIANTS).fill(1) };
  return leastProcessorMilliseconds(6, () => changeoverChain(setting, seen));
}

/** Variants that followed each other at even distances, a tenth of the parts swapped. */
function sighting(index: number, chance: Chance) {
  const at = Math.floor(MONTHS * chance());
  const fitted = Math.floor((at * VARIANTS) / MONTHS);
  const variant = chance() < 0.1 ? Math.floor(VARIANTS * chance()) : fitted;
  const year = 12 * Math.floor(at / 12);
  const built = index % 7 === 0 ? { from: year, to: year + 12 } : { from: at, to: at + 1 };
  return { id: `car-${index}`, variant, built, swap: 0.1, misread: 0.01 };
}

function oneMore(): number {
  const setting = {
    window: simulatedWindow,
    production: simulatedProduction,
    replacements: { old: 0.4, new: 0.6 },
  };
  const works = { changed: 31, overlap: 2, swapRate: 0.1, misread: 0.02, dates: "month" } as const;
  const all = simulateSightings({ ...works, sightings: 208 }, chanceFrom(START));
  const grid = cellGrid(setting.window, setting.production) as CellGrid;
  const memory = new Map();
  const upTo = (count: number) =>
    posteriorOf(grid, setting, groupReports(grid, all.slice(0, count)), { memory });
  upTo(200);
  return leastProcessorMilliseconds(8, (more) => whenChanged(upTo(201 + more)));
}
