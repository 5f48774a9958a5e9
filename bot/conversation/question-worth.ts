/** What a question is worth when it stands alone: for lists of evidence, where no search order is at stake. */
import { mutualInformationBits, type Question, type QuestionTable } from "../../knowledge/index.ts";

export interface QuestionWorth {
  readonly question: Question;
  /** Bits its answer is expected to tell about the class, "cannot tell" counted as none. */
  readonly bits: number;
}

/** Below this many bits a look is not worth a line in a list. Ours, no source. */
const leastBits = 0.01;

/** The table's questions by what they tell of the class, most first, ties by cost, then by id; the useless left out. */
export function byInformation(table: QuestionTable): readonly QuestionWorth[] {
  return worths(table).toSorted(
    (one, other) =>
      other.bits - one.bits || one.question.cost - other.question.cost || byId(one.question, other.question),
  );
}

/** The same by what they tell for their effort. */
export function byInformationPerEffort(table: QuestionTable): readonly QuestionWorth[] {
  const price = (worth: QuestionWorth) => worth.bits / worth.question.cost;
  return worths(table).toSorted(
    (one, other) => price(other) - price(one) || byId(one.question, other.question),
  );
}

/** The table as if only these classes were possible and equally likely. */
export function betweenClasses(table: QuestionTable, classes: readonly string[]): QuestionTable {
  const masses = new Map<string, number>();
  for (const { class: id, prior } of table.hypotheses) masses.set(id, (masses.get(id) ?? 0) + prior);
  const hypotheses = table.hypotheses.map((hypothesis) => {
    const mass = masses.get(hypothesis.class) ?? 0;
    const isLeft = classes.includes(hypothesis.class) && mass > 0;
    return { ...hypothesis, prior: isLeft ? hypothesis.prior / mass : 0 };
  });
  return { ...table, hypotheses };
}

/** What each answer would make of the classes. */
export interface AfterAnswer {
  readonly answer: string;
  readonly probability: number;
  readonly class: string;
  readonly classProbability: number;
}

/** For each answer its probability and the class that would then stand first; the likeliest answers first. */
export function afterAnswers(table: QuestionTable, question: Question): readonly AfterAnswer[] {
  const joint = jointByClass(table, question);
  const total = [...joint.values()].flat().reduce((sum, mass) => sum + mass, 0);
  return question.answers
    .flatMap((answer, column) => {
      const masses = [...joint].map(([id, row]) => ({ id, mass: row[column] ?? 0 }));
      const mass = masses.reduce((sum, one) => sum + one.mass, 0);
      const best = masses.reduce((first, one) => (one.mass > first.mass ? one : first), { id: "", mass: 0 });
      if (!(mass > 0 && total > 0)) return [];
      return [{ answer, probability: mass / total, class: best.id, classProbability: best.mass / mass }];
    })
    .toSorted((one, other) => other.probability - one.probability || (one.answer < other.answer ? -1 : 1));
}

function worths(table: QuestionTable): readonly QuestionWorth[] {
  return table.questions
    .map((question) => ({
      question,
      bits: mutualInformationBits([...jointByClass(table, question).values()]) * (1 - question.cannotTell),
    }))
    .filter(({ bits }) => bits >= leastBits);
}

function jointByClass(table: QuestionTable, question: Question): ReadonlyMap<string, readonly number[]> {
  const joint = new Map<string, number[]>();
  table.hypotheses.forEach(({ class: id, prior }, hypothesis) => {
    const row = joint.get(id) ?? question.answers.map(() => 0);
    question.answers.forEach((_, answer) => {
      const chance = question.likelihood[hypothesis * question.answers.length + answer] ?? 0;
      row[answer] = (row[answer] ?? 0) + prior * chance;
    });
    joint.set(id, row);
  });
  return joint;
}

function byId(one: Question, other: Question): number {
  return one.id < other.id ? -1 : one.id > other.id ? 1 : 0;
}
