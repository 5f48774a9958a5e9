/** Words for what a look costs its owner; the handbook's scale runs from 1 (from outside) to 8 (dismantling). */

import { numberInWords } from "./grammar.ts";

export function effortWords(effort: number): string {
  if (effort < 1.5) return "a look from outside";
  if (effort < 2.5) return "a closer look";
  if (effort < 4.5) return "a few minutes' work";
  if (effort < 6.5) return "real work, with something taken off";
  return "dismantling";
}

/** How often a look goes wrong, as people say it. */
export function misreadWords(rate: number): string {
  if (rate <= 0.02) return "hardly ever misread";
  const oneIn = Math.round(1 / rate);
  return `misread about once in ${numberInWords(oneIn)}`;
}
