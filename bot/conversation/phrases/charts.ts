/** Words in and beside charts: their titles, the heads of the tables that say the same, what their signs mean. */

import type { ProvenanceGrade } from "../../../knowledge/index.ts";

// Evidence as a balance
export const evidenceTitle = (first: string, rival: string) => `What speaks for ${first}, what for ${rival}`;
export const evidenceHead = ["what was seen", "speaks for", "how strongly", "source"] as const;
/** A weight of one and of two decimal bans, as odds. */
export const oneBanWords = "10:1";
export const twoBansWords = "100:1";

// When each kind was fitted
export const fittedTitle = (part: string) => `When the works fitted each ${part}`;
export const fittedHead = ["kind", "cars built", "for"] as const;
export const fittedNowhere = (names: string) => `Never fitted by the works: ${names}.`;
export const fittedFor = (trims: readonly string[], markets: readonly string[]) =>
  [...trims, ...markets].join(", ");
export const carBuilt = (times: string) => `Your car was built ${times}.`;
export const carLegend = "your car";
export const fittedLegend = "fitted";
export const unsureLegend = "end not sure";
export const gradeLegend: Readonly<Record<ProvenanceGrade, string>> = {
  "documented-from-new": "documented from new",
  "one-owner": "one owner",
  "history-unknown": "history not known",
  "known-replaced": "known replaced",
};
export const suspectLegend = "looks swapped";
export const seenOnCars = (count: number) => (count === 1 ? "seen on one car" : `seen on ${count} cars`);
