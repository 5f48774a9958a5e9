// How much parts of a small run differ from each other: plausible ranges.
import type { Sourced } from "./sourced.ts";

export interface SmallRunSpread extends Sourced {
  readonly quantity: string;
  readonly range: string;
  readonly remark: string;
  readonly unit: string;
}

const RANGE = { source: "plausible range, from memory, no source", basis: "common practice" } as const;

export const SMALL_RUN_SPREADS: readonly SmallRunSpread[] = [
  {
    quantity: "hand lay-up panel, length or width per metre",
    range: "2 to 4 mm",
    remark: "one sigma about 1 mm",
    unit: "mm",
    ...RANGE,
  },
  {
    quantity: "hand lay-up panel mass",
    range: "8 to 20 percent between parts",
    remark: "one sigma about 6 percent",
    unit: "g",
    ...RANGE,
  },
  {
    quantity: "hand lay-up thickness within one part",
    range: "2.0 to 5.0 mm",
    remark: "",
    unit: "mm",
    ...RANGE,
  },
  { quantity: "SMC panel mass", range: "1 to 3 percent", remark: "", unit: "g", ...RANGE },
  { quantity: "SMC panel dimension per metre", range: "0.3 to 0.8 mm", remark: "", unit: "mm", ...RANGE },
  { quantity: "injection-moulded part, 100 mm", range: "0.1 to 0.3 mm", remark: "", unit: "mm", ...RANGE },
  { quantity: "injection-moulded mass", range: "0.5 to 2 percent", remark: "", unit: "g", ...RANGE },
  { quantity: "sand casting, 200 mm", range: "0.8 to 1.6 mm", remark: "", unit: "mm", ...RANGE },
  { quantity: "sand casting mass", range: "3 to 8 percent", remark: "", unit: "g", ...RANGE },
  { quantity: "pressure die casting, 200 mm", range: "0.2 to 0.5 mm", remark: "", unit: "mm", ...RANGE },
  {
    quantity: "hand-formed aluminium panel, per metre",
    range: "3 to 8 mm",
    remark: "",
    unit: "mm",
    ...RANGE,
  },
  { quantity: "hole drilled to a jig", range: "0.3 to 0.8 mm", remark: "", unit: "mm", ...RANGE },
  {
    quantity: "hole drilled by eye at fitting",
    range: "1.5 to 5 mm",
    remark: "two cars may not swap parts without slotting",
    unit: "mm",
    ...RANGE,
  },
  { quantity: "gel-coat thickness", range: "0.4 to 0.8 mm", remark: "", unit: "mm", ...RANGE },
  { quantity: "works paint on metal", range: "90 to 160 micrometres", remark: "", unit: "um", ...RANGE },
  {
    quantity: "works paint on GRP over gel coat or primer",
    range: "150 to 400 micrometres",
    remark: "",
    unit: "um",
    ...RANGE,
  },
  {
    quantity: "respray",
    range: "200 to 500 micrometres",
    remark: "over 1,000 means filler",
    unit: "um",
    ...RANGE,
  },
  {
    quantity: "shrinkage of a GRP copy against its pattern, each generation",
    range: "0.2 to 0.5 percent linear",
    remark: "mould and part each shrink",
    unit: "percent",
    ...RANGE,
  },
  {
    quantity: "mould life, GRP tool",
    range: "100 to 500 pulls before re-surfacing",
    remark: "detail softens, parting flash grows",
    unit: "pulls",
    ...RANGE,
  },
  {
    quantity: "lead time, trim and lamps",
    range: "2 to 12 weeks; to 18 months with bought-in surplus",
    remark: "long right tail in small works",
    unit: "weeks",
    ...RANGE,
  },
  { quantity: "lead time, body shell", range: "1 to 12 weeks", remark: "", unit: "weeks", ...RANGE },
  { quantity: "lead time, glass", range: "3 to 26 weeks", remark: "", unit: "weeks", ...RANGE },
  {
    quantity: "lead time, castings (cast date to car)",
    range: "4 to 40 weeks",
    remark: "",
    unit: "weeks",
    ...RANGE,
  },
  {
    quantity: "overlap of old and new part at a running change",
    range: "2 to 20 cars, or 2 to 16 weeks",
    remark: "longer for slow trims",
    unit: "cars",
    ...RANGE,
  },
  {
    quantity: "carry-over of left-over parts",
    range: "to 18 months; last cars use up the shelf",
    remark: "",
    unit: "months",
    ...RANGE,
  },
  {
    quantity: "share of genuine parts without a maker’s mark",
    range: "10 to 60 percent in hand-made series",
    remark: "mark is strong when there, weak when absent",
    unit: "percent",
    ...RANGE,
  },
  {
    quantity: "shrinkage of a casting copied from an original, aluminium or iron",
    range: "1.0 to 1.3 percent smaller in aluminium, about 1 percent in iron",
    remark: "unless the copyist allowed for it; machined faces and drilled holes do not shrink",
    unit: "percent",
    ...RANGE,
  },
];
