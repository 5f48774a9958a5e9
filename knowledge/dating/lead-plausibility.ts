// Whether a part's date mark goes with the build date of its car. A part dated after the car was built is called just
// that: it may be a later part, a wrong build date or a misread mark, but it is no long or short lead.
import type { Interval } from "../calendar/interval.ts";
import { type LeadTime, leadAtMost } from "../identification/lead-time.ts";

export interface LeadPlausibility {
  readonly verdict: "fits" | "dated-after-built" | "hardly-time" | "long-on-the-shelf";
  /** Smallest and largest lead that both dates allow, in months; negative: the part is younger than the car. */
  readonly shortest: number;
  readonly longest: number;
  /** P(a lead of at most the longest), P(a lead of at least the shortest): small values are the unusual ends. */
  readonly atMostLongest: number;
  readonly atLeastShortest: number;
}

/** A lead this improbable at its most favourable is no usual lead (judgement, as for broken links of date marks). */
const UNUSUAL = 0.02;

/** What a mark and a build date say of each other under the lead of the part kind. */
export function leadPlausibility(lead: LeadTime, mark: Interval, built: Interval): LeadPlausibility {
  const shortest = built.from - mark.to;
  const longest = built.to - mark.from;
  const atMostLongest = leadAtMost(lead, longest);
  const atLeastShortest = 1 - leadAtMost(lead, shortest);
  return {
    verdict: verdictOf(longest, atMostLongest, atLeastShortest),
    shortest,
    longest,
    atMostLongest,
    atLeastShortest,
  };
}

function verdictOf(
  longest: number,
  atMostLongest: number,
  atLeastShortest: number,
): LeadPlausibility["verdict"] {
  if (longest <= 0) return "dated-after-built";
  if (atMostLongest < UNUSUAL) return "hardly-time";
  return atLeastShortest < UNUSUAL ? "long-on-the-shelf" : "fits";
}
