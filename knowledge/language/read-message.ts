// The front door of this room: one message in, one reading out. The order matters: serials are masked before
// anything looks at the text, figures are read before words, and short answers only fill what nothing else did.
import { blankNoise } from "./blank-noise.ts";
import { readCar } from "./car-findings.ts";
import { cleanText } from "./clean-text.ts";
import type { Lexicon } from "./lexicon.ts";
import { readMaterials } from "./material-findings.ts";
import { attachQuantities } from "./measurements.ts";
import type {
  CarFinding,
  FeatureFinding,
  MessageReading,
  ReadingContext,
  VariantMention,
} from "./message-reading.ts";
import { type MessageView, partsNamed, viewMessage, wordsBetween } from "./message-view.ts";
import { findMisbeliefs } from "./misbeliefs.ts";
import { findNearMisses } from "./near-misses.ts";
import { negationsOf, observeStates } from "./observations.ts";
import { observePresence } from "./presence.ts";
import { findQuantities, type Quantity } from "./quantities.ts";
import { type DatesFound, datesIn, readDates } from "./read-dates.ts";
import { readIntents } from "./read-intents.ts";
import { maskSerials } from "./serials.ts";
import { readShortAnswer } from "./short-answers.ts";
import { weighObservations } from "./weigh-observations.ts";

/** What one message says, read against a handbook. Never throws; bounded in time by the length read. */
export function readMessage(text: string, lexicon: Lexicon, context: ReadingContext): MessageReading {
  const { cars } = lexicon.handbook;
  const masked = maskSerials(cleanText(text).text, cars);
  const shown = masked.text;
  const { text: readable, quoted } = blankNoise(shown);
  const lower = readable.replace(/[A-Z]/g, (letter) => letter.toLowerCase());
  const dates = datesIn(lower, cars, context.today);
  const quantities = findQuantities(lower).filter((each) => !isInDate(each, dates));
  const taken = [
    ...dates.phrases.filter(isFirmDate),
    ...dates.told,
    ...quantities.filter((each) => each.unit !== null),
  ];
  const view = viewMessage({ shown, readable, quoted, taken }, lexicon, context);
  const dated = readDates(view, lower, dates);
  const negations = negationsOf(view);
  const { observations, undecided } = observeStates(view, negations);
  const weighed = weighObservations(view, [
    ...observations,
    ...observePresence(view, negations, observations),
  ]);
  const measured = attachQuantities(view, quantities);
  const intents = readIntents(view);
  const findings = withShortAnswer(view, intents, [
    ...weighed.findings,
    ...measured.findings,
    ...dated.findings,
    ...readMaterials(view),
  ]);
  const car: readonly CarFinding[] = [
    ...readCar(view),
    ...dated.car,
    ...masked.serials.map((serial) => ({ about: "serial" as const, ...serial, words: serial.masked })),
  ];
  const parts = partsOf(view);
  const variants = variantsOf(view);
  const misbeliefs = findMisbeliefs(view);
  const several = [
    ...undecided.map((spotted) => wordsBetween(view, spotted.from, spotted.to)),
    ...weighed.leftAside,
    ...measured.leftAside,
    ...dated.leftAside,
  ];
  const leftAside = [
    ...asidesOf(view),
    ...several.map((words) => ({ words, because: "several-readings" as const })),
  ];
  const understood =
    findings.length + car.length + parts.length + variants.length + intents.length + misbeliefs.length;
  return {
    parts,
    findings,
    car,
    variants,
    intents,
    misbeliefs,
    leftAside,
    nearMisses: findNearMisses(view),
    isOpaque: understood === 0,
    shownText: shown,
  };
}

function isInDate(quantity: Quantity, dates: DatesFound): boolean {
  const overlaps = (span: { readonly start: number; readonly end: number }): boolean =>
    span.start < quantity.end && quantity.start < span.end;
  if (dates.told.some(overlaps)) return true;
  return dates.phrases.some((phrase) => overlaps(phrase) && (quantity.unit === null || isFirmDate(phrase)));
}

/** A bare "81" may be a number after all; every other date phrase is a date. */
function isFirmDate(phrase: DatesFound["phrases"][number]): boolean {
  return phrase.shape !== "short-year";
}

function withShortAnswer(
  view: MessageView,
  intents: MessageReading["intents"],
  findings: readonly FeatureFinding[],
): readonly FeatureFinding[] {
  const asked = view.context.askedFeature;
  if (asked === undefined || findings.some((finding) => finding.feature === asked)) return findings;
  const isUnseen = intents.some((intent) => intent.kind === "cannot-tell" || intent.kind === "how-to-check");
  const answer = isUnseen ? undefined : readShortAnswer(view, intents);
  return answer === undefined ? findings : [...findings, answer];
}

function partsOf(view: MessageView): MessageReading["parts"] {
  const found = new Map<string, string>();
  for (const spotted of view.spotted) {
    const named = partsNamed(spotted);
    const [only] = named;
    if (named.length === 1 && only !== undefined && !found.has(only)) {
      found.set(only, wordsBetween(view, spotted.from, spotted.to));
    }
  }
  return Array.from(found, ([part, words]) => ({ part, words }));
}

function variantsOf(view: MessageView): readonly VariantMention[] {
  return view.spotted.flatMap((spotted) => {
    const clause = view.clauseOf[spotted.from] ?? 0;
    const active = view.partOf[clause];
    const named = spotted.phrase.meanings.filter((each) => each.kind === "variant");
    const fitting = named.filter((each) => active === undefined || each.part === active);
    const [only] = fitting;
    if (only === undefined || fitting.length !== 1) return [];
    const aside = view.stances[clause]?.aside;
    if (aside === "another-car") return [];
    const as = aside ?? "own-guess";
    return [
      { part: only.part, variant: only.variant, as, words: wordsBetween(view, spotted.from, spotted.to) },
    ];
  });
}

/** Stretches left aside for who said them or because they ask; only those that hold a term of the handbook. */
function asidesOf(view: MessageView): MessageReading["leftAside"] {
  return view.clauses.flatMap((clause, at) => {
    const because = view.stances[at]?.aside;
    const holdsTerm = view.spotted.some(
      (spotted) =>
        view.clauseOf[spotted.from] === at &&
        spotted.phrase.meanings.some((each) => each.kind !== "part" && each.kind !== "model"),
    );
    return because === undefined || !holdsTerm
      ? []
      : [{ words: wordsBetween(view, clause.from, clause.to), because }];
  });
}
