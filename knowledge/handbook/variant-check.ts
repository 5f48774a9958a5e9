/** The variants of a part kind: their periods, their tells, and what they point at. */

import { parseDateText } from "../calendar/date-text.ts";
import type { Interval } from "../calendar/interval.ts";
import {
  type CheckSheet,
  checkAllKnown,
  checkKnown,
  checkUnique,
  fault,
  type KnownIds,
  warn,
} from "./check-sheet.ts";
import { type ClaimRule, checkClaim } from "./claim-check.ts";
import type { PartKind, Variant } from "./schema.ts";
import type { Path } from "./yaml-reading.ts";

/** What a variant may name outside its own part kind. */
export interface Surroundings {
  readonly sources: KnownIds;
  readonly models: KnownIds;
  readonly trims: KnownIds;
  readonly markets: KnownIds;
  /** The years of production; undefined when cars.yaml is broken. */
  readonly production: Interval | undefined;
}

/** Checks every variant of a part kind. */
export function checkVariants(
  sheet: CheckSheet,
  part: PartKind,
  rules: ReadonlyMap<string, ClaimRule>,
  around: Surroundings,
): void {
  const variants = checkUnique(sheet, "variant", part.variants, ["variants"]);
  const mountings = new Set(part.mountings.map(({ id }) => id));
  for (const [index, variant] of part.variants.entries()) {
    const path = ["variants", index];
    checkOrigin(sheet, variant, path);
    checkFitted(sheet, variant, around, path);
    for (const [position, period] of variant.sold.entries()) {
      checkPeriod(sheet, period, [...path, "sold", position]);
    }
    if (variant.mounting !== undefined) {
      checkKnown(sheet, "mounting", variant.mounting, mountings, [...path, "mounting"]);
    }
    checkAllKnown(sheet, "variant", variant.resembles, variants, [...path, "resembles"]);
    if (variant.resembles.includes(variant.id)) noteResemblesItself(sheet, variant, path);
    checkTells(sheet, variant, rules, path);
  }
}

function noteResemblesItself(sheet: CheckSheet, variant: Variant, path: Path): void {
  const place = [...path, "resembles", variant.resembles.indexOf(variant.id)];
  const message = `${variant.id} cannot resemble itself`;
  fault(sheet, { code: "id-itself", path: place, message, mend: "name another variant, or delete this" });
}

function checkOrigin(sheet: CheckSheet, variant: Variant, path: Path): void {
  const isProduction = variant.origin === "production";
  if (isProduction && variant.fitted.length === 0) {
    const message = `${variant.id} is a production variant, but no fitted period says when the works used it`;
    const mend = "add fitted: with from and to; rough ends may be marked start: rough, end: rough";
    fault(sheet, { code: "variant-never-fitted", path, message, mend });
  }
  if (!isProduction && variant.sold.length === 0) {
    const message = `${variant.id} has the origin ${variant.origin}, but no sale period says when it could be bought`;
    fault(sheet, { code: "variant-never-sold", path, message, mend: "add sold: with from and to" });
  }
  if (!isProduction && variant.fitted.length > 0) {
    const message = `${variant.id} has the origin ${variant.origin}, yet a period in which the works fitted it`;
    const mend = "write sold: in place of fitted:, or origin: production";
    const place = [...path, "fitted"];
    fault(sheet, { code: "variant-not-fitted-by-works", path: place, at: "key", message, mend });
  }
}

function checkFitted(sheet: CheckSheet, variant: Variant, around: Surroundings, path: Path): void {
  for (const [position, period] of variant.fitted.entries()) {
    const place = [...path, "fitted", position];
    checkAllKnown(sheet, "model", period.models, around.models, [...place, "models"]);
    checkAllKnown(sheet, "trim", period.trims, around.trims, [...place, "trims"]);
    checkAllKnown(sheet, "market", period.markets, around.markets, [...place, "markets"]);
    const isOrdered = checkPeriod(sheet, period, place);
    const fitted = wholePeriod(period);
    if (!isOrdered || around.production === undefined || fitted === undefined) continue;
    if (fitted.to > around.production.from && fitted.from < around.production.to) continue;
    const message = `${period.from} to ${period.to} lies outside the years of production in cars.yaml`;
    warn(sheet, { code: "period-outside-production", path: place, message, mend: "check the years" });
  }
}

/** Checks that a period does not end before it begins. */
export function checkPeriod(
  sheet: CheckSheet,
  period: { readonly from: string; readonly to: string },
  path: Path,
): boolean {
  const whole = wholePeriod(period);
  if (whole === undefined || whole.from < whole.to) return true;
  const message = `the period ends (${period.to}) before it begins (${period.from})`;
  fault(sheet, {
    code: "period-order",
    path: [...path, "to"],
    message,
    mend: "correct one of the two dates",
  });
  return false;
}

/** From the first instant of the start to the last of the end. */
function wholePeriod(period: { readonly from: string; readonly to: string }): Interval | undefined {
  const start = parseDateText(period.from);
  const end = parseDateText(period.to);
  return start && end && { from: start.from, to: end.to };
}

function checkTells(
  sheet: CheckSheet,
  variant: Variant,
  rules: ReadonlyMap<string, ClaimRule>,
  path: Path,
): void {
  for (const [feature, claim] of Object.entries(variant.tells)) {
    const rule = rules.get(feature);
    const place = [...path, "tells", feature];
    if (rule !== undefined) checkClaim(sheet, rule, claim, place);
    else checkKnown(sheet, "feature", feature, new Set(rules.keys()), place);
  }
}
