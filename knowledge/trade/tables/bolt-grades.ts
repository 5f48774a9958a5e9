// Marks on bolt heads and what strength they promise. Where the published chart gives a proof load equal to
// the tensile strength (grades 5.2 and 7) the values are 85 and 105 ksi, from memory: proof cannot equal tensile.
import { FROM_MEMORY, type Sourced } from "./sourced.ts";

export interface BoltGrade extends Sourced {
  readonly standard: string;
  readonly grade: string;
  readonly headMark: string;
  readonly tensileOverYield: string;
  readonly proof: string;
  readonly unit: string;
}

const HEAD_MARK_CHART = {
  source: "Published head-mark chart (published fastener chart)",
  basis: "standard",
} as const;
const HEAD_MARK_CHART_MENDED = {
  source:
    "Published head-mark chart (published fastener chart); strengths from memory where that chart is plainly wrong",
  basis: "common practice",
} as const;
const ISO_MARKING_NOTE = { source: "Published explanation of ISO 898-1 marking", basis: "standard" } as const;

export const BOLT_GRADES: readonly BoltGrade[] = [
  {
    standard: "SAE J429",
    grade: "1",
    headMark: "none",
    tensileOverYield: "60/36",
    proof: "33",
    unit: "ksi",
    ...FROM_MEMORY,
  },
  {
    standard: "SAE J429",
    grade: "2",
    headMark: "none",
    tensileOverYield: "74/57 to 3/4 in; 60/36 above",
    proof: "55; 33",
    unit: "ksi",
    ...HEAD_MARK_CHART,
  },
  {
    standard: "SAE J429",
    grade: "5",
    headMark: "3 radial lines, 120 degrees apart",
    tensileOverYield: "120/92 to 1 in; 105/81 above",
    proof: "85; 74",
    unit: "ksi",
    ...HEAD_MARK_CHART,
  },
  {
    standard: "SAE J429",
    grade: "5.2",
    headMark: "3 radial lines grouped in one half (60 degrees)",
    tensileOverYield: "120/92",
    proof: "85",
    unit: "ksi",
    ...HEAD_MARK_CHART_MENDED,
  },
  {
    standard: "SAE J429",
    grade: "7",
    headMark: "5 radial lines",
    tensileOverYield: "133/115",
    proof: "105",
    unit: "ksi",
    ...HEAD_MARK_CHART_MENDED,
  },
  {
    standard: "SAE J429",
    grade: "8",
    headMark: "6 radial lines, 60 degrees apart",
    tensileOverYield: "150/130",
    proof: "120",
    unit: "ksi",
    ...HEAD_MARK_CHART,
  },
  {
    standard: "SAE J429",
    grade: "8.2",
    headMark: "6 radial lines grouped",
    tensileOverYield: "150/130",
    proof: "120",
    unit: "ksi",
    ...HEAD_MARK_CHART_MENDED,
  },
  {
    standard: "ISO 898-1",
    grade: "4.6",
    headMark: "4.6",
    tensileOverYield: "400/240",
    proof: "225",
    unit: "MPa",
    ...FROM_MEMORY,
  },
  {
    standard: "ISO 898-1",
    grade: "4.8",
    headMark: "4.8",
    tensileOverYield: "420/340",
    proof: "310",
    unit: "MPa",
    ...FROM_MEMORY,
  },
  {
    standard: "ISO 898-1",
    grade: "5.6",
    headMark: "5.6",
    tensileOverYield: "500/300",
    proof: "280",
    unit: "MPa",
    ...FROM_MEMORY,
  },
  {
    standard: "ISO 898-1",
    grade: "5.8",
    headMark: "5.8",
    tensileOverYield: "520/420",
    proof: "380",
    unit: "MPa",
    ...FROM_MEMORY,
  },
  {
    standard: "ISO 898-1",
    grade: "6.8",
    headMark: "6.8",
    tensileOverYield: "600/480",
    proof: "440",
    unit: "MPa",
    ...FROM_MEMORY,
  },
  {
    standard: "ISO 898-1",
    grade: "8.8",
    headMark: "8.8",
    tensileOverYield: "800/640 to M16; 830/660 above",
    proof: "580; 600",
    unit: "MPa",
    ...HEAD_MARK_CHART,
  },
  {
    standard: "ISO 898-1",
    grade: "9.8",
    headMark: "9.8",
    tensileOverYield: "900/720",
    proof: "650",
    unit: "MPa",
    ...FROM_MEMORY,
  },
  {
    standard: "ISO 898-1",
    grade: "10.9",
    headMark: "10.9",
    tensileOverYield: "1040/940",
    proof: "830",
    unit: "MPa",
    ...HEAD_MARK_CHART,
  },
  {
    standard: "ISO 898-1",
    grade: "12.9",
    headMark: "12.9",
    tensileOverYield: "1220/1100",
    proof: "970",
    unit: "MPa",
    ...HEAD_MARK_CHART,
  },
  {
    standard: "ISO 898-1",
    grade: "08.8",
    headMark: "08.8 (leading 0)",
    tensileOverYield: "reduced loadability: shape of head or shank",
    proof: "",
    unit: "MPa",
    ...ISO_MARKING_NOTE,
  },
  {
    standard: "ISO 3506",
    grade: "A2-70",
    headMark: "A2-70",
    tensileOverYield: "700/450",
    proof: "",
    unit: "MPa",
    ...FROM_MEMORY,
  },
  {
    standard: "ISO 3506",
    grade: "A4-80",
    headMark: "A4-80",
    tensileOverYield: "800/600",
    proof: "",
    unit: "MPa",
    ...FROM_MEMORY,
  },
  {
    standard: "BS 1768 (Unified)",
    grade: "S, T, V",
    headMark:
      "three touching circles in a row on the head mean a Unified thread; letter R S T V for strength",
    tensileOverYield: "S 50, T 55, V 65 tons per sq in",
    proof: "",
    unit: "tons/in2",
    ...FROM_MEMORY,
  },
  {
    standard: "BS 1083 (BSW, BSF)",
    grade: "A, B, P, R, S, T",
    headMark: "letter on the head; often none",
    tensileOverYield: "R 45, S 50, T 55 tons per sq in",
    proof: "",
    unit: "tons/in2",
    ...FROM_MEMORY,
  },
  {
    standard: "German before 1968",
    grade: "5D 8G 10K 12K",
    headMark: "5D 6D 8G 10K 12K on the head",
    tensileOverYield: "8G about 8.8, 10K about 10.9, 12K about 12.9",
    proof: "",
    unit: "kp/mm2",
    ...FROM_MEMORY,
  },
  {
    standard: "JIS",
    grade: "4 5 7 8 9 11",
    headMark: "single figure, dot or bar marks",
    tensileOverYield: "4T 7T 9T tens of kgf/mm2",
    proof: "",
    unit: "kgf/mm2",
    ...FROM_MEMORY,
  },
];
