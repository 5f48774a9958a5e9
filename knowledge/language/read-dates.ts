// Dates of a message, each in one role: findings about the car, findings about a date mark, or left alone.
import type { Interval } from "../calendar/interval.ts";
import { isAnyCar } from "./any-car.ts";
import type { Span } from "./blank-noise.ts";
import { findToldMarks, type ToldMark } from "./clock-marks.ts";
import { askedDate, standsAsMark, wholeAnswer } from "./date-answers.ts";
import { type DatePhrase, findDates } from "./date-phrases.ts";
import {
  builtInterval,
  isOfOtherThing,
  isRegistration,
  modelYearInterval,
  type RoleNames,
  roleOf,
} from "./date-roles.ts";
import { isConclusion, markFinding, meantBy, type WrittenMark, writtenMark } from "./mark-findings.ts";
import { tokenAt } from "./measurements.ts";
import type { CarFinding, FeatureFinding } from "./message-reading.ts";
import type { MessageView } from "./message-view.ts";
import { productionSpan } from "./serials.ts";

export interface DatesFound {
  readonly told: readonly ToldMark[];
  readonly phrases: readonly DatePhrase[];
}

export interface DatesRead {
  /** Phrases that were given a role; what stands there is no measurement. */
  readonly used: readonly DatePhrase[];
  readonly findings: readonly FeatureFinding[];
  readonly car: readonly CarFinding[];
  readonly leftAside: readonly string[];
  /** Build dates that lie after today. */
  readonly notYet: readonly string[];
}

/** Date phrases and told marks of the readable lower-case text; a phrase inside a told mark belongs to it. */
export function datesIn(
  text: string,
  cars: MessageView["lexicon"]["handbook"]["cars"],
  today: Interval,
): DatesFound {
  const told = findToldMarks(text);
  const phrases = findDates(text, { production: productionSpan(cars), today }).filter(
    (phrase) =>
      !told.some((mark) => mark.form === "clock" && mark.start < phrase.end && phrase.start < mark.end),
  );
  return { told, phrases };
}

/** Gives each date its role. `text`: the readable lower-case text. */
export function readDates(view: MessageView, text: string, dates: DatesFound): DatesRead {
  const answer = wholeAnswer(view, text);
  if (answer !== undefined)
    return { findings: [answer], car: [], leftAside: [], notYet: [], used: dates.phrases };
  const findings: FeatureFinding[] = [];
  const leftAside: string[] = [];
  const addMark = (mark: WrittenMark): void => {
    const finding = markFinding(view, mark);
    if (finding === "several") leftAside.push(view.shown.slice(mark.start, mark.end));
    else if (finding !== undefined && !findings.some((other) => other.feature === finding.feature))
      findings.push(finding);
  };
  for (const mark of dates.told) addMark({ ...mark, meant: meantBy(mark, dates.phrases) });
  const used: DatePhrase[] = [];
  const marks: Span[] = [...dates.told];
  const car: CarFinding[] = [];
  const isPast = ({ interval }: DatePhrase): boolean => interval.from < view.context.today.to;
  const notYet = dates.phrases
    .filter((phrase) => !isPast(phrase) && roleWithQuestion(view, phrase, text) === "built")
    .map(({ start, end }) => view.shown.slice(start, end));
  for (const phrase of dates.phrases.filter(isPast)) {
    const isSaid = isTold(view, phrase, findings) || isConclusion(text, phrase, marks);
    const role = isSaid ? "none" : roleWithQuestion(view, phrase, text);
    if (role === "none") continue;
    used.push(phrase);
    if (role === "mark") {
      marks.push(phrase);
      addMark({ ...phrase, own: phrase.interval, written: writtenMark(phrase) });
    } else if (!isSaidBetter(phrase, text, car)) car.push(...carFinding(view, phrase, role, text));
  }
  return { findings, car: lastOfKind(car), leftAside, notYet, used };
}

/** "Stencil reads 61", "the stamp said 1931": the bare figures of a year long before the cars are a number. */
function isNumber(view: MessageView, phrase: DatePhrase): boolean {
  const { from } = productionSpan(view.lexicon.handbook.cars);
  const isYear = phrase.shape === "short-year" || phrase.shape === "year";
  return isYear && phrase.interval.to < from - monthsBefore;
}
const monthsBefore = 60;

/** "Built June 81, registered 1982": what is said of the building says more, unless it is vaguer. */
function isSaidBetter(phrase: DatePhrase, text: string, car: readonly CarFinding[]): boolean {
  const length = phrase.interval.to - phrase.interval.from;
  const isBuilt = (each: CarFinding): boolean =>
    each.about === "built" && each.interval.to - each.interval.from <= length;
  return isRegistration(phrase, text) && car.some(isBuilt);
}

/** A build date or model year, unless it is somebody's word or another car's. */
function carFinding(
  view: MessageView,
  phrase: DatePhrase,
  role: "built" | "model-year",
  text: string,
): readonly CarFinding[] {
  const aside = view.stances[view.clauseOf[tokenAt(view, phrase.start)] ?? 0]?.aside;
  const clause = view.clauseOf[tokenAt(view, phrase.start)] ?? 0;
  if (aside === "hearsay" || aside === "another-car" || isAnyCar(view, clause)) return [];
  const words = view.shown.slice(phrase.start, phrase.end);
  const production = productionSpan(view.lexicon.handbook.cars);
  const isOfTheCars = phrase.interval.to > production.from - 24 && phrase.interval.from < production.to + 24;
  if (!isOfTheCars) return [];
  if (role === "built") {
    const interval = builtInterval(phrase, text, production);
    return interval === undefined ? [] : [{ about: "built", interval, words }];
  }
  const year = Math.floor(phrase.interval.from / 12);
  return [{ about: "model-year", year, interval: modelYearInterval(year), words }];
}

function isTold(view: MessageView, phrase: DatePhrase, findings: readonly FeatureFinding[]): boolean {
  const words = view.shown.slice(phrase.start, phrase.end);
  return findings.some((finding) => finding.words.includes(words) && finding.words.length > words.length);
}

/** A question about a date just asked is answered by a bare date. */
function roleWithQuestion(view: MessageView, phrase: DatePhrase, text: string): ReturnType<typeof roleOf> {
  if (isOfOtherThing(phrase, text)) return "none";
  const role = roleOf(phrase, withPlainCars(view, text), namesIn(view));
  if (role !== "none") return role === "mark" && isNumber(view, phrase) ? "none" : role;
  const rest = restBeside(view, phrase, text);
  const isBare =
    rest.replace(
      /\b(?:built|car|home|uk|us|usa|it|its|it's|is|was|the|in|i|think|about|on|says|reads|shows|dated|maybe|probably|around|from|of|sometime|an?)\b|[^a-z0-9]/g,
      "",
    ).length <= 3;
  if (isBare && askedDate(view) !== undefined) return "mark";
  if (standsAsMark(view, phrase, text)) return "mark";
  return isBare && view.context.askedFeature === undefined && phrase.shape !== "pair" ? "built" : role;
}

/** What is said beside a date, names of cars left out: "June 1980, Shrike S" is a bare date. */
function restBeside(view: MessageView, phrase: DatePhrase, text: string): string {
  const names = view.spotted.filter(({ phrase: { meanings } }) =>
    meanings.every(({ kind }) => kind === "model" || kind === "trim" || kind === "market"),
  );
  const spans = [
    { start: phrase.start, end: phrase.end },
    ...names.map(({ from, to }) => ({
      start: view.tokens[from]?.start ?? 0,
      end: view.tokens[to]?.end ?? 0,
    })),
  ];
  const rest = Array.from(text, (sign, at) =>
    spans.some(({ start, end }) => start <= at && at < end) ? " " : sign,
  ).join("");
  // "Touring, 1984": a trim by its own word, unless that is an everyday one.
  const trims = view.lexicon.handbook.cars.trims.flatMap(({ name }) => name.toLowerCase().split(" "));
  return rest.replace(/[a-z]{4,}/g, (word) =>
    trims.includes(word) && word !== "standard" && word !== "base" ? " " : word,
  );
}

/** Lower-case text with the family name of the handbook's cars as "car", each place as before: cues know no handbook. */
function withPlainCars(view: MessageView, text: string): string {
  const { plainNouns } = view.lexicon;
  return text.replace(/[a-z]+/g, (word) => {
    const plain = plainNouns.get(word);
    return plain?.startsWith("car") === true ? plain.slice(0, word.length).padEnd(word.length) : word;
  });
}

/** Names of cars and of date features that the phrase spotter found, as places in the text. */
function namesIn(view: MessageView): RoleNames {
  const ends = (kind: (spotted: MessageView["spotted"][number]) => boolean): readonly string[] =>
    view.spotted
      .filter(kind)
      .map((spotted) =>
        view.shown
          .slice(view.tokens[spotted.from]?.start ?? 0, view.tokens[spotted.to]?.end ?? 0)
          .toLowerCase(),
      )
      .map((name) => withPlainCars(view, name));
  const cars = ends((spotted) =>
    spotted.phrase.meanings.some((each) => each.kind === "model" || each.kind === "trim"),
  );
  const marks = ends((spotted) =>
    spotted.phrase.meanings.some((each) => each.kind === "feature" && isDateFeature(view, each)),
  );
  const lastOf = (names: readonly string[], before: string): number =>
    Math.max(-1, ...names.map((name) => before.lastIndexOf(name)));
  return { car: (before) => lastOf(cars, before), mark: (before) => lastOf(marks, before) };
}

function isDateFeature(
  view: MessageView,
  meaning: { readonly part: string; readonly feature: string },
): boolean {
  return view.lexicon.parts.get(meaning.part)?.features.get(meaning.feature)?.feature.kind === "date";
}

/** The last build date and the last model year said. */
function lastOfKind(car: readonly CarFinding[]): readonly CarFinding[] {
  return car.filter((finding, at) => !car.slice(at + 1).some((later) => later.about === finding.about));
}
