// Whether nine in ten intervals of a changeover hold the true date, on simulated works whose truth is known.

import { type Coverage, changeoverCoverage } from "../changeover-coverage.ts";
import type { Row } from "../row.ts";

const SETS = 2000;
const START = 20_261_125;
const FEWEST_SETS = 200;
const FLAGGED = [20, 60, 200];

export const changeoverCoverageRow: Row = {
  name: "changeover-coverage",
  about: `${SETS} sets of 5 to 200 sightings, 0 to 30 % swapped, overlaps of 0 to 12 months`,
  starts: [START],
  measure: () => {
    const { overall, margins, worstCell, medianWidth, precision } = changeoverCoverage(SETS, START);
    const share = overall.held / overall.sets;
    const worst = worstOf(margins);
    return [
      {
        what: "90 % intervals that hold the truth, least",
        value: share,
        unit: "",
        budget: { atLeast: 0.88 },
      },
      { what: "the same, most: wider than need be", value: share, unit: "", budget: { atMost: 0.94 } },
      {
        what: `least where ${worst.name}, as everywhere with 200 sets or more`,
        value: worst.share,
        unit: "",
        budget: { atLeast: 0.8 },
        remark: `${worst.sets} sets`,
      },
      { what: `worst cell (${worstCell.name})`, value: worstCell.share, unit: "", remark: "small cells" },
      { what: "median width, months", value: medianWidth, unit: "" },
      ...FLAGGED.map((sightings) => ({
        what: `not as built, right when said, ${sightings} sightings`,
        value: precision[`n=${sightings}`] ?? 0,
        unit: "",
        budget: { atLeast: 0.9 },
      })),
    ];
  },
};

/** Of all kinds of history that were played often enough to say. */
function worstOf(margins: Readonly<Record<string, Coverage>>) {
  const shares = Object.entries(margins)
    .filter(([, { sets }]) => sets >= FEWEST_SETS)
    .map(([name, { sets, held }]) => ({ name, sets, share: held / sets }));
  return shares.reduce((least, one) => (one.share < least.share ? one : least), {
    name: "none",
    sets: 0,
    share: 1,
  });
}
