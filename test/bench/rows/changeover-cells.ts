// The long run beside `changeover-coverage`: as many sets as give each cell enough of them for a floor. It begins from a number on which no
// prior, grid or threshold was chosen, and none is changed after reading what it gives.

import { changeoverCoverage } from "../changeover-coverage.ts";
import type { Row } from "../row.ts";

/** 17 times each of the 960 kinds of history: 204 sets for each number of sightings × swap rate × overlap. */
const SETS = 16_320;
const START = 731_905_482;

export const changeoverCells: Row = {
  name: "changeover-cells",
  about: `${SETS} sets, at least 200 for each number of sightings × swap rate × overlap`,
  starts: [START],
  measure: () => {
    const { overall, worstCell, medianWidth, pooledPrecision, precision } = changeoverCoverage(SETS, START);
    const share = overall.held / overall.sets;
    return [
      {
        what: "90 % intervals that hold the truth, least",
        value: share,
        unit: "",
        budget: { atLeast: 0.88 },
      },
      { what: "the same, most: wider than need be", value: share, unit: "", budget: { atMost: 0.94 } },
      { what: `worst cell (${worstCell.name})`, value: worstCell.share, unit: "", budget: { atLeast: 0.8 } },
      { what: "median width, months", value: medianWidth, unit: "" },
      {
        what: "not as built, right when said, from 20 sightings on",
        value: pooledPrecision,
        unit: "",
        budget: { atLeast: 0.9 },
      },
      ...[20, 60, 200].map((count) => ({
        what: `the same with ${count} sightings`,
        value: precision[`n=${count}`] ?? 0,
        unit: "",
      })),
    ];
  },
};
