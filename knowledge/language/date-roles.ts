// Which date a date phrase is: the car's build, its model year, a mark on the part, or somebody's errand ("bought
// it in 95"). The nearest cue decides; a date never fills two roles, and without a cue it fills none.
import type { Interval } from "../calendar/interval.ts";
import { intersect, monthStart, yearInterval } from "../calendar/interval.ts";
import type { DateFeature } from "../handbook/schema.ts";
import { decodeDateMark } from "../trade/decode-date-mark.ts";
import type { DatePhrase } from "./date-phrases.ts";
import { isYearOfCars, span } from "./date-spans.ts";

/** A decade is what something looks like, not what stands on it. */
const longestMark = 60;

export type DateRole = "built" | "model-year" | "mark" | "none";

const errand =
  /\b(?:bought|buy|purchased|acquired|got (?:it|them|this|the car)|picked (?:it|them) up|owned|had (?:it|them|the car|this)|mine|been|since(?! (?:the|it|my)\b)|sold|restored|restoration|resprayed|repainted|painted|rebuilt|rebuild|replaced|replacement|refitted|fitted|changed|swapped|photo\w*|brochure|advert\w*|catalogue|catalog|parts list|bulletin|edition|posted|joined|show|rally|auction|(?<!\b(?:it|she|car) was )born|died|passed|imported|tested|mot|article|magazine|issue|price list|accident|crash\w*|broken for|scrapped|garaged|laid up|stored|parked|off the road|put on|gift|present|souvenir|moved|married|wedding|honeymoon|holiday|retired|visited|handed (?:it|them|her)? ?(?:over|down)|refurbished|refurb\w*|done|drilled|remade|made again)\b[^.;,]{0,26}$/;
const carBefore =
  /\b(?:built|build(?: date)?(?: is| was| of)?|finished|completed|assembled|left the (?:works|factory|line)|came (?:off|out)|rolled (?:off|out)|off the line|manufactured|produced|made|(?:it|she|car) was born|its birth|log ?book|certificate|registered|first reg\w*|delivered|took delivery|delivery|dispatched|from new|(?:mine is|mine's|i have|it's|it is|its|(?<!\b(?:he|she|they)(?:['’]?s|['’]ve|ve| has| have)? )got|on|own|for) an?)\b[^.;]{0,30}$/;
const carNoun = /\b(?:(?:car|chassis|plate)\b[^.;]{0,30}|my(?: (?:early|late|mid|very|own|little|old))* ?)$/;
/** "The tyre was made week 31 81": a date of something that is neither the car nor a part of a handbook. */
const otherThing =
  /\b(?:tyres?|tires?|battery|(?:seat)?belts?|radio|engine|gearbox|exhaust|hoses?|jack|tool ?kit|invoice|receipt|bill|magazine|newspaper|coin|penny|stamp collection|thermostat|radiator|carb\w*|distributor|alternator|dynamo|starter|water pump|fuel pump|seat|headlamps?|headlights?|keys?|spanner|coffee|sandwich)\b[^.;,]{0,40}$/;
/** "A 1979 penny": the year of whatever is named behind it. */
const aThing = /\ban? (?:old |early |late |mid )*$/;
/** "He's got a '77". */
const theirThing =
  /\b(?:he|she|they)(?:['\u2019]?s|['\u2019]?ve| has| have)? (?:got|had|owns?|drives?|runs?|bought) an? (?:old |early |late |mid )*$/;
const noThing =
  /^['s]* ?(?:$|[^\w\s]|(?:with|and|so|but|that|which|in|from|here|i|if|it|is|has|had|or|on|for|to|who|as|of|not|now|this|please|needs?|what|wants?|one|too|then|when|where|my|do|does|would|should)\b)/;
/** "Not in the 70s", "in 1985" behind the mere name of a place on a part. */
const denied =
  /\b(?:everything|anything|those|ones) (?:built|made|produced) (?:in|before|after|from) $|\bnot(?: in| from| of| built in| made in| before| after| until)?(?: the)? ?$/;
const happened = /\b(?:in|from|since|about|around) $/;
const carAfter =
  /^[ -]?(?:(?:car|built|build|production|build date|registered|coupe|coup\u00e9|mk ?\w+|mark \w+|example|uk|us|rhd|lhd|euro\w*|home|base|standard|touring|s)\b|(?:(?!\bha[ds]\b|\bsaw\b)[^.;,]){0,16}\bcar\b)/;
const modelYear = /^['s]* ?model(?:year)?\b/;
const modelYearBefore = /\bmodel ?year(?: is| of|:)? ?$|\bmy$/;
const markBefore =
  /\b(?:(?<!\bbuild )(?<!\b(?:can't|cant|cannot|couldn't|couldnt|to) )dated?|date (?:mark|code|stamp|wheel|clock|dial|ring)|stamp(?:ed|s)?|marked|marking|mark|clock|arrow|cent(?:re|er)|mould\w*|mold\w*|cast(?:ing)?|label\w*|sticker|tag|month|laid(?! up)|felt|marker|biro|pen|ink\w*|pencil\w*|crayon|chalk\w*|glass|(?:figure|dot|say|read)s?|(?<!\b(?:an?|the|our|club|car|local|county|last|at|to) )shows?|written|wrote|laminat\w*|foam|hub|spoke|rim|engraved|punched|struck|etched|embossed|scribed|signed|initial\w*|resin|code)\b[^.;]{0,44}$/;
/** Words of a date that was put there, not of the place where it stands. */
const marking =
  /\b(?:dated?|date|stamp(?:ed|s)?|mark\w*|clock|arrow|cent(?:re|er)|mould\w*|mold\w*|cast(?:ing)?|label\w*|sticker|tag|laid|felt|pen|ink\w*|pencil\w*|crayon|chalk\w*|figures?|says?|reads?|written|wrote|laminat\w*|engraved|punched|struck|etched|embossed|scribed|signed|initial\w*|code)\b[^.;]{0,44}$/;
const markAfter =
  /^["')]* (?:next to it|beside it|(?:just )?(?:under|above|below) it|alongside)|^[^.;,]{0,24}\b(?:stamp\w*|date (?:mark|code|stamp)|marked|mark|on the (?:\w+ )?(?:glass|mirror|spoiler|wheel|clock|back|inside|underside|rim|hub|spoke|foam|casting|housing|part|label|sticker)|in the (?:moulding|molding|resin|casting|clock)|written|in (?:pencil|ink|biro|felt|crayon|pen)|pencil\w*|ink\w*|moulded|cast in|punched|etched|engraved|scratched|crayon|in the resin)\b/;

/** The role of a phrase by the words around it within its sentence; a car is called "car" there, whatever its name. */
export function roleOf(phrase: DatePhrase, text: string, names: RoleNames): DateRole {
  const before = sentenceBefore(text, phrase.start);
  const after = text.slice(phrase.end, phrase.end + 50).split(/[.;!?\n]/, 1)[0] ?? "";
  const isYear = phrase.shape === "year" || phrase.shape === "short-year";
  if (isYear && isModelYear(before, after)) return "model-year";
  const errandAt = lastMatch(before, errand);
  const carAt = carCueAt(before, after, names);
  const markAt = markCueAt(before, after, names);
  if (Math.max(errandAt, carAt, markAt) < 0) return phrase.shape === "week" ? "mark" : "none";
  if (markAt > carAt && markAt >= errandAt) return markRole(phrase, before, after);
  return errandAt >= carAt ? "none" : carRole(phrase, before, after);
}

function markRole(phrase: DatePhrase, before: string, after: string): DateRole {
  const { from, to } = phrase.interval;
  const isYear = phrase.shape === "year" || phrase.shape === "short-year";
  return to - from >= longestMark || (isYear && isOnlyPlace(before, after)) ? "none" : "mark";
}

/** A week in two pairs of figures is struck on parts; no car is said to be of one. */
function carRole(phrase: DatePhrase, before: string, after: string): DateRole {
  if (phrase.shape === "week" && /[./-]/.test(phrase.text)) return "mark";
  return phrase.shape === "short-year" && !isNearYear(before, after, phrase) ? "none" : "built";
}

function isModelYear(before: string, after: string): boolean {
  return modelYear.test(after) || modelYearBefore.test(before);
}

/** Whether a date is of a tyre, a bill or another thing that no handbook is about, or is said not to be. */
export function isOfOtherThing(phrase: DatePhrase, text: string): boolean {
  const before = sentenceBefore(text, phrase.start);
  return otherThing.test(before) || denied.test(before);
}

/** Whether what somebody did stands before a date in its sentence: "replaced 7/79". */
export function isOfErrand(phrase: DatePhrase, text: string): boolean {
  return lastMatch(sentenceBefore(text, phrase.start), errand) >= 0;
}

/** Where the nearest cue for the car ends; a cue right behind the date counts as nearest. */
function carCueAt(before: string, after: string, names: RoleNames): number {
  if (carAfter.test(after)) return before.length + 1;
  if (theirThing.test(before)) return -1;
  if (aThing.test(before)) return noThing.test(after) ? before.length + 1 : -1;
  const built = lastMatch(before, carBefore);
  // "Bought the car in 94": a mere car does not outweigh the errand before it.
  if (built < 0 && errand.test(before)) return -1;
  return Math.max(built, lastMatch(before, carNoun), names.car(before));
}

function markCueAt(before: string, after: string, names: RoleNames): number {
  const named = Math.max(lastMatch(before, markBefore), names.mark(before));
  return markAfter.test(after) ? Math.max(named, before.length) : named;
}

/** "As to the rim: someone in 1985 laced a glove on it": a place on the part and a year in which something happened. */
function isOnlyPlace(before: string, after: string): boolean {
  return happened.test(before) && !markAfter.test(after) && lastMatch(before, marking) < 0;
}

/** Where names of the handbook's cars or date features end in the text before; -1 when none does. */
export interface RoleNames {
  readonly car: (before: string) => number;
  readonly mark: (before: string) => number;
}

/** A bare "81" is a year only in a year's place: after "an", "built", "in", "late", or before "car". */
function isNearYear(before: string, after: string, phrase: DatePhrase): boolean {
  if (phrase.text.startsWith("'")) return true;
  return (
    /\b(?:an?|in|built|from|of|late|early|mid|finished|my|the|is|was|date|year|around|about|circa|registered|some ?time)[: ]*$/.test(
      before,
    ) || carAfter.test(after)
  );
}

function sentenceBefore(text: string, start: number): string {
  const stretch = text.slice(Math.max(0, start - 90), start);
  return stretch.split(/[;!?\n]|\.(?=\s)/).at(-1) ?? "";
}

/** End of the cue nearest the end of the text, or -1. The patterns end in a bounded tail, so search from behind. */
function lastMatch(text: string, pattern: RegExp): number {
  let best = -1;
  for (let from = 0; from < text.length; ) {
    const found = pattern.exec(text.slice(from));
    if (found === null) break;
    best = from + found.index;
    from = best + 1;
  }
  return best;
}

/** A model year runs from the August before: works summer holidays parted the years; common practice, no source. */
export function modelYearInterval(year: number): Interval {
  return { from: monthStart(year - 1, 8), to: monthStart(year + 1, 1) };
}

/**
 * The time in which a car was built that somebody dates so: "first registered in November 81" is the half year up to then
 * (common practice, no source), "before 1980" and "after 1981" reach to the ends of production. Undefined for no time at all.
 */
export function builtInterval(phrase: DatePhrase, text: string, production: Interval): Interval | undefined {
  const { from, to } = phrase.interval;
  const before = sentenceBefore(text, phrase.start);
  if (isRegistration(phrase, text)) return { from: from - 6, to };
  if (/\b(?:years?|months?|weeks?) (?:before|after) $/.test(before)) return undefined;
  const { earlier, upTo, later, onwards } = bound.exec(before)?.groups ?? {};
  if (earlier !== undefined) return span(production, { from: production.from, to: from });
  if (upTo !== undefined) return span(production, { from: production.from, to });
  if (later !== undefined) return span({ from: to, to }, production);
  return onwards === undefined ? phrase.interval : span({ from, to }, production);
}

/** Whether a date is that of a registration, which follows the building. */
export function isRegistration(phrase: DatePhrase, text: string): boolean {
  return /\b(?:registered|first reg\w*)\b[^.;]{0,20}$/.test(sentenceBefore(text, phrase.start));
}

/** "No earlier than", "up to", "before", "after" a date. */
const bound =
  /\b(?:(?<onwards>(?:no|not) earlier than)|(?<upTo>(?:no|not) later than|until|up to|by(?: the end of)?)|(?<earlier>before|prior to|earlier than|pre)|(?<later>after|later than|post))[ -](?:the )?$/;

/** All readings of a written mark that suit the feature's forms, weights even; the phrase's own date when none does. */
export function markReadings(
  written: string,
  fallback: Interval | undefined,
  feature: DateFeature,
  production: Interval,
  today: Interval,
): readonly { readonly interval: Interval; readonly weight: number }[] {
  if (isYearOfCars(written, production)) return [{ interval: yearInterval(Number(written)), weight: 1 }];
  const era = { from: production.from - 36, to: production.to + 12 };
  const all = decodeDateMark(written, { era: { from: production.from - 60, to: today.to }, today });
  const suited = all.filter((reading) => feature.forms.includes(reading.form));
  const intervals = new Map(suited.map(({ interval }) => [`${interval.from} ${interval.to}`, interval]));
  const distinct = [...intervals.values()];
  if (distinct.length > 0)
    return distinct.map((interval) => ({ interval, weight: eraWeight(interval, era) }));
  return fallback === undefined ? [] : [{ interval: fallback, weight: 1 }];
}

/** Readings of the years in which the cars were built count ten times the rest: a lone figure fits every decade. */
function eraWeight(interval: Interval, era: { readonly from: number; readonly to: number }): number {
  return intersect(interval, era) === undefined ? 0.1 : 1;
}
