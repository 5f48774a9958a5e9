/**
 * A size in the units of whoever reads it, rounded to what their tools show: a rule divided in sixteenths, a caliper in thousandths, a
 * workshop's scale. What a rule cannot tell (under two inches, or parts of a millimetre under a foot) is said as a caliper would.
 * Factors are exact (NIST SP 811); which tool measures what is common practice, no source.
 */
import { convertUnits } from "../../../knowledge/index.ts";

export const unitsChoices = ["metric", "imperial", "both"] as const;
/** "metric" leaves sizes as the handbook and people give them. */
export type Units = (typeof unitsChoices)[number];

const askedFor: Readonly<Record<string, string>> = { mm: "in", cm: "in", g: "oz", kg: "lb" };

/** The unit a size is asked for in, where the handbook measures in `unit`. */
export function askedUnit(units: Units, unit: string): string {
  return units === "imperial" ? (askedFor[unit] ?? unit) : unit;
}

export interface Size {
  /** One value, or two for "355 or 370 mm". */
  readonly values: readonly number[];
  readonly unit: string;
  readonly spread?: number;
  /** Between two values: "or", "to". */
  readonly between?: string;
}

/** "17 3/8 in", "355 or 370 mm", "46 7/16 in ± 1/16": the size in the other system. Undefined of a unit that has none. */
export function inOtherUnits(size: Size): string | undefined {
  const { values, unit, spread, between = "" } = size;
  const to = otherUnit(unit, Math.max(...values));
  if (to === undefined) return undefined;
  const converted = (value: number) => convertUnits(value, unit, to) ?? value;
  const shown = scaleFor(size, to);
  const said = values.map((value) => shown(converted(value))).join(` ${between} `);
  return spread === undefined ? `${said} ${to}` : `${said} ${to} ± ${shown(converted(spread), true)}`;
}

/** Inches as a rule shows them where they are whole sixteenths: "17.375 in" as "17 3/8 in"; as they are otherwise. */
export function inchesAsRuled(value: number): string {
  const isRuled = value >= LEAST_RULED_INCHES && Number.isInteger(value * SIXTEENTHS);
  return isRuled ? sixteenths(value) : String(value);
}

function otherUnit(unit: string, largest: number): string | undefined {
  switch (unit) {
    case "mm":
    case "cm":
      return "in";
    case "in":
      return "mm";
    case "g":
      return largest < 1000 ? "oz" : "lb";
    case "kg":
      return "lb";
    case "oz":
      return "g";
    case "lb":
      return "kg";
    default:
      return undefined;
  }
}

const SIXTEENTHS = 16;
const LEAST_RULED_INCHES = 2;
const FOOT_IN_INCHES = 12;

type Shown = (value: number, isSpread?: boolean) => string;

/** How a value of this size is shown in the unit it is converted to. */
function scaleFor({ values, unit }: Size, to: string): Shown {
  switch (to) {
    case "in": {
      const inches = values.map((value) => convertUnits(value, unit, "in") ?? value);
      const isFine = unit === "mm" && values.some((value) => !Number.isInteger(value));
      const largest = Math.max(...inches);
      const isCalipered = Math.min(...inches) < LEAST_RULED_INCHES || (isFine && largest < FOOT_IN_INCHES);
      return isCalipered ? (value) => value.toFixed(3) : ruled;
    }
    case "mm":
      return Math.min(...values) < LEAST_RULED_INCHES ? decimals(2) : decimals(0);
    case "kg":
      return decimals(2);
    case "g":
      return decimals(0);
    default:
      return decimals(1);
  }
}

function decimals(count: number): Shown {
  return (value, isSpread = false) =>
    String(Number((isSpread ? Math.max(value, 10 ** -count) : value).toFixed(count)));
}

/** A spread is never said to be nought. */
function ruled(value: number, isSpread = false): string {
  return sixteenths(isSpread ? Math.max(value, 1 / SIXTEENTHS) : value);
}

/** "17 3/8", "3/8", "17". */
function sixteenths(value: number): string {
  const all = Math.round(value * SIXTEENTHS);
  const whole = Math.floor(all / SIXTEENTHS);
  let [over, under] = [all % SIXTEENTHS, SIXTEENTHS];
  if (over === 0) return String(whole);
  while (over % 2 === 0) [over, under] = [over / 2, under / 2];
  return whole === 0 ? `${over}/${under}` : `${whole} ${over}/${under}`;
}
