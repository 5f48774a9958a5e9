// Everything that is told of kinds which followed each other: every change with its date, its ends and what would narrow it, and a
// verdict on every car. The chain's dates are shown no narrower than the pair's, which knows of uneven reporting.
import type { Interval } from "../calendar/interval.ts";
import type { CarWanted } from "./cars-wanted.ts";
import { chainCarsWanted } from "./chain-cars-wanted.ts";
import type { ChainSighting } from "./chain-reports.ts";
import { chainVerdicts } from "./chain-verdicts.ts";
import {
  type ChainChangeover,
  type ChainSetting,
  type ChangeoverChain,
  changeoverChain,
} from "./changeover-chain.ts";
import { type EndsOfUse, endsOfUse } from "./ends-of-use.ts";
import type { JudgedSighting } from "./judged-sighting.ts";
import { type LikelyMonth, likeliestMonth } from "./likely-month.ts";
import { type PairOfChain, pairInChain, pairOfChain, widerInterval } from "./pair-in-chain.ts";
import { found, type Refusal, type Result } from "./result.ts";
import { type ShapesOfChange, shapeOfChange } from "./shape-of-change.ts";

/** The change from one kind of the chain to the next. */
export interface ChainChange {
  /** Undefined when no month stands out. */
  readonly month: LikelyMonth | undefined;
  /** Holds the change with 90 % at least: the wider of chain and pair. */
  readonly interval: Interval;
  readonly median: number;
  /** P(overlap ≤ 2 months) and P(overlap ≥ 4 months). */
  readonly withinWeeks: number;
  readonly overMonths: number;
  /** Of the two kinds by themselves, between the neighbouring changes; undefined where these leave no time or no car. */
  readonly shapes: ShapesOfChange | undefined;
  /** What is asked of the two kinds by themselves, for asking the same of trims and markets. */
  readonly pair: PairOfChain | undefined;
  readonly ends: EndsOfUse;
  /** The most telling build month first. */
  readonly wanted: readonly CarWanted[];
}

export interface ChainReport {
  readonly changes: readonly ChainChange[];
  /** In the order given; those outside the window are left out. */
  readonly judged: readonly JudgedSighting[];
  readonly chain: ChangeoverChain;
}

/** The report; refused as `changeoverChain` is. */
export function chainReport(
  setting: ChainSetting,
  sightings: readonly ChainSighting[],
): Result<ChainReport, Refusal> {
  const chain = changeoverChain(setting, sightings);
  if (!chain.ok) return chain;
  const judged = chainVerdicts(chain.value, sightings);
  const changes = chain.value.changeovers.map((change, at) =>
    described(setting, sightings, chain.value, { change, at, judged }),
  );
  return found({ changes, judged, chain: chain.value });
}

function described(
  setting: ChainSetting,
  sightings: readonly ChainSighting[],
  chain: ChangeoverChain,
  {
    change,
    at,
    judged,
  }: {
    readonly change: ChainChangeover;
    readonly at: number;
    readonly judged: readonly JudgedSighting[];
  },
): ChainChange {
  const pair = pairOfChain(setting, sightings, chain, at);
  const alone = pairInChain(setting, sightings, chain, at);
  const isEmpty = !pair.ok || pair.value.sightings.length === 0;
  const shapes = isEmpty ? undefined : shapeOfChange(pair.value.setting, pair.value.sightings);
  const instantAt = (place: number): number => chain.from + (place * chain.cell) / 2;
  const chanceOf = (isMeant: (months: number) => boolean): number =>
    change.overlaps.reduce((sum, { months, chance }) => (isMeant(months) ? sum + chance : sum), 0);
  return {
    month: likeliestMonth(change.middles, instantAt, 1),
    interval: alone.ok ? widerInterval(change.interval, alone.value.interval) : change.interval,
    median: change.median,
    withinWeeks: chanceOf((months) => months <= 2),
    overMonths: chanceOf((months) => months >= 4),
    shapes: shapes?.ok === true ? shapes.value : undefined,
    pair: pair.ok ? pair.value : undefined,
    ends: endsOfPair(sightings, judged, at),
    wanted: chainCarsWanted(chain, at),
  };
}

function endsOfPair(
  sightings: readonly ChainSighting[],
  judged: readonly JudgedSighting[],
  change: number,
): EndsOfUse {
  const ofPair = sightings
    .filter(({ variant }) => variant === change || variant === change + 1)
    .map((sighting) => ({ ...sighting, isNew: sighting.variant === change + 1, isSought: false }));
  return endsOfUse(ofPair, new Map(judged.map(({ id, notAsBuilt }) => [id, notAsBuilt])));
}
