/** What members have seen of a part kind, on its page. */
import type { ProvenanceGrade } from "../../../knowledge/index.ts";
import { gradeSigns } from "../../conversation/phrases/changeovers.ts";

export const changed = (old: string, fresh: string, interval: string, cars: number) =>
  `${old} gave way to ${fresh} between ${interval} (nine in ten; ${cars} cars seen).`;
export const sightingWords = (name: string, date: string, grade: ProvenanceGrade) =>
  `${name} on a car built ${date}, ${gradeSigns[grade]}`;
