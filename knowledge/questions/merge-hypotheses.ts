// Hypotheses that lead to the same verdict and answer every chosen question alike cannot be told apart and
// need not be: they are added up. What is still too many is cut to the heaviest, and the loss is reported.

import type { BeliefsByClass } from "./beliefs-by-class.ts";
import { mergeAnswers } from "./merge-answers.ts";
import type { Question, QuestionTable } from "./question-table.ts";
import type { SearchQuestion, SearchTable } from "./search-table.ts";

export interface MergedTable {
  readonly table: SearchTable;
  /** Belief in the hypotheses that did not fit. */
  readonly droppedMass: number;
}

/**
 * What the answers of one question may lose of the expected Σ P(hypothesis)² when like ones are put together. On 400
 * tables of the demo handbook a tenth or ten times as much made no worse choices; the search took a quarter less time.
 */
const LOST_BY_MERGING = 1e-3;

interface Groups {
  readonly groupOf: Int32Array;
  readonly count: number;
}

/** Splits groups whose members have different likelihood rows; an open-addressing table over exact bits. */
function splitByRow(groups: Groups, order: Int32Array, question: Question): Groups {
  const { likelihood } = question;
  const answers = question.answers.length;
  const bits = new Uint32Array(likelihood.buffer, likelihood.byteOffset, likelihood.length * 2);
  const mask = 2 ** Math.ceil(Math.log2(order.length * 2 + 1)) - 1;
  const slots = new Int32Array(mask + 1).fill(-1);
  const groupOf = new Int32Array(order.length);
  let count = 0;
  const isAlike = (place: number, other: number): boolean => {
    if (groups.groupOf[place] !== groups.groupOf[other]) return false;
    const row = (order[place] as number) * answers;
    const otherRow = (order[other] as number) * answers;
    for (let a = 0; a < answers; a += 1) if (likelihood[row + a] !== likelihood[otherRow + a]) return false;
    return true;
  };
  for (let place = 0; place < order.length; place += 1) {
    const from = (order[place] as number) * answers * 2;
    let hash = groups.groupOf[place] as number;
    for (let at = from; at < from + answers * 2; at += 1)
      hash = Math.imul(hash ^ (bits[at] as number), 0x01000193);
    let slot = (hash ^ (hash >>> 15)) & mask;
    while (slots[slot] !== -1 && !isAlike(place, slots[slot] as number)) slot = (slot + 1) & mask;
    if (slots[slot] === -1) {
      slots[slot] = place;
      groupOf[place] = count;
      count += 1;
    } else groupOf[place] = groupOf[slots[slot] as number] as number;
  }
  return { groupOf, count };
}

function classGroups(classEnds: Int32Array, size: number): Groups {
  const groupOf = new Int32Array(size);
  let place = 0;
  classEnds.forEach((end, c) => {
    for (; place < end; place += 1) groupOf[place] = c;
  });
  return { groupOf, count: classEnds.length };
}

function heaviestGroups(masses: Float64Array, capacity: number): readonly number[] {
  const all = Array.from(masses.keys());
  if (all.length <= capacity) return all;
  const byMass = all.sort((a, b) => (masses[b] as number) - (masses[a] as number) || a - b);
  return byMass.slice(0, capacity).sort((a, b) => a - b);
}

function searchQuestion(
  question: Question,
  representatives: readonly number[],
  weights: Float64Array,
): SearchQuestion {
  const { id, cost, cannotTell, answers } = question;
  const width = representatives.length;
  const likelihood = new Float64Array(answers.length * width);
  representatives.forEach((hypothesis, column) => {
    for (let a = 0; a < answers.length; a += 1) {
      likelihood[a * width + column] = question.likelihood[hypothesis * answers.length + a] as number;
    }
  });
  const merged = mergeAnswers(likelihood, answers.length, weights, LOST_BY_MERGING);
  return {
    id,
    cost,
    cannotTell,
    effectiveCost: cost / (1 - cannotTell),
    answerCount: merged.count,
    likelihood: merged.likelihood,
  };
}

/**
 * The search table over `questions` (cheapest first) with like hypotheses merged and at most `capacity`
 * groups kept, the heaviest; ties go to the group met first. Cost: hypotheses × answers of `questions`.
 */
export function mergeHypotheses(
  source: QuestionTable,
  beliefs: BeliefsByClass,
  questions: readonly Question[],
  capacity: number,
): MergedTable {
  const { order, weights, classEnds } = beliefs;
  const classes = classGroups(classEnds, order.length);
  const groups = questions.reduce((split, question) => splitByRow(split, order, question), classes);
  const masses = new Float64Array(groups.count);
  const firstPlace = new Int32Array(groups.count).fill(-1);
  groups.groupOf.forEach((group, place) => {
    (masses[group] as number) += weights[place] as number;
    if (firstPlace[group] === -1) firstPlace[group] = place;
  });
  // Places run class by class and groups are numbered as met, so the kept groups stay in class order.
  const kept = heaviestGroups(masses, capacity);
  const representatives = kept.map((group) => order[firstPlace[group] as number] as number);
  const ends: number[] = [];
  let previousClass = -1;
  kept.forEach((group, column) => {
    const itsClass = classes.groupOf[firstPlace[group] as number] as number;
    if (itsClass !== previousClass) ends.push(column + 1);
    else ends[ends.length - 1] = column + 1;
    previousClass = itsClass;
  });
  const keptWeights = Float64Array.from(kept, (group) => masses[group] as number);
  const keptMass = keptWeights.reduce((sum, mass) => sum + mass, 0);
  const allMass = weights.reduce((sum, mass) => sum + mass, 0);
  return {
    table: {
      weights: keptWeights,
      classEnds: Int32Array.from(ends),
      singleEnds: Int32Array.from(kept, (_, column) => column + 1),
      certain: new Float64Array(kept.length * 2).fill(1, 0, kept.length),
      questions: questions.map((question) => searchQuestion(question, representatives, keptWeights)),
      lambda: source.lambda,
    },
    droppedMass: kept.length === groups.count ? 0 : Math.max(0, allMass - keptMass),
  };
}
