/** Whether a pinned answer holds for a case, and which of several holds for less and therefore wins. */
import type { CarDescription } from "../../../knowledge/index.ts";
import type { CaseFacts } from "../../conversation/case.ts";
import type { CaseSummary } from "../../reply.ts";
import type { Pin, PinScope } from "./pin.ts";

/** A kind below this is not what the case is about. */
const leastInTheRunning = 0.1;
/** So much of a pinned question must be found in a message for it to be the question. */
export const leastOfQuestion = 0.7;

/** Whether the case, as it stands in `summary`, lies within the scope. A pin with nothing but a question is found by its words instead. */
export function isInScope(
  scope: PinScope,
  handbook: string,
  facts: CaseFacts,
  ranking: CaseSummary["ranking"],
): boolean {
  if (scope.part === null || scope.part !== facts.part || scope.handbook !== handbook) return false;
  if (scope.goal !== null && scope.goal !== facts.goal) return false;
  return isCarInScope(scope, facts.car) && isKindInScope(scope, ranking);
}

/** A car of which something is not known is in the scope only of pins that do not ask it. */
function isCarInScope({ built, models, trims, markets }: PinScope, car: CarDescription): boolean {
  const has = (wanted: readonly string[], known: string | undefined) =>
    wanted.length === 0 || (known !== undefined && wanted.includes(known));
  if (!has(models, car.model) || !has(trims, car.trim) || !has(markets, car.market)) return false;
  return built === null || (car.built !== undefined && overlaps(built, car.built));
}

function isKindInScope({ variants }: PinScope, ranking: CaseSummary["ranking"]): boolean {
  if (variants.length === 0) return true;
  return ranking.some(
    ({ variant, probability }) => variants.includes(variant) && probability >= leastInTheRunning,
  );
}

export function overlaps(one: PinScope["built"] & object, other: PinScope["built"] & object): boolean {
  return one.from < other.to && other.from < one.to;
}

/** Whether two scopes can hold for one case: keepers see such pins side by side. */
export function scopesMeet(one: PinScope, other: PinScope): boolean {
  const meet = (a: readonly string[], b: readonly string[]) =>
    a.length === 0 || b.length === 0 || a.some((id) => b.includes(id));
  return (
    one.handbook === other.handbook &&
    one.part === other.part &&
    one.part !== null &&
    (one.goal === null || other.goal === null || one.goal === other.goal) &&
    (one.built === null || other.built === null || overlaps(one.built, other.built)) &&
    meet(one.models, other.models) &&
    meet(one.trims, other.trims) &&
    meet(one.markets, other.markets) &&
    meet(one.variants, other.variants)
  );
}

/** The narrower first: more conditions, then fewer months, then the newer. */
export function byNarrowness([, one]: readonly [string, Pin], [, other]: readonly [string, Pin]): number {
  return (
    conditions(other.scope) - conditions(one.scope) ||
    months(one.scope) - months(other.scope) ||
    other.at - one.at
  );
}

function conditions({ goal, built, models, trims, markets, variants, question }: PinScope): number {
  return [
    goal !== null,
    built !== null,
    models.length,
    trims.length,
    markets.length,
    variants.length,
    question !== null,
  ].filter(Boolean).length;
}

function months({ built }: PinScope): number {
  return built === null ? Number.POSITIVE_INFINITY : built.to - built.from;
}
