// What an invented owner says of the part on the bench: a true state or size is drawn first, then how it is seen, then
// how it is said. Words of frequency are read by the handbook's own table; everything after that is drawn forwards.

import { notThere, type Report, type ReportValue } from "../../knowledge/evidence/report.ts";
import type { Feature, MeasurementFeature, StateFeature } from "../../knowledge/handbook/schema.ts";
import type { CompiledPart } from "../../knowledge/identification/compiled-part.ts";
import { pseudoCounts, sharesOf } from "../../knowledge/identification/frequency-row.ts";
import { normalDistribution } from "../../knowledge/numbers/normal-distribution.ts";
import { even, indexAt, logEven, normal, pick, some } from "./draws.ts";
import type { TruePart } from "./invented-parts.ts";
import type { World } from "./invented-world.ts";
import type { Chance } from "./random-tables.ts";

/** How parts of one handbook truly are in one world: its frequencies, shifted by the world's noise once for all owners. */
export interface Nature {
  readonly compiled: CompiledPart;
  readonly world: World;
  /** Shares of the states by feature, then by variant; the last state is "not there" where a variant may lack the feature. */
  readonly shares: ReadonlyMap<string, readonly (readonly number[])[]>;
}

/** What an owner who is not firm says: "I think" twice as often as "maybe". */
const DOUBTS = [0.75, 0.75, 0.5];
const TAPE = 1;
const GROUP_OF_TELLS = 4;

export function natureOf(compiled: CompiledPart, world: World, chance: Chance): Nature {
  const shares = new Map<string, readonly (readonly number[])[]>();
  for (const feature of compiled.part.features) {
    if (feature.kind !== "states") continue;
    shares.set(
      feature.id,
      compiled.part.variants.map((variant) => trueShares(feature, variant.tells[feature.id], world, chance)),
    );
  }
  return { compiled, world, shares };
}

function trueShares(
  feature: StateFeature,
  claim: Readonly<Record<string, unknown>> | undefined,
  world: World,
  chance: Chance,
): readonly number[] {
  const states = feature.states.map(({ id }) => id);
  const lacking = feature.none === undefined ? [] : [0];
  if (claim !== undefined && Object.hasOwn(claim, notThere)) return [...states.map(() => 0), 1];
  const written = sharesOf(pseudoCounts(states, claim));
  const noise = world.frequencyNoise / Math.SQRT2;
  const odds = Array.from(written, (share) => share * Math.exp(noise * normal(chance)));
  const total = odds.reduce((sum, one) => sum + one, 0);
  return [...odds.map((one) => one / total), ...lacking];
}

/** What is said of `count` features, chosen blindly. */
export function drawReports(
  nature: Nature,
  part: TruePart,
  count: number,
  chance: Chance,
): readonly Report[] {
  const { world, compiled } = nature;
  const mistakes = world.mistakes * (chance() < world.carelessShare ? 2 : 1);
  const common = compiled.part.features.map(() => normal(chance));
  return some(chance, compiled.part.features, count).map((feature) => {
    const group = common[Math.floor(compiled.part.features.indexOf(feature) / GROUP_OF_TELLS)] ?? 0;
    const certainty = chance() < world.firm ? 1 : pick(chance, DOUBTS);
    const told = { nature, part, chance, certainty, mistakes, group };
    return { feature: feature.id, by: "owner", words: "", certainty, value: saidOf(feature, told) };
  });
}

interface Telling {
  readonly nature: Nature;
  readonly part: TruePart;
  readonly chance: Chance;
  readonly certainty: number;
  readonly mistakes: number;
  /** What the tells of one group have in common. */
  readonly group: number;
}

function saidOf(feature: Feature, telling: Telling): ReportValue {
  if (feature.kind === "states") return { kind: "state", state: stateSaid(feature, telling) };
  return feature.kind === "measurement" ? sizeSaid(feature, telling) : dateSaid(telling);
}

function stateSaid(feature: StateFeature, telling: Telling): string {
  const { chance, certainty, mistakes } = telling;
  const states = [...feature.states.map(({ id }) => id), ...(feature.none === undefined ? [] : [notThere])];
  const is = trueState(feature, states, telling);
  if (chance() >= certainty) return pick(chance, states);
  return states[indexAt(seenAs(feature, states, is, mistakes), chance())] ?? "p";
}

/** Typical parts are typical in several respects: one common cause sways all tells of a group. */
function trueState(feature: StateFeature, states: readonly string[], telling: Telling): number {
  const { nature, part, chance, group } = telling;
  const { correlation, unknownIsCopy } = nature.world;
  const known = nature.shares.get(feature.id)?.[part.variant];
  const isChanged = part.changed.has(feature.id);
  if (known === undefined || (isChanged && !unknownIsCopy)) return indexAt(flatShares(states), chance());
  if (isChanged) {
    const usual = known.indexOf(Math.max(...known));
    return pick(
      chance,
      states.map((_, state) => state).filter((state) => state !== usual),
    );
  }
  const own = normal(chance);
  const luck = normalDistribution(Math.sqrt(correlation) * group + Math.sqrt(1 - correlation) * own);
  const commonFirst = known.map((_, state) => state).sort((a, b) => (known[b] ?? 0) - (known[a] ?? 0));
  return (
    commonFirst[
      indexAt(
        commonFirst.map((state) => known[state] ?? 0),
        luck,
      )
    ] ?? 0
  );
}

function flatShares(states: readonly string[]): readonly number[] {
  const real = states.filter((state) => state !== notThere).length;
  const left = real < states.length ? 0.9 : 1;
  return states.map((state) => (state === notThere ? 0.1 : left / real));
}

/** P(said | is), by state said. */
function seenAs(
  feature: StateFeature,
  states: readonly string[],
  is: number,
  mistakes: number,
): readonly number[] {
  const real = feature.states.length;
  const lack = 0.03 * mistakes;
  if (is >= real) return states.map((_, said) => (said === is ? 1 - lack : lack / real));
  const rate = (said: number): number => {
    if (said >= real) return lack;
    if (typeof feature.misread === "number") return (feature.misread * mistakes) / (real - 1);
    const found = feature.misread.find((one) => one.is === states[is] && one.said === states[said]);
    return (found?.rate ?? 0) * mistakes;
  };
  const wrong = states.map((_, said) => (said === is ? 0 : rate(said)));
  const total = wrong.reduce((sum, one) => sum + one, 0);
  return wrong.map((one, said) => (said === is ? Math.max(0, 1 - total) : one));
}

/** Millimetres, said to the whole millimetre; one number in fifty was read off in centimetres or inches. */
function sizeSaid(feature: MeasurementFeature, telling: Telling): ReportValue {
  const { nature, chance, certainty } = telling;
  const means = nature.compiled.part.variants.flatMap((variant) => {
    const claim = variant.tells[feature.id];
    return claim !== undefined && typeof claim.mean === "number" ? [claim.mean] : [];
  });
  const [low, high] = [Math.min(...means), Math.max(...means)];
  const isOutlier = chance() >= (1 - nature.world.outliers) * certainty;
  const size = isOutlier ? logEven(chance, low / 3, high * 3) : measured(feature, telling, low, high);
  const unit = isOutlier || chance() < 0.98 ? 1 : pick(chance, [10, 25.4]);
  return { kind: "measurement", value: Math.max(1, Math.round(size / unit)), halfWidth: 0.5, unit: "mm" };
}

function measured(feature: MeasurementFeature, telling: Telling, low: number, high: number): number {
  const { nature, part, chance } = telling;
  const { world } = nature;
  const claim = nature.compiled.part.variants[part.variant]?.tells[feature.id];
  const isChanged = part.changed.has(feature.id);
  if (claim === undefined || typeof claim.mean !== "number" || typeof claim.spread !== "number") {
    return logEven(chance, low / 1.5, high * 1.5);
  }
  if (isChanged && !world.unknownIsCopy) return logEven(chance, low / 1.5, high * 1.5);
  const moved = isChanged ? pick(chance, [-1, 1]) * even(chance, 3, 10) * claim.spread : 0;
  return claim.mean + moved + world.spread * Math.hypot(claim.spread, TAPE) * normal(chance);
}

/** The month of the mark, or any month of the era when it was misread. */
function dateSaid({ nature, part, chance, certainty }: Telling): ReportValue {
  const era = nature.compiled.markEra;
  const isMisread = chance() >= 0.96 * certainty;
  const from = Math.floor(isMisread ? even(chance, era.from, era.to) : part.marked);
  return { kind: "date", readings: [{ interval: { from, to: from + 1 }, weight: 1 }] };
}
