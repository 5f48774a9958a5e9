// The front door of this room: one message in, one reading out. The order matters: serials are masked before
// anything looks at the text, figures are read before words, and short answers only fill what nothing else did.
import { readCar } from "./car-findings.ts";
import { candidateOfAnswer, gatherObservations } from "./gather-observations.ts";
import { type Judged, judge } from "./judge.ts";
import { layOut, touchesAny } from "./lay-out.ts";
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
import { type MessageView, wordsBetween } from "./message-view.ts";
import { findMisbeliefs } from "./misbeliefs.ts";
import { findNearMisses } from "./near-misses.ts";
import { readDates } from "./read-dates.ts";
import { readIntents } from "./read-intents.ts";
import { readShortAnswer, type ShortAnswer } from "./short-answers.ts";
import { weighObservations } from "./weigh-observations.ts";

/** What one message says, read against a handbook. Never throws; bounded in time by the length read. */
export function readMessage(text: string, lexicon: Lexicon, context: ReadingContext): MessageReading {
  const { view, lower, dates, figures, quantities, serials, isCut } = layOut(text, lexicon, context);
  const dated = readDates(view, lower, dates);
  const intents = readIntents(view);
  const answering = figures.filter((each) => !touchesAny(each, dated.used));
  const answer = readShortAnswer(view, intents, answering);
  const { candidates, undecided } = gatherObservations(view, answer);
  const measured = attachQuantities(
    view,
    quantities.filter((each) => !touchesAny(each, dated.used)),
  );
  const materials = readMaterials(view);
  const exact = dated.findings.length + dated.car.length + measured.findings.length + materials.length;
  const judged = judge(view, candidates, { figures: exact });
  const weighed = weighObservations(view, judged.taken);
  // "Second pip gone, 80 in the middle" tells the month, not that there is no dial.
  const seen = weighed.findings.filter((each) => !dated.findings.some((other) => isOfSame(each, other)));
  const said = [...materials, ...seen, ...measured.findings, ...dated.findings];
  const findings = withShortAnswer(view, answer, oneEach(said));
  const car: readonly CarFinding[] = [
    ...readCar(view),
    ...dated.car,
    ...serials.map((serial) => ({ about: "serial" as const, ...serial, words: serial.masked })),
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
    ...asidesOf(view, new Set(judged.taken.map(({ clause }) => clause))),
    ...several.map((words) => ({ words, because: "several-readings" as const })),
    ...dated.notYet.map((words) => ({ words, because: "not-yet" as const })),
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
    inDoubt: inDoubt(view, judged.doubtful, findings),
    nearMisses: findings.length + car.length + parts.length + intents.length > 0 ? [] : findNearMisses(view),
    ...(isCut ? { isCut: true as const } : {}),
    isOpaque: understood === 0,
    shownText: view.shown,
  };
}

/** A mark as moulded says more than its letters read as words: of two findings for a feature the first stands. */
function oneEach(findings: readonly FeatureFinding[]): readonly FeatureFinding[] {
  return findings.filter((each, at) => findings.findIndex((other) => isOfSame(each, other)) === at);
}

function isOfSame(one: FeatureFinding, other: FeatureFinding): boolean {
  return one.feature === other.feature && one.part === other.part;
}

function withShortAnswer(
  view: MessageView,
  answer: ShortAnswer | undefined,
  findings: readonly FeatureFinding[],
): readonly FeatureFinding[] {
  if (answer === undefined || findings.some(({ feature }) => feature === answer.finding.feature))
    return findings;
  const candidate = candidateOfAnswer(view, answer);
  const isSound =
    candidate === undefined || judge(view, [candidate], { others: findings.length }).taken.length > 0;
  return isSound ? [...findings, answer.finding] : findings;
}

/** States said once, of features that nothing else tells. */
function inDoubt(
  view: MessageView,
  doubtful: Judged["doubtful"],
  findings: readonly FeatureFinding[],
): MessageReading["inDoubt"] {
  return doubtful.flatMap(({ part, feature, state, isDenied, from, to }) => {
    const isTold = findings.some((finding) => finding.feature === feature);
    const isOne = doubtful.every((other) => other.feature !== feature || other.state === state);
    if (part === null || isDenied || isTold || !isOne) return [];
    return [{ part, feature, state, words: wordsBetween(view, from, to) }];
  });
}

function partsOf(view: MessageView): MessageReading["parts"] {
  const found = new Map<string, string>();
  view.spotted.forEach((spotted, at) => {
    const part = view.mentioned[at];
    if (part !== undefined && !found.has(part)) found.set(part, wordsBetween(view, spotted.from, spotted.to));
  });
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

/** Stretches left aside for who said them or because they ask; only those that hold a term of the handbook and told nothing. */
function asidesOf(view: MessageView, telling: ReadonlySet<number>): MessageReading["leftAside"] {
  return view.clauses.flatMap((clause, at) => {
    const because = view.stances[at]?.aside;
    const holdsTerm = view.spotted.some(
      (spotted) =>
        view.clauseOf[spotted.from] === at &&
        spotted.phrase.meanings.some((each) => each.kind !== "part" && each.kind !== "model"),
    );
    return because === undefined || !holdsTerm || telling.has(at)
      ? []
      : [{ words: wordsBetween(view, clause.from, clause.to), because }];
  });
}
