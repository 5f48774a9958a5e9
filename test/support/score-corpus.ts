/**
 * Scores the reader against annotated messages: micro-averaged F1 over facts and car facts. A fact is hit when
 * part, feature and value agree: the same state; a measurement within 0.5 % in the same unit; a date whose readings
 * all lie on the noted one; an excluded state when every other state, and not it, is left.
 */

import { parseDateText } from "../../knowledge/calendar/date-text.ts";
import { type Interval, intersect } from "../../knowledge/calendar/interval.ts";
import type { ReportValue } from "../../knowledge/evidence/report.ts";
import type { Lexicon } from "../../knowledge/language/lexicon.ts";
import type { CarFinding, FeatureFinding, MessageReading } from "../../knowledge/language/message-reading.ts";
import { readMessage } from "../../knowledge/language/read-message.ts";
import { millimetresOrGrams, sizeOf } from "./annotated-size.ts";
import { testToday } from "./demo-lexicon.ts";

export interface AnnotatedFact {
  readonly part: string | null;
  readonly feature: string;
  readonly state?: string | { readonly not: string };
  readonly not?: string;
  readonly reading?: string;
  readonly date?: string;
}

export interface AnnotatedMessage {
  readonly id: string;
  readonly text: string;
  readonly context?: { readonly part?: string; readonly askedFeature?: string };
  readonly facts: readonly AnnotatedFact[];
  readonly car?: Readonly<Record<string, string | number | boolean>>;
  readonly goal?: string;
}

export interface Score {
  readonly hits: number;
  readonly missed: number;
  readonly invented: number;
}

export interface ScoredMessage extends Score {
  readonly message: AnnotatedMessage;
  readonly reading: MessageReading;
  readonly missedFacts: readonly string[];
  readonly inventedFacts: readonly string[];
}

/** F1 = 2·hits / (2·hits + missed + invented); 1 when there was nothing to find and nothing found. */
export function f1(scores: readonly Score[]): number {
  const hits = scores.reduce((sum, score) => sum + score.hits, 0);
  const errors = scores.reduce((sum, score) => sum + score.missed + score.invented, 0);
  return hits + errors === 0 ? 1 : (2 * hits) / (2 * hits + errors);
}

/** Hits among all that was read; 1 when nothing was. */
export function precision(scores: readonly Score[]): number {
  return shareOf(scores, ({ invented }) => invented);
}

/** Hits among all that was noted; 1 when nothing was. */
export function recall(scores: readonly Score[]): number {
  return shareOf(scores, ({ missed }) => missed);
}

function shareOf(scores: readonly Score[], errorsOf: (score: Score) => number): number {
  const hits = scores.reduce((sum, score) => sum + score.hits, 0);
  const errors = scores.reduce((sum, score) => sum + errorsOf(score), 0);
  return hits + errors === 0 ? 1 : hits / (hits + errors);
}

/** Whether a state, or a choice between states, was read. */
export function assertsState({ reading }: ScoredMessage): boolean {
  return reading.findings.some(({ value }) => value.kind === "state" || value.kind === "weighed-states");
}

export function scoreMessage(message: AnnotatedMessage, lexicon: Lexicon): ScoredMessage {
  const reading = readMessage(message.text, lexicon, { today: testToday, ...message.context });
  const facts = match(message.facts, reading.findings, factHits, JSON.stringify, findingLabel);
  const noted = Object.entries(message.car ?? {});
  const said = reading.car.filter((finding) => finding.about !== "serial");
  const car = match(noted, said, carHits, JSON.stringify, JSON.stringify);
  return {
    message,
    reading,
    hits: facts.hits + car.hits,
    missed: facts.missed.length + car.missed.length,
    invented: facts.invented.length + car.invented.length,
    missedFacts: [...facts.missed, ...car.missed],
    inventedFacts: [...facts.invented, ...car.invented],
  };
}

function match<Noted, Said>(
  noted: readonly Noted[],
  said: readonly Said[],
  hits: (noted: Noted, said: Said) => boolean,
  nameNoted: (noted: Noted) => string,
  nameSaid: (said: Said) => string,
): { hits: number; missed: readonly string[]; invented: readonly string[] } {
  const left = [...said];
  const used: Said[] = [];
  const missed: string[] = [];
  for (const fact of noted) {
    const at = left.findIndex((finding) => hits(fact, finding));
    if (at >= 0) used.push(...left.splice(at, 1));
    // "Neither leather nor foam" is noted twice and read as one finding.
    else if (!used.some((finding) => hits(fact, finding))) missed.push(nameNoted(fact));
  }
  return { hits: noted.length - missed.length, missed, invented: left.map(nameSaid) };
}

function findingLabel(finding: FeatureFinding): string {
  return `${finding.part}.${finding.feature} ${JSON.stringify(finding.value)} «${finding.words}»`;
}

function factHits(fact: AnnotatedFact, finding: FeatureFinding): boolean {
  if (fact.feature !== finding.feature || fact.part !== finding.part) return false;
  const excluded = fact.not ?? (typeof fact.state === "object" ? fact.state.not : undefined);
  if (excluded !== undefined) return excludes(finding.value, excluded);
  if (typeof fact.state === "string")
    return finding.value.kind === "state" && finding.value.state === fact.state;
  if (fact.reading !== undefined) return measures(finding.value, fact.reading);
  return fact.date !== undefined && dates(finding.value, fact.date);
}

function excludes(value: ReportValue, state: string): boolean {
  if (value.kind === "weighed-states") return (value.weights[state] ?? 0) === 0;
  return value.kind === "state" && value.state !== state;
}

function measures(value: ReportValue, reading: string): boolean {
  if (value.kind !== "measurement") return false;
  const noted = sizeOf(reading);
  if ((noted.unit === undefined) !== (value.unit === null)) return false;
  const said = value.value * (value.unit === null ? 1 : (millimetresOrGrams[value.unit] ?? 1));
  return Math.abs(said - noted.size) <= 0.005 * noted.size;
}

function dates(value: ReportValue, written: string): boolean {
  const noted = intervalIn(written);
  if (value.kind !== "date" || noted === undefined) return false;
  return value.readings.some(({ interval }) => liesOn(interval, noted));
}

/** Whether they overlap, what was read being no wider than a year or twice what was noted. */
function liesOn(read: Interval, noted: Interval): boolean {
  const shared = intersect(read, noted);
  const widest = Math.max(12, 2 * (noted.to - noted.from));
  return shared !== undefined && read.to - read.from <= widest + 1e-9;
}

/** "1981-11-02", "1980/1981" and "1979-10..1980-02" (both ends included). */
export function intervalIn(written: string): Interval | undefined {
  const [first = "", last = first] = written.split(/\.\.|\//);
  const [from, to] = [parseDateText(first), parseDateText(last)];
  return from === undefined || to === undefined ? undefined : { from: from.from, to: to.to };
}

function carHits([key, value]: readonly [string, string | number | boolean], finding: CarFinding): boolean {
  if (key === "built") {
    const noted = intervalIn(String(value));
    return finding.about === "built" && noted !== undefined && liesOn(finding.interval, noted);
  }
  if (key === "modelYear") return finding.about === "model-year" && finding.year === Number(value);
  if (key === "grade") return finding.about === "grade" && finding.grade === value;
  if (key === "loosePart") return finding.about === "loose-part" && value === true;
  return finding.about === key && "id" in finding && finding.id === value;
}
