// Whether nine in ten intervals of a changeover hold the true date, on simulated works whose truth is known: a short run over every kind
// of history, and a long one in which each cell has 204 sets, enough for a floor. Both begin from numbers on which no prior, grid or
// threshold was chosen, and none is changed after reading what they give.

import { type ChangeoverCoverage, changeoverCoverage } from "../changeover-coverage.ts";
import type { Row } from "../row.ts";

const SHORT = { sets: 2_000, start: 20_261_125 } as const;
/** 17 times each of the 960 kinds of history: 204 sets for each number of sightings × swap rate × overlap. */
const LONG = { sets: 16_320, start: 731_905_482 } as const;

export const changeoverCoverageRow: Row = {
  name: "changeover-coverage",
  about: `${SHORT.sets} sets of 5 to 200 sightings, 0 to 30 % swapped, overlaps of 0 to 12 months`,
  starts: [SHORT.start],
  measure: () => figuresOf(changeoverCoverage(SHORT.sets, SHORT.start), "small cells"),
};

export const changeoverCells: Row = {
  name: "changeover-cells",
  about: `the same over ${LONG.sets} sets, at least 200 in each cell`,
  starts: [LONG.start],
  measure: () => figuresOf(changeoverCoverage(LONG.sets, LONG.start)),
};

/** Small cells have no floor: chance alone moves them too far. */
function figuresOf(found: ChangeoverCoverage, remark?: string): ReturnType<Row["measure"]> {
  const { overall, worstCell, medianWidth, pooledPrecision } = found;
  const share = overall.held / overall.sets;
  const isFloored = remark === undefined;
  return [
    { what: "90 % intervals that hold the truth, least", value: share, unit: "", budget: { atLeast: 0.88 } },
    { what: "the same, most: wider than need be", value: share, unit: "", budget: { atMost: 0.94 } },
    {
      what: `worst cell (${worstCell.name})`,
      value: worstCell.share,
      unit: "",
      ...(isFloored ? { budget: { atLeast: 0.8 } } : { remark }),
    },
    { what: "median width, months", value: medianWidth, unit: "" },
    {
      what: "not as built, right when said, from 20 sightings on",
      value: pooledPrecision,
      unit: "",
      budget: { atLeast: 0.9 },
    },
    ...[20, 60, 200].map((count) => ({
      what: `the same with ${count} sightings`,
      value: found.precision[`n=${count}`] ?? 0,
      unit: "",
    })),
  ];
}
