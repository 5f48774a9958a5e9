/** Every sentence of `witness-mark changeover`, in the words of the trade; probabilities in the words of the published scale. */
import { formatInterval, type ProvenanceGrade, type ShapeOfChange } from "../../../knowledge/index.ts";

export const fileRefusals = {
  missing: "does not exist",
  noFile: "is no ordinary file; the list itself is needed, as comma-separated text",
  large: "is larger than 16 MB; give the sightings of one part at a time",
  notText: "is not text in UTF-8; save it from the spreadsheet as comma-separated text in UTF-8",
  empty: "has no sightings under its first row",
  unread: (code: string) => `cannot be read (${code})`,
} as const;

export const placeOfFault = (row: number, column: number) =>
  column === 0 ? `row ${row}` : `row ${row}, column ${column}`;
export const moreFaults = (count: number) => `and ${count} more; mend these first`;

export const optionRefusals = {
  sightings: "--sightings: a list of sightings is needed, as comma-separated text",
  partAlone: "--part: --handbook is needed with it",
  window:
    "--from and --to are needed, or --handbook: the first and last month of the whole production, such as 1976-09 and 1985-06",
  halfWindow: "--from and --to: both are needed",
  backwards: "--to: lies before --from",
  century: "--from and --to: no more than a century is looked at",
  date: (option: string) => `--${option}: a date is needed, written 1980, 1980-05 or 1980-05-17`,
  unknown: (option: string, written: string, meant: string | undefined, known: string) =>
    `--${option} ${JSON.stringify(written)}: ${meant === undefined ? `not known; there is ${known}` : `not known; did you mean ${meant}`}`,
  onBothSides: (id: string) => `--old and --new: ${JSON.stringify(id)} cannot be both`,
  noneSeen: (counts: string) => `--old and --new: no sighting of either; the list has ${counts}`,
  noneBuilt: (when: string) => `no sighting was built within production, ${when}`,
  which: (counts: string) => `--old and --new are needed: the list has ${counts}`,
} as const;

const MOST_LISTED = 8;

/** "first-alloy (12), second-moulded (3)". */
export function listedCounts(counts: ReadonlyMap<string, number>): string {
  const named = [...counts].map(([name, count]) => `${name} (${count})`);
  const left = named.length - MOST_LISTED;
  return [...named.slice(0, MOST_LISTED), ...(left > 0 ? [`${left} more`] : [])].join(", ");
}

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

export const headings = {
  change: (part: string | undefined) => (part === undefined ? "The change" : `The change of the ${part}`),
  oneVariant: (part: string | undefined) => (part === undefined ? "One variant" : `The ${part}, one variant`),
  suspects: "Looks swapped or misread",
  wanted: "Cars wanted next, the most telling first; ask again after each",
  sightings: "Sightings",
  shape: "Shape of the change",
  ends: "Last old, first new",
  markets: { market: "Market by market", trim: "Trim by trim" },
  assumptions: "Taken for granted",
  table: "The picture as a table",
} as const;

export const labels = {
  old: "old",
  new: "new",
  month: "Most likely month",
  interval: "90 % interval",
  middle: "As likely before as after",
  speed: "How it changed",
  lastOld: "last old",
  firstNew: "first new",
  lastTrusted: "last old that is no suspect",
  firstTrusted: "first new that is no suspect",
} as const;

export const noMonth = "none stands out: it may be that nothing changed within production";
export const builtWords = (when: string) => `built ${when}`;
export const asBuiltWords = (chance: string) => `as built: ${chance}`;
export const notAsBuiltWords = (chance: string) => `not the type it was built with: ${chance}`;
export const runnerUpWords = (shape: string, chance: string) => `else ${shape}: ${chance}`;
export const notOneChange =
  "The month and the interval above hold only if there was one change; the sightings point to another history.";
export const throughoutWords = (which: string, chance: string) =>
  `That only the ${which} was fitted, from the first car to the last, is ${chance}.`;
export const endsAreNoInterval =
  "The stretch between the two is no interval: it misses the change about as often as not.";
export const noSuspects = "none is more likely than not";
export const nothingWanted = "no build month would tell more";
export const wantedWords = (when: string, chance: string) => `${when}: the new one on it is ${chance}`;
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

export const countOfOne = (count: number) => `${count}`;
export const countWords = (count: number, old: number, fresh: number) => `${count}: ${old} old, ${fresh} new`;
export const sightingsCounted = (count: number) => `${count} ${count === 1 ? "sighting" : "sightings"}`;
export const outsideWords = (ids: string) => `not used, built outside production: ${ids}`;
export const otherVariantsWords = (counts: string) => `not used, another variant: ${counts}`;
export const groupName = (name: string) => (name === "" ? "not said" : name);
export const groupWords = (middle: string, interval: string, count: number) =>
  `about ${middle}, 90 %: ${interval} (${sightingsCounted(count)})`;

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
  refused: (why: string) => `cannot say: it ${why}`,
} as const;

export const assumptionWords = {
  window: (when: string, by: "options" | "handbook") =>
    `production ran ${when}${by === "handbook" ? " (handbook)" : ""}`,
  evenProduction: "as many cars were built in one month as in another",
  production: "cars built per year as in the handbook, evenly within a year",
  stated: "the handbook's periods are a hint: the sightings can overrule it",
  notStated: "no period is known beforehand",
  order: (old: string, fresh: string) =>
    `${old} was the old one and ${fresh} the new: its cars are later on average`,
  swaps: (chances: string) => `chance of a swap, to be corrected by the sightings: ${chances}`,
  swapsFixed: (chances: string) => `chance of a swap: ${chances}`,
  rulings: (count: number) => `${sightingsCounted(count)} counted as built by a keeper's ruling`,
  replacements: "replacements of the old and of the new kind are equally easy to have",
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

export const tableColumns = ["id", "built", "type", "history", "not the type built with"] as const;

/** An instant as the day it falls in. */
export function dayWords(instant: number): string {
  return formatInterval({ from: instant, to: instant });
}

export function monthWords(instant: number): string {
  const month = Math.floor(instant + 1e-7);
  return formatInterval({ from: month, to: month + 1 });
}
