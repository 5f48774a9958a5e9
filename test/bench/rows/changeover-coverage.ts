// Whether nine in ten intervals of a changeover hold the true date, on simulated works whose truth is known.

import { changeoverCoverage } from "../changeover-coverage.ts";
import type { Row } from "../row.ts";

const SETS = 2000;
const START = 20_261_125;

export const changeoverCoverageRow: Row = {
  name: "changeover-coverage",
  about: `${SETS} sets of 5 to 200 sightings, 0 to 30 % swapped, overlaps of 0 to 12 months`,
  starts: [START],
  measure: () => {
    const { overall, worstCell, medianWidth, precision } = changeoverCoverage(SETS, START);
    const share = overall.held / overall.sets;
    return [
      {
        what: "90 % intervals that hold the truth, least",
        value: share,
        unit: "",
        budget: { atLeast: 0.88 },
      },
      { what: "the same, most: wider than need be", value: share, unit: "", budget: { atMost: 0.94 } },
      { what: `worst cell (${worstCell.name})`, value: worstCell.share, unit: "", remark: "small cells" },
      { what: "median width, months", value: medianWidth, unit: "" },
      { what: "not as built, right when said, n = 20", value: precision["n=20"] ?? 0, unit: "" },
    ];
  },
};
