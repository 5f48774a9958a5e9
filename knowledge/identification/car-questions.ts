/**
 * Questions about the car itself. The table needs P(answer | hypothesis); the prior knows P(hypothesis | answer), so
 * Bayes' rule turns it round: a build date is asked for when the works' mix or the marks make it worth a look.
 */
import { type Interval, intersect, yearInterval } from "../calendar/interval.ts";
import type { CarDescription } from "../evidence/car-description.ts";
import type { Belief } from "./belief.ts";
import { carGround } from "./car-ground.ts";
import type { CompiledPart } from "./compiled-part.ts";
import { dateLikelihood, marksAmong } from "./date-likelihood.ts";
import { spanOfTexts } from "./eras.ts";
import type { Fact } from "./facts.ts";
import { type CarField, type CarQuestion, carFields, type PlannedCarAnswer } from "./question-plan.ts";

/** More calendar years than this are not offered as answers. */
const MOST_YEARS = 40;

/** The questions about the car that are open and on which some variant depends; none for a loose part. */
export function carQuestions(
  compiled: CompiledPart,
  car: CarDescription,
  built: Interval,
): readonly CarQuestion[] {
  if (car.isLoosePart) return [];
  return carFields
    .map((field) => ({
      field,
      answers: field === "built" ? yearAnswers(built) : namedAnswers(compiled, car, field, built),
    }))
    .filter(({ answers }) => answers.length > 1)
    .map(({ field, answers }) => ({ kind: "car", id: `car.${field}`, field, answers }));
}

function yearAnswers(built: Interval): readonly PlannedCarAnswer[] {
  const first = Math.floor(built.from / 12);
  const last = Math.ceil(built.to / 12) - 1;
  if (last - first + 1 > MOST_YEARS) return [];
  const answers: PlannedCarAnswer[] = [];
  for (let year = first; year <= last; year += 1) {
    const within = intersect(yearInterval(year), built);
    if (within) answers.push({ id: String(year), label: String(year), car: { built: within } });
  }
  return answers;
}

function namedAnswers(
  compiled: CompiledPart,
  car: CarDescription,
  field: Exclude<CarField, "built">,
  built: Interval,
): readonly PlannedCarAnswer[] {
  const list = { model: "models", trim: "trims", market: "markets" } as const;
  const isOpen =
    car[field] === undefined && compiled.fleet.spans.some((span) => span[list[field]].length > 0);
  const possible = namesOf(compiled, car, field).filter((named) => isOpen && wasMade(named, built));
  return possible.map(({ id, name }) => ({ id, label: name, car: { [field]: id } }));
}

interface Named {
  readonly id: string;
  readonly name: string;
  readonly from?: string;
  readonly to?: string;
}

/** Dates of models and trims are rounded, and so are those of cars: months of grace on either side. Ours, no source. */
const GRACE = 3;

/** Whether cars of the model or trim were made when this one was; a market has no dates. */
function wasMade({ from, to }: Named, built: Interval): boolean {
  const made = from === undefined || to === undefined ? undefined : spanOfTexts(from, to);
  return made === undefined || (made.from - GRACE < built.to && made.to + GRACE > built.from);
}

function namesOf(
  { handbook: { cars } }: CompiledPart,
  car: CarDescription,
  field: Exclude<CarField, "built">,
): readonly Named[] {
  if (field === "model") return cars.models;
  if (field === "market") return cars.markets;
  return cars.trims.filter(
    ({ models }) => car.model === undefined || models.length === 0 || models.includes(car.model),
  );
}

/**
 * P(answer | h, the date marks read), row-major, hypotheses × answers: ∝ P(answer) · P(h | answer) · P(marks | h, answer).
 * P(answer) is the share of production for years, even for names. A hypothesis that no answer allows: P(answer).
 */
export function carRows(belief: Belief, car: CarDescription, question: CarQuestion): Float64Array {
  const { compiled, ground } = belief;
  const marks = belief.facts.filter(({ feature }) => compiled.dates.has(feature));
  const kept = marks.length === 0 ? ground.questionRows.get(question.id) : undefined;
  if (kept) return kept;
  const rows = workOut(belief, car, question, marks);
  if (marks.length === 0) ground.questionRows.set(question.id, rows);
  return rows;
}

function workOut(
  belief: Belief,
  car: CarDescription,
  question: CarQuestion,
  marks: readonly Fact[],
): Float64Array {
  const { compiled } = belief;
  const width = question.answers.length;
  const rows = new Float64Array(compiled.space.size * width);
  const shares = question.answers.map((answer) =>
    question.field === "built" ? productionShare(belief, answer.car.built) : 1,
  );
  const read = marksAmong(compiled, marks);
  question.answers.forEach((answer, column) => {
    const ground = carGround(compiled, { ...car, ...answer.car });
    const dated = read && dateLikelihood(compiled, ground, read);
    const share = shares[column] ?? 0;
    ground.prior.forEach((prior, h) => {
      rows[h * width + column] = share * prior * (dated?.[h] ?? 1);
    });
  });
  normaliseRows(rows, shares);
  return rows;
}

/** Share of the build instants' weight that lies in a year. */
function productionShare({ ground }: Belief, year: Interval | undefined): number {
  if (!year) return 0;
  return ground.mix.times.reduce(
    (sum, time, k) => (time >= year.from && time < year.to ? sum + (ground.mix.weights[k] as number) : sum),
    0,
  );
}

/** Each row to a sum of one; a row of zeros to the shares. */
function normaliseRows(rows: Float64Array, shares: readonly number[]): void {
  const width = shares.length;
  const whole = shares.reduce((sum, share) => sum + share, 0);
  for (let start = 0; start < rows.length; start += width) {
    let total = 0;
    for (let column = 0; column < width; column += 1) total += rows[start + column] as number;
    for (let column = 0; column < width; column += 1) {
      const place = start + column;
      rows[place] = total > 0 ? (rows[place] as number) / total : (shares[column] as number) / whole;
    }
  }
}
