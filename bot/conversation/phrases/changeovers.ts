/** Words about when one kind gave way to the next: in chat, on pages and in the command. */
import {
  formatInterval,
  type Interval,
  type ProvenanceGrade,
  type ShapeOfChange,
} from "../../../knowledge/index.ts";

export const gradeWords: Readonly<Record<ProvenanceGrade, string>> = {
  "documented-from-new": "documented from new",
  "one-owner": "one owner",
  "history-unknown": "history not known",
  "known-replaced": "known to be replaced",
};

/** Short enough for two columns on a phone. */
export const gradeSigns: Readonly<Record<ProvenanceGrade, string>> = {
  ...gradeWords,
  "known-replaced": "known replaced",
};

export const shapeWords: Readonly<Record<ShapeOfChange, string>> = {
  change: "one change, within a year",
  slow: "a slow change, over one and a half to four years",
  "both-throughout": "both fitted side by side throughout",
  "came-back": "the change went there and back",
  "carried-over": "no change, one of them fitted all along",
};

export const builtWords = (when: string) => `built ${when}`;

export const notAsBuiltWords = (chance: string) => `not the type it was built with: ${chance}`;

export const runnerUpWords = (shape: string, chance: string) => `else ${shape}: ${chance}`;

export const notOneChange =
  "The month and the interval above hold only if there was one change; the sightings point to another history.";

export const throughoutWords = (which: string, chance: string) =>
  `That only the ${which} was fitted, from the first car to the last, is ${chance}.`;

export const gradesTooHopeful = (chance: string) =>
  `That swaps are at least twice as common as the grades promise is ${chance}.`;

export const statedOutside =
  "What the handbook states lies outside the interval that the sightings give by themselves: one of the two wants looking into.";

export const speedWords = {
  weeks: (chance: string) => `at once or within weeks: ${chance}`,
  months: (chance: string) => `over some months: ${chance}`,
  unclear: (weeks: string, months: string) =>
    `cannot tell: at once or within weeks is ${weeks}, over some months is ${months}`,
} as const;

/** Cars of a trim in a market from which it is dated by itself. */
export const leastOfBoth = 5;

export const sightingsCounted = (count: number) => `${count} ${count === 1 ? "sighting" : "sightings"}`;

export const groupWords = (middle: string, interval: string, count: number) =>
  `about ${middle}, 90 %: ${interval} (${sightingsCounted(count)})`;

/** Behind a group's date: whether it is that of the others, from which it borrows. */
export const commonDateWords = (chance: string) => `; with the others: ${chance}`;

export const groupsLean = {
  market:
    "Few cars say little of a market by themselves: each date leans on the other markets, the more the fewer cars it has.",
  trim: "Few cars say little of a trim by themselves: each date leans on the other trims, the more the fewer cars it has.",
  "trim-and-market": `Within a market each trim leans on the other trims of that market, the more the fewer cars it has. A trim seen there on fewer than ${leastOfBoth} cars is not dated by itself: it goes by its market, or by its trim where that is dated apart.`,
} as const;

export const oneVariantWords = {
  noInterval:
    "Only one of the two variants has been seen, so there is no interval for a change; only this can be said:",
  alone: "The list has only one variant, so there is no interval for a change; only this can be said:",
  inUseUntil: (when: string) => `In use at least until ${when}`,
  inUseFrom: (when: string) => `In use at least from ${when}`,
  notTrusted: "No sighting is as built with nine chances in ten or more, so not even a last one can be named",
  endLead: "When use ended, by four published methods; trust the latest",
  beginningLead: "When use began, by four published methods, time running backwards; trust the earliest",
  endLimit: (estimate: string, limit: string) => `about ${estimate}, by ${limit} (19 in 20)`,
  beginningLimit: (estimate: string, limit: string) => `about ${estimate}, not before ${limit} (19 in 20)`,
  openEnd: (estimate: string) => `about ${estimate}; it may have gone on to the last car`,
  openBeginning: (estimate: string) => `about ${estimate}; it may have begun with the first car`,
  holdsIf: (assumption: string) => `if ${assumption}`,
  refused: (why: string) => `cannot say: ${why}`,
} as const;

export const pictureWords = {
  interval: "90 % interval",
  month: "most likely month",
  suspect: "looks swapped",
  range: "date not sure",
  oldLabel: (name: string) => `old: ${name}`,
  newLabel: (name: string) => `new: ${name}`,
  monthLine: (when: string) => `most likely ${when}`,
  intervalLine: (when: string) => `90 %: ${when}`,
  sightings: sightingsCounted,
} as const;

/** An instant as the day it falls in. */
export function dayWords(instant: number): string {
  return formatInterval({ from: instant, to: instant });
}

export function monthWords(instant: number): string {
  const month = Math.floor(instant + 1e-7);
  return formatInterval({ from: month, to: month + 1 });
}

/** The whole months that an interval touches within another: what is known to half a month is not said to the day. */
export function wholeMonths({ from, to }: Interval, within: Interval): string {
  const dust = 1e-6;
  return formatInterval({
    from: Math.floor(Math.max(from, within.from) + dust),
    to: Math.ceil(Math.min(to, within.to) - dust),
  });
}

// In chat
export const changeTitle = (part: string) => `When the ${part} changed`;
export const timelineHead = ["cars built", "kind", "how many", "not the type built with"] as const;
export const labelledFor = (label: string, name: string) => `${label}: ${name}`;
