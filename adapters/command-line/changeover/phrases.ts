/** Every sentence of `witness-mark changeover`, in the words of the trade; probabilities in the words of the published scale. */
import { sightingsCounted } from "../../../bot/index.ts";

export {
  builtWords,
  commonDateWords,
  dayWords,
  gradeSigns,
  gradesTooHopeful,
  gradeWords,
  groupsLean,
  groupWords,
  leastOfBoth,
  monthWords,
  notAsBuiltWords,
  notOneChange,
  oneVariantWords,
  pictureWords,
  runnerUpWords,
  shapeWords,
  speedWords,
  statedOutside,
  throughoutWords,
} from "../../../bot/index.ts";

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
  which: (counts: string) =>
    `--old and --new are needed: the handbook has not two of them fitted by the works; the list has ${counts}`,
  sameDates: (counts: string) =>
    `--old and --new are needed: the cars of both are equally old on average, so nothing tells which gave way; the list has ${counts}`,
  picture: "--picture: a file name that ends in .svg or .png is needed",
  twoForms: "--json and --csv: one of the two",
} as const;

const MOST_LISTED = 8;

/** "first-alloy (12), second-moulded (3)". */
export function listedCounts(counts: ReadonlyMap<string, number>): string {
  const named = [...counts].map(([name, count]) => `${name} (${count})`);
  const left = named.length - MOST_LISTED;
  return [...named.slice(0, MOST_LISTED), ...(left > 0 ? [`${left} more`] : [])].join(", ");
}

export const headings = {
  change: (part: string | undefined) => (part === undefined ? "The change" : `The change of the ${part}`),
  chain: (part: string | undefined) =>
    part === undefined ? "The changes, all at once" : `The changes of the ${part}, all at once`,
  oneVariant: (part: string | undefined) => (part === undefined ? "One variant" : `The ${part}, one variant`),
  suspects: "Looks swapped or misread",
  wanted: "Cars wanted next, the most telling first; ask again after each",
  sightings: "Sightings",
  shape: "Shape of the change",
  ends: "Last old, first new",
  markets: {
    market: "Market by market",
    trim: "Trim by trim",
    "trim-and-market": "Trim by trim in each market",
  },
  changeOfChain: (old: string, fresh: string) => `${old} to ${fresh}`,
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

export const noMonth = "none stands out";
export const asBuiltWords = (chance: string) => `as built: ${chance}`;
export const endsAreNoInterval =
  "The stretch between the two is no interval: it misses the change about as often as not.";
export const noSuspects = "none is more likely than not";
export const nothingWanted = "no build month would tell more";
export const wantedWords = (when: string, chance: string) => `${when}: the new one on it is ${chance}`;

export const seenWords = (name: string, count: number) => `${name} ${count}`;
export const shareWords = (name: string, share: number) => `${name} ${Math.round(100 * share)} %`;
export const countOfOne = (count: number) => `${count}`;
export const countWords = (count: number, old: number, fresh: number) => `${count}: ${old} old, ${fresh} new`;
export const outsideWords = (ids: string) => `not used, built outside production: ${ids}`;
export const otherVariantsWords = (counts: string) => `not used, another variant: ${counts}`;
export const groupName = (name: string) => (name === "" ? "not said" : name);
export const inMarket = (trim: string, market: string) => `${trim}, ${market}`;

export const assumptionWords = {
  window: (when: string, by: "options" | "handbook") =>
    `production ran ${when}${by === "handbook" ? " (handbook)" : ""}`,
  evenProduction: "as many cars were built in one month as in another",
  production: "cars built per year as in the handbook, evenly within a year",
  stated: "the handbook's periods are a hint: the sightings can overrule it",
  notStated: "no period is known beforehand",
  order: (old: string, fresh: string) =>
    `${old} was the old one and ${fresh} the new: its cars are later on average`,
  orderByHandbook: (old: string, fresh: string) =>
    `${old} was the old one and ${fresh} the new: the handbook has them begin so`,
  swaps: (chances: string) => `chance of a swap, to be corrected by the sightings: ${chances}`,
  swapsFixed: (chances: string) => `chance of a swap: ${chances}`,
  rulings: (count: number) => `${sightingsCounted(count)} counted as built by a keeper's ruling`,
  replacements: "replacements of the old and of the new kind are equally easy to have",
  replacementsSold: (shares: string) =>
    `replacements to be had, by the months of sale in the handbook: ${shares}`,
  chain: "each gave way to the next on all cars; of kinds fitted side by side ask with --old and --new",
  chainByHandbook: "they followed each other in the order in which the handbook has them begin",
  chainByCars: "they followed each other as the mean build dates of their cars do",
} as const;

export const tableColumns = ["id", "built", "type", "history", "not the type built with"] as const;
