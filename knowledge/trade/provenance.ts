// What judges weigh, how much parts of a small run differ, and which paint is which: three tables for reading aloud.

import { sayProbability } from "./probability-words.ts";
import { PAINT_SYSTEMS } from "./tables/paint-systems.ts";
import { PROVENANCE_GRADES, type ProvenanceGrade } from "./tables/provenance-grades.ts";
import { SMALL_RUN_SPREADS } from "./tables/small-run-spreads.ts";
import { basisOf, type TradeReading } from "./trade-reading.ts";

/** The grade of an identifier such as "A1" or "X"; undefined when there is none. */
export function provenanceGradeById(grade: string): ProvenanceGrade | undefined {
  return PROVENANCE_GRADES.find((row) => row.grade === grade);
}

/** All provenance grades, strongest first, each with its suggested chance in words. */
export function readProvenanceGrades(): readonly TradeReading[] {
  return PROVENANCE_GRADES.map((row) => ({
    reading: `${row.grade}: ${row.evidence}; still as built ${sayProbability(row.chance)}`,
    why: row.shows === "" ? "a suggestion, to be set by the keepers" : row.shows,
    basis: basisOf(row),
  }));
}

/** Paint systems named by any of the words, or all when none is named. */
export function readPaintSystems(text: string): readonly TradeReading[] {
  const words = [
    "nitrocellulose",
    "cellulose",
    "alkyd",
    "enamel",
    "acrylic",
    "two-pack",
    "base coat",
    "clear",
    "water-borne",
    "gel coat",
    "primer",
    "electro-coat",
  ];
  const asked = words.filter((word) =>
    text
      .toLowerCase()
      .replace(/2k|(?:two|2)[- ]?pack/g, "two-pack")
      .replace("gelcoat", "gel coat")
      .includes(word),
  );
  const rows = PAINT_SYSTEMS.filter(
    (row) => asked.length === 0 || asked.some((word) => row.system.includes(word)),
  );
  return rows.map((row) => ({
    reading: `${row.system}: ${row.period}`,
    why: row.signs,
    basis: basisOf(row),
  }));
}

/** Spreads of a small run whose name shares a word with the question ("hand lay-up panel", "lead time, glass"). */
export function readSmallRunSpreads(text: string): readonly TradeReading[] {
  const spoken = text
    .toLowerCase()
    .replace(
      /(?:fib(?:re|er)[- ]?glass|glass[- ]?fib(?:re|er)|\bgrp\b)(?=.*shrink)|shrinkage of (?:grp|fib\w+)/g,
      "shrinkage copy",
    )
    .replace(/\bcopies\b.*smaller/, "shrinkage copy")
    .replace(/\bpulls\b/, "mould life tool")
    .replace(/hand[- ]laid/g, "hand panel");
  const asked = new Set(spoken.match(/[a-z]{4,20}/g) ?? []);
  const score = (quantity: string): number =>
    (quantity.toLowerCase().match(/[a-z]{4,20}/g) ?? []).filter((word) => asked.has(word)).length;
  const best = Math.max(...SMALL_RUN_SPREADS.map((row) => score(row.quantity)));
  if (best === 0) return [];
  return SMALL_RUN_SPREADS.filter((row) => score(row.quantity) === best).map((row) => ({
    reading: `${row.quantity}: ${row.range}`,
    why: row.remark === "" ? "a plausible range, not a limit" : row.remark,
    basis: basisOf(row),
  }));
}
