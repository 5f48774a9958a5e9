/** From the options to the question: the sightings, which variant gave way to which, and within what production. */
import {
  type ChangeoverSetting,
  type Handbook,
  type Interval,
  midpoint,
  type PartKind,
  parseDateText,
  replacementsSold,
  type Sighting,
  statedChange,
} from "../../../knowledge/index.ts";
import { closestName } from "../../closest-name.ts";
import { OutsideError } from "../../errors.ts";
import { openHandbook } from "../../handbooks.ts";
import { type Options, UsageError } from "../options.ts";
import { oneLine } from "./one-line.ts";
import { listedCounts, optionRefusals } from "./phrases.ts";
import { readSightingsFile } from "./sightings-file.ts";

export const changeoverOptions = {
  sightings: "text",
  old: "text",
  new: "text",
  from: "text",
  to: "text",
  handbook: "text",
  part: "text",
  json: "flag",
  csv: "flag",
  picture: "text",
} as const;

type ChangeoverOptions = Options<typeof changeoverOptions>;

export interface ChangeoverQuestion {
  readonly sightings: readonly Sighting[];
  /** Ids of the variants that gave way and of those that came; one side may be empty. */
  readonly old: readonly string[];
  readonly new: readonly string[];
  /**
   * asked: by option; handbook: of two in the list, the one that the handbook has begin first is the old one; order: the one on the
   * older cars; alone: the list has but one.
   */
  readonly chosen: "asked" | "handbook" | "order" | "alone";
  /** All variants of the list in the order in which they followed each other, when they are more than two and none was asked for; else none. */
  readonly chain: readonly string[];
  readonly setting: ChangeoverSetting;
  readonly windowFrom: "options" | "handbook";
  readonly part: PartKind | undefined;
}

/** Throws UsageError for options that cannot be used together, OutsideError for what they name. */
export async function openQuestion(options: ChangeoverOptions): Promise<ChangeoverQuestion> {
  if (options.sightings === undefined) throw refusal(optionRefusals.sightings);
  if (options.part !== undefined && options.handbook === undefined) throw refusal(optionRefusals.partAlone);
  const asked = windowAsked(options);
  if (asked === undefined && options.handbook === undefined) throw refusal(optionRefusals.window);
  const handbook =
    options.handbook === undefined ? undefined : (await openHandbook(options.handbook)).handbook;
  const part = handbook && partNamed(handbook, options.part);
  const sightings = await readSightingsFile(options.sightings);
  const sides = sidesOf(options, sightings, part);
  const window = asked ?? windowOf(handbook);
  return {
    sightings,
    ...sides,
    part,
    windowFrom: asked === undefined ? "handbook" : "options",
    setting: { window, ...productionOf(handbook), ...statedBy(part, sides), ...soldBy(part, sides) },
  };
}

function refusal(message: string): UsageError {
  return new UsageError(message, "changeover");
}

function windowAsked({ from, to }: ChangeoverOptions): Interval | undefined {
  if (from === undefined && to === undefined) return undefined;
  if (from === undefined || to === undefined) throw refusal(optionRefusals.halfWindow);
  const [first, last] = [parseDateText(from), parseDateText(to)];
  if (first === undefined) throw refusal(optionRefusals.date("from"));
  if (last === undefined) throw refusal(optionRefusals.date("to"));
  if (last.to <= first.from) throw refusal(optionRefusals.backwards);
  if (last.to - first.from > 1200) throw refusal(optionRefusals.century);
  return { from: first.from, to: last.to };
}

/** From the first car of the first model to the last car of the last. */
function windowOf(handbook: Handbook | undefined): Interval {
  const spans = (handbook?.cars.models ?? []).flatMap(({ from, to }) => {
    const [first, last] = [parseDateText(from), parseDateText(to)];
    return first && last ? [{ from: first.from, to: last.to }] : [];
  });
  if (spans.length === 0) throw refusal(optionRefusals.window);
  return { from: Math.min(...spans.map(({ from }) => from)), to: Math.max(...spans.map(({ to }) => to)) };
}

function productionOf(handbook: Handbook | undefined): Pick<ChangeoverSetting, "production"> {
  const years = Object.entries(handbook?.cars.production ?? {});
  return years.length === 0 ? {} : { production: new Map(years.map(([year, cars]) => [Number(year), cars])) };
}

function partNamed(handbook: Handbook, written: string | undefined): PartKind | undefined {
  if (written === undefined) return undefined;
  const found = handbook.parts.find(({ id }) => id === written);
  if (found !== undefined) return found;
  const ids = handbook.parts.map(({ id }) => id);
  throw new OutsideError(optionRefusals.unknown("part", written, closestName(written, ids), ids.join(", ")));
}

type Sides = Pick<ChangeoverQuestion, "old" | "new" | "chosen" | "chain">;

/** What the handbook says is on sale, old against new type; nothing where it does not say. */
function soldBy(part: PartKind | undefined, sides: Sides): Pick<ChangeoverSetting, "replacements"> {
  const sold = part && replacementsSold(part, [...sides.old, ...sides.new]);
  if (sold === undefined || sides.old.length === 0 || sides.new.length === 0) return {};
  const sum = (months: readonly number[]): number => months.reduce((all, one) => all + one, 0);
  return {
    replacements: { old: sum(sold.slice(0, sides.old.length)), new: sum(sold.slice(sides.old.length)) },
  };
}

function statedBy(part: PartKind | undefined, sides: Sides): Pick<ChangeoverSetting, "stated"> {
  const periodsOf = (ids: readonly string[]) =>
    (part?.variants ?? []).filter(({ id }) => ids.includes(id)).flatMap(({ fitted }) => fitted);
  const stated = statedChange(periodsOf(sides.old), periodsOf(sides.new));
  return stated === undefined ? {} : { stated };
}

function sidesOf(
  options: ChangeoverOptions,
  sightings: readonly Sighting[],
  part: PartKind | undefined,
): Sides {
  const counts = countsOf(sightings);
  if (options.old === undefined && options.new === undefined) return sidesFound(sightings, counts, part);
  const known = [...new Set([...counts.keys(), ...(part?.variants ?? []).map(({ id }) => id)])];
  const named = (option: "old" | "new"): readonly string[] => {
    const ids = (options[option] ?? "").split(",").flatMap((id) => (id.trim() === "" ? [] : [id.trim()]));
    const strange = ids.find((id) => !known.includes(id));
    if (strange === undefined) return ids;
    const meant = closestName(strange, known);
    throw new OutsideError(optionRefusals.unknown(option, strange, meant, oneLine(listedCounts(counts))));
  };
  const sides = { old: named("old"), new: named("new") };
  const both = sides.old.find((id) => sides.new.includes(id));
  if (both !== undefined) throw refusal(optionRefusals.onBothSides(both));
  if (![...sides.old, ...sides.new].some((id) => counts.has(id))) {
    throw new OutsideError(optionRefusals.noneSeen(oneLine(listedCounts(counts))));
  }
  return { ...sides, chosen: "asked", chain: [] };
}

/** Of two variants the one that the handbook has begin first gave way, else the one on the older cars; more are a chain. */
function sidesFound(
  sightings: readonly Sighting[],
  counts: ReadonlyMap<string, number>,
  part: PartKind | undefined,
): Sides {
  const meanDate = (variant: string): number => {
    const dates = sightings.filter((one) => one.variant === variant).map(({ built }) => midpoint(built));
    return dates.reduce((sum, date) => sum + date, 0) / dates.length;
  };
  const byMeanDate = [...counts.keys()].sort(
    (one, other) => meanDate(one) - meanDate(other) || (one < other ? -1 : 1),
  );
  const [first, second] = byMeanDate;
  if (byMeanDate.length > 2) {
    const chain = part === undefined ? byMeanDate : fittedInOrder(part, counts);
    if (chain.length < 2) throw new OutsideError(optionRefusals.which(oneLine(listedCounts(counts))));
    return { old: chain.slice(0, -1), new: chain.slice(-1), chosen: "order", chain };
  }
  if (first === undefined || second === undefined) {
    return { old: first === undefined ? [] : [first], new: [], chosen: "alone", chain: [] };
  }
  const [began, followed] = part === undefined ? [] : fittedInTurn(part, counts);
  if (began !== undefined && followed !== undefined) {
    return { old: [began], new: [followed], chosen: "handbook", chain: [] };
  }
  if (Math.abs(meanDate(first) - meanDate(second)) < SAME_DATE) {
    throw new OutsideError(optionRefusals.sameDates(oneLine(listedCounts(counts))));
  }
  return { old: [first], new: [second], chosen: "order", chain: [] };
}

/** Less than a minute, in months: mean dates so near tell no order. */
const SAME_DATE = 1e-5;

/** Those of the list that the works fitted, by the beginning of their first period. */
function fittedInOrder(part: PartKind, counts: ReadonlyMap<string, number>): readonly string[] {
  return beginningsOf(part, counts).map(({ id }) => id);
}

/** The same, but none where two of them began together. */
function fittedInTurn(part: PartKind, counts: ReadonlyMap<string, number>): readonly string[] {
  const beginnings = beginningsOf(part, counts);
  const isTied = beginnings.some(({ began }, at) => began === beginnings[at - 1]?.began);
  return isTied ? [] : beginnings.map(({ id }) => id);
}

function beginningsOf(
  part: PartKind,
  counts: ReadonlyMap<string, number>,
): readonly { readonly id: string; readonly began: number }[] {
  return part.variants
    .filter(({ id, origin, fitted }) => counts.has(id) && origin === "production" && fitted.length > 0)
    .map(({ id, fitted }) => ({
      id,
      began: Math.min(...fitted.map(({ from }) => parseDateText(from)?.from ?? Number.POSITIVE_INFINITY)),
    }))
    .sort((one, other) => one.began - other.began);
}

export function countsOf(sightings: readonly Sighting[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { variant } of sightings) counts.set(variant, (counts.get(variant) ?? 0) + 1);
  return counts;
}
