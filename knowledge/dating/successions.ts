// Which variant gave way to which, as the handbook's fitted periods have it: what sightings may then date more closely.
import { parseDateText } from "../calendar/date-text.ts";
import type { FittedPeriod, Handbook, PartKind, Variant } from "../handbook/schema.ts";
import type { ChangeoverSetting } from "./dated-change.ts";
import { replacementsSold } from "./replacements-sold.ts";
import { statedChange } from "./stated-change.ts";

export interface Succession {
  readonly old: string;
  readonly new: string;
  readonly setting: ChangeoverSetting;
}

/** A variant that came so long after another ended did not take its place. Months. */
const longestGap = 12;

/**
 * The successions of a part kind's production variants: for each variant those whose last period ended about when its first began, and
 * that were fitted to the same cars. None without dated models.
 */
export function successionsOf(handbook: Handbook, part: PartKind): readonly Succession[] {
  const ground = successionWindow(handbook);
  if (ground === undefined) return [];
  const made = part.variants.filter(({ origin, fitted }) => origin === "production" && fitted.length > 0);
  return made.flatMap((later) =>
    made
      .filter((earlier) => earlier.id !== later.id && followed(earlier, later))
      .map((earlier): Succession => {
        const stated = statedChange(earlier.fitted, later.fitted);
        const sold = replacementsSold(part, [earlier.id, later.id]);
        return {
          old: earlier.id,
          new: later.id,
          setting: {
            ...ground,
            ...(stated === undefined ? {} : { stated }),
            ...(sold === undefined
              ? {}
              : { replacements: { old: sold[0] as number, new: sold[1] as number } }),
          },
        };
      }),
  );
}

/** All of production, and how many cars a year where the handbook says so; undefined when no model is dated. */
export function successionWindow(
  handbook: Handbook,
): Pick<ChangeoverSetting, "window" | "production"> | undefined {
  const window = productionWindow(handbook);
  if (window === undefined) return undefined;
  const years = Object.entries(handbook.cars.production);
  const production = new Map(years.map(([year, cars]) => [Number(year), cars]));
  return { window, ...(production.size === 0 ? {} : { production }) };
}

/** First to last build date of any model; undefined when none is dated. */
function productionWindow({ cars }: Handbook): ChangeoverSetting["window"] | undefined {
  const spans = cars.models.flatMap(({ from, to }) => {
    const [first, last] = [parseDateText(from), parseDateText(to)];
    return first && last ? [{ from: first.from, to: last.to }] : [];
  });
  if (spans.length === 0) return undefined;
  return { from: Math.min(...spans.map(({ from }) => from)), to: Math.max(...spans.map(({ to }) => to)) };
}

function followed(earlier: Variant, later: Variant): boolean {
  const end = Math.max(...earlier.fitted.map(({ to }) => parseDateText(to)?.to ?? Number.NaN));
  const begin = Math.min(...later.fitted.map(({ from }) => parseDateText(from)?.from ?? Number.NaN));
  const began = Math.min(...earlier.fitted.map(({ from }) => parseDateText(from)?.from ?? Number.NaN));
  // Nothing is a successor of what came later; a date that is none compares as false.
  if (!(began < begin && Math.abs(end - begin) <= longestGap)) return false;
  return earlier.fitted.some((one) => later.fitted.some((other) => areFittedToSameCars(one, other)));
}

function areFittedToSameCars(one: FittedPeriod, other: FittedPeriod): boolean {
  const meet = (a: readonly string[] | undefined, b: readonly string[] | undefined) =>
    a === undefined || b === undefined || a.length === 0 || b.length === 0 || a.some((id) => b.includes(id));
  return meet(one.models, other.models) && meet(one.trims, other.trims) && meet(one.markets, other.markets);
}
