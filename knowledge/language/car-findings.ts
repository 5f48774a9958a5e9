// What a message says of the car: model, trim and market by name, how well its history is known, whether the part
// is loose. Somebody else's car is left aside; a question may still tell of the speaker's own.
import { marketOf, marketsSold, trimsByAdjective } from "./car-adjectives.ts";
import { gradeIn, historyIn } from "./car-history.ts";
import type { Clause } from "./clauses.ts";
import { commonWords, glueWords } from "./common-words.ts";
import { isBesideAnotherModel, isFamily } from "./compared-models.ts";
import { embeddedQuestionCues } from "./cue-words.ts";
import { tellsLoose } from "./loose-part.ts";
import type { CarFinding } from "./message-reading.ts";
import { type MessageView, wordsBetween } from "./message-view.ts";
import { stemsOf } from "./name-stems.ts";
import { isOfOwnCar } from "./own-car.ts";
import { withPlainNouns } from "./plain-nouns.ts";
import type { Spotted } from "./spot-terms.ts";

const marketCue =
  /\b(?:market|spec|specification|car|cars|export|exported|delivered|version|model|trim|lhd|rhd|sold new|new in|supplied|destined|home|import|imported|built for)\b/;

/** Model, trim, market, grade and looseness; the last said of each, in the order said. */
export function readCar(view: MessageView): readonly CarFinding[] {
  const named = [
    ...trimsByWord(view),
    ...trimsByAdjective(view),
    ...marketsByWord(view),
    ...marketsSold(view),
    ...view.spotted.flatMap((spotted) => namedCar(view, spotted)),
  ];
  // New tyres are no new wheels, whatever a wheel is called.
  const texts = withPlainNouns(view.clauses, view.tokens, view.lexicon).map(({ text }, at) => {
    const said = view.clauses[at]?.text ?? "";
    return /\bt[iy]res?\b/.test(said) ? said : text;
  });
  const told = view.clauses.flatMap((clause, at) => {
    const aside = view.stances[at]?.aside;
    if (aside === "another-car") return [];
    const isOwnClause = clause.join === "sentence" || embeddedQuestionCues.test(clause.text);
    const words = wordsBetween(view, clause.from, clause.to);
    const grade = historyIn(view, texts, at, aside === "hearsay" || (aside === "question" && isOwnClause));
    const isLoose =
      tellsLoose(view, at, texts) && !isCarBought(view, clause) && !isOwnedNear(view, texts, clause.sentence);
    return [
      ...(grade === undefined ? [] : [{ about: "grade" as const, grade, words }]),
      ...(isLoose ? [{ about: "loose-part" as const, words }] : []),
    ];
  });
  return lastOfKind([...withoutChoices(view, named), ...told]);
}

/** "First owner, bought it at the dealer in 77": it is the car. */
function isOwnedNear(view: MessageView, texts: readonly string[], sentence: number): boolean {
  return view.clauses.some(
    (clause, at) => clause.sentence === sentence && gradeIn(texts[at] ?? "") === "one-owner",
  );
}

/** "Just bought a Shrike that stood in a barn": the car changed hands, not a part by itself. */
function isCarBought(view: MessageView, { from, to }: MessageView["clauses"][number]): boolean {
  return view.spotted.some((spotted) => {
    if (spotted.from < from || spotted.to > to) return false;
    if (!spotted.phrase.meanings.some(({ kind }) => kind === "model")) return false;
    const next = view.tokens[spotted.to + 1];
    if (next !== undefined && spotted.to < to && isPartWord(view, next.folded)) return false;
    const before = wordsBetween(view, from, spotted.from - 1).toLowerCase();
    return /\b(?:bought|got|acquired|purchased|inherited|found|rescued|picked up)(?: \w+){0,4}$/.test(before);
  });
}

/** "A Mark II Touring", "an S", "the '80 S": a trim's own word, in a name's place and with a capital. */
function trimsByWord(view: MessageView): readonly CarFinding[] {
  const { models, trims } = view.lexicon.handbook.cars;
  const family = new Set(models.flatMap(({ name }) => stemsOf(name)));
  const own = trims.flatMap((trim) => {
    const words = stemsOf(trim.name).filter((stem) => !family.has(stem));
    const [word] = words;
    return words.length === 1 && word !== undefined && !/^(?:standard|base)$/.test(word)
      ? [{ id: trim.id, word }]
      : [];
  });
  return view.tokens.flatMap((token, at) => {
    const trim = own.find(({ word }) => word === token.stem);
    if (trim === undefined || !isNamePlace(view, at) || !isOfOwnCar(view, at, at)) return [];
    if (isDeniedBefore(view, at)) return [];
    return [{ about: "trim" as const, id: trim.id, words: wordsBetween(view, at, at) }];
  });
}

/** Words of a clause in a list that is an answer about the car. */
const mostWords = 4;

/** "Home, June 1980, Shrike S", "car's a Mk2, 1983 model, British": in a list about the car, a market is said by one word. */
function marketsByWord(view: MessageView): readonly CarFinding[] {
  const isList = isCarList(view);
  return view.clauses.flatMap((clause, at) => {
    const { from, to } = clause;
    const said = view.tokens[from];
    const isAmongCars = isList || view.clauses.some((other) => isOfSameCar(clause, other));
    if (from !== to || said === undefined || !isAmongCars || view.stances[at]?.aside !== undefined) return [];
    const named = view.lexicon.handbook.cars.markets.find(({ name }) => {
      const [word = ""] = name.toLowerCase().split(/[^a-z]+/, 1);
      return word.length > 3 && said.folded.startsWith(word.slice(0, 7));
    });
    const id = named?.id ?? marketOf(view, [said.folded]);
    return id === undefined ? [] : [{ about: "market" as const, id, words: wordsBetween(view, from, to) }];
  });
}

function isOfSameCar(one: Clause, other: Clause): boolean {
  return (
    other.sentence === one.sentence && other !== one && /^(?:my |the )?cars? \b|\bmodel\b/.test(other.text)
  );
}

/** Whether the message is nothing but short words about the car. */
function isCarList(view: MessageView): boolean {
  const { clauses } = view;
  const namesCar =
    trimsByWord(view).length > 0 ||
    clauses.some(({ text }) => /\b(?:19[5-9]\d|[6-9]\d)\b/.test(text)) ||
    view.spotted.some(({ phrase }) =>
      phrase.meanings.some(({ kind }) => kind === "model" || kind === "trim"),
    );
  const isShort = clauses.every(({ from, to }) => to - from < mostWords);
  return isShort && namesCar && view.stances.every(({ aside }) => aside === undefined);
}

function isNamePlace(view: MessageView, at: number): boolean {
  const token = view.tokens[at];
  const [before, after] = [view.tokens[at - 1], view.tokens[at + 1]];
  if (token === undefined) return false;
  // A short or everyday word names a trim only with its capital.
  const isPlainly = token.folded.length > 4 && !commonWords.has(token.folded);
  if (!isPlainly && !/[A-Z]/.test(view.shown.charAt(token.start))) return false;
  const isAfterName =
    before !== undefined &&
    (/^(?:a|an|the|my|our|dads|mums|built|model|year|trim|\d{2,4})$/.test(before.folded) ||
      modelEndsAt(view, at - 1));
  const isAlone =
    token.folded.length > 1 && token.breakBefore !== "none" && (after?.breakBefore ?? "sentence") !== "none";
  const isOwners =
    /^(?:my|our)$/.test(before?.folded ?? "") &&
    /['\u2019]s $/.test(view.shown.slice(token.start, after?.start ?? token.end));
  if (!isOwners && after?.breakBefore === "none" && isPartWord(view, after.folded)) return false;
  if (isInCarList(view, at)) return true;
  return token.breakBefore === "none" ? isAfterName : isAlone;
}

/** "1979 model, home market, S", "S here, UK car", "Touring of course, 1983 model": alone among what is said of a car. */
function isInCarList(view: MessageView, at: number): boolean {
  const clause = view.clauses[view.clauseOf[at] ?? 0];
  const text = clause?.text ?? "";
  if (clause?.from !== at || !/^\w+(?: here| of course)?$/.test(text)) return false;
  return view.clauses.some((other) => other.sentence === clause.sentence && ofCar.test(other.text));
}
const ofCar = /\b(?:car|built|market|model)\b/;

function modelEndsAt(view: MessageView, at: number): boolean {
  return (view.phrasesAt.get(at) ?? []).some((each) =>
    each.phrase.meanings.some((one) => one.kind === "model" || one.kind === "market"),
  );
}

function isPartWord(view: MessageView, word: string): boolean {
  return !glueWords.has(word) && [...view.lexicon.parts.values()].some((part) => part.nameWords.has(word));
}

function namedCar(view: MessageView, spotted: Spotted): readonly CarFinding[] {
  const text = view.clauses[view.clauseOf[spotted.from] ?? 0]?.text ?? "";
  if (!isOfOwnCar(view, spotted.from, spotted.to) || isDeniedBefore(view, spotted.from)) return [];
  const words = wordsBetween(view, spotted.from, spotted.to);
  const found = new Map<string, CarFinding>();
  const isCompared = isBesideAnotherModel(view, spotted);
  for (const meaning of spotted.phrase.meanings) {
    if (meaning.kind === "trim" || (meaning.kind === "market" && marketCue.test(text)))
      found.set(meaning.kind, { about: meaning.kind, id: meaning.id, words });
    if (meaning.kind === "model" && !isCompared && !isFamily(view, spotted.phrase.stems))
      found.set(meaning.kind, { about: meaning.kind, id: meaning.id, words });
  }
  const model = found.has("trim") && !found.has("model") ? modelWithin(view, spotted) : undefined;
  if (model !== undefined) found.set("model", { about: "model", id: model, words });
  return [...found.values()];
}

/** "Mk2 S" names a trim and, by its first word, the model. */
function modelWithin(view: MessageView, { phrase }: Spotted): string | undefined {
  const { models } = view.lexicon.handbook.cars;
  const held = models.filter((model) =>
    [model.name, ...model.also].some((name) => {
      const stems = stemsOf(name);
      const isIn = stems.length < phrase.stems.length && stems.every((stem) => phrase.stems.includes(stem));
      return isIn && !isFamily(view, stems);
    }),
  );
  const [only] = held;
  return held.length === 1 ? only?.id : undefined;
}

/** "Isn't a Touring"; but "no, a Mk2" and "Mk1, no Mk2" put right. */
function isDeniedBefore(view: MessageView, from: number): boolean {
  const first = view.clauses[view.clauseOf[from] ?? 0]?.from ?? 0;
  const before = view.tokens
    .slice(Math.max(first, from - 3), from)
    .map((token) => token.folded)
    .join(" ");
  if (
    /^no(?: an?| the)?$/.test(before) &&
    view.spotted.some(({ to, phrase }) => to < first && isOfCar(phrase))
  )
    return false;
  return /\b(?:not|isnt|no|wasnt|converted to)(?: an?| the)?$/.test(before);
}

function isOfCar({ meanings }: Spotted["phrase"]): boolean {
  return meanings.some(({ kind }) => kind === "model" || kind === "trim" || kind === "market");
}

/** "Either an S or a Touring": what is left open is not told. */
function withoutChoices(view: MessageView, named: readonly CarFinding[]): readonly CarFinding[] {
  const place = ({ words }: CarFinding): number => view.shown.indexOf(words);
  const isLeftOpen = (one: CarFinding, other: CarFinding): boolean => {
    if (one.about !== other.about || !("id" in one && "id" in other) || one.id === other.id) return false;
    const [first, last] = place(one) <= place(other) ? [one, other] : [other, one];
    return /^ ?,?(?: (?:a|an|the|car|market))* ?(?:\bor\b|\/)[^.;,]{0,12}$/i.test(
      view.shown.slice(place(first) + first.words.length, place(last)),
    );
  };
  return named.filter((each) => !named.some((other) => isLeftOpen(each, other)));
}

function lastOfKind(car: readonly CarFinding[]): readonly CarFinding[] {
  return car.filter((finding, at) => !car.slice(at + 1).some((later) => later.about === finding.about));
}
