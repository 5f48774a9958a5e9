// The proven optimum of asking and stopping, by dynamic programming over every state of knowledge a table can
// lead to, "cannot tell" included as a state of its own. Bounds only cut what cannot matter; a table whose
// states exceed a fixed count is refused, never cut short by a clock.

import type { Question, QuestionTable } from "../../knowledge/questions/question-table.ts";

interface State {
  /** Belief times the chance of getting here. */
  readonly weights: Float64Array;
  readonly mass: number;
  /** Price of stopping, times mass. */
  readonly stop: number;
  /** Bit q is set while question q may be asked. */
  readonly open: number;
  /** Which questions were told what: one digit a question, 0 open, 1 could not be told, 2… the answers. */
  readonly name: number;
  /** A lower bound of the price, times mass. */
  readonly least: number;
}

interface Option {
  readonly index: number;
  readonly branches: readonly State[];
  readonly effort: number;
  /** What it would cost to ask this and stop whatever is told. */
  readonly most: number;
}

interface Solver {
  /** Cheapest first by cost ÷ (1 − cannot tell). */
  readonly questions: readonly Question[];
  readonly places: readonly number[];
  readonly classOf: Int32Array;
  readonly classMasses: Float64Array;
  readonly lambda: number;
  /** Prices known exactly, and lower bounds, times mass. */
  readonly solved: Map<number, number>;
  readonly floors: Map<number, number>;
  readonly capacity: number;
  expanded: number;
}

/** Stopping is best once it costs less than any one answer would; otherwise at least that answer is paid. */
function stateOf(solver: Solver, weights: Float64Array, open: number, name: number): State {
  const { classMasses, classOf, questions } = solver;
  classMasses.fill(0);
  let mass = 0;
  for (let h = 0; h < weights.length; h += 1) {
    const weight = weights[h] as number;
    mass += weight;
    (classMasses[classOf[h] as number] as number) += weight;
  }
  let heaviest = 0;
  for (let c = 0; c < classMasses.length; c += 1) heaviest = Math.max(heaviest, classMasses[c] as number);
  const stop = solver.lambda * (mass - heaviest);
  const cheapest = questions[31 - Math.clz32(open & -open)];
  const answer =
    cheapest === undefined ? Number.POSITIVE_INFINITY : cheapest.cost / (1 - cheapest.cannotTell);
  return { weights, mass, stop, open, name, least: Math.min(stop, answer * mass) };
}

function branchesOf(solver: Solver, state: State, index: number): State[] {
  const question = solver.questions[index] as Question;
  const place = solver.places[index] as number;
  const answers = question.answers.length;
  const open = state.open & ~(1 << index);
  const branches: State[] = [];
  for (let digit = 1; digit < answers + 2; digit += 1) {
    const weights = new Float64Array(state.weights.length);
    const told = digit === 1 ? question.cannotTell : 1 - question.cannotTell;
    for (let h = 0; h < weights.length; h += 1) {
      const chance = digit === 1 ? told : told * (question.likelihood[h * answers + digit - 2] as number);
      weights[h] = (state.weights[h] as number) * chance;
    }
    const branch = stateOf(solver, weights, open, state.name + digit * place);
    if (branch.mass > 0) branches.push(branch);
  }
  return branches;
}

/** The best lower bound known of a state's price. */
function floorOf(solver: Solver, state: State): number {
  const known = solver.solved.get(state.name) ?? solver.floors.get(state.name) ?? 0;
  return Math.min(state.stop, Math.max(state.least, known));
}

function optionsOf(solver: Solver, state: State, bound: number): Option[] {
  const options: Option[] = [];
  for (let index = 0; index < solver.questions.length; index += 1) {
    if ((state.open & (1 << index)) === 0) continue;
    const { cost, cannotTell } = solver.questions[index] as Question;
    if ((cost / (1 - cannotTell)) * state.mass >= bound) continue;
    const branches = branchesOf(solver, state, index);
    const effort = cost * state.mass;
    let least = effort;
    let most = effort;
    for (const branch of branches) {
      const floor = Math.max(
        branch.least,
        solver.floors.get(branch.name) ?? 0,
        solver.solved.get(branch.name) ?? 0,
      );
      least += Math.min(branch.stop, floor);
      most += solver.solved.get(branch.name) ?? branch.stop;
    }
    if (least < bound) options.push({ index, branches, effort, most });
  }
  return options.sort((a, b) => a.most - b.most || a.index - b.index);
}

/** Exact price of asking this question first if below `bound`, else a lower bound that is at least `bound`. */
function optionPrice(solver: Solver, option: Option, bound: number): number {
  const floors = option.branches.map((branch) => floorOf(solver, branch));
  let price = floors.reduce((sum, floor) => sum + floor, option.effort);
  for (const [at, branch] of option.branches.entries()) {
    if (price >= bound) return price;
    if (branch.stop <= branch.least) continue;
    const others = price - (floors[at] as number);
    const own = priceOf(solver, branch, bound - others);
    if (own >= bound - others) return bound;
    price = others + own;
  }
  return price;
}

/** Exact price of a state, times its mass, if below `bound`; else a lower bound that is at least `bound`. */
function priceOf(solver: Solver, state: State, bound: number): number {
  const known = solver.solved.get(state.name);
  if (known !== undefined) return known;
  const floor = solver.floors.get(state.name) ?? 0;
  if (floor >= bound) return floor;
  solver.expanded += 1;
  if (solver.expanded > solver.capacity) return state.stop;
  let best = Math.min(state.stop, bound);
  let isExact = state.stop <= bound;
  for (const option of optionsOf(solver, state, best)) {
    const price = optionPrice(solver, option, best);
    if (price >= best) continue;
    best = price;
    isExact = true;
  }
  (isExact ? solver.solved : solver.floors).set(state.name, best);
  return best;
}

function effectiveCost(question: Question): number {
  return question.cost / (1 - question.cannotTell);
}

/**
 * The least expected effort + λ·P(wrong verdict) any way of asking and stopping can reach on `table`, exactly
 * (to rounding). Undefined when more than `capacity` states would have to be expanded. Priors sum to one.
 */
export function exactOptimum(table: QuestionTable, capacity: number): number | undefined {
  const names = [...new Set(table.hypotheses.map((hypothesis) => hypothesis.class))];
  const questions = [...table.questions].sort((a, b) => effectiveCost(a) - effectiveCost(b));
  let place = 1;
  const places = questions.map((question) => {
    const own = place;
    place *= question.answers.length + 2;
    return own;
  });
  if (place > 2 ** 53 || questions.length > 30) return undefined;
  const solver: Solver = {
    questions,
    places,
    classOf: Int32Array.from(table.hypotheses, (hypothesis) => names.indexOf(hypothesis.class)),
    classMasses: new Float64Array(names.length),
    lambda: table.lambda,
    solved: new Map(),
    floors: new Map(),
    capacity,
    expanded: 0,
  };
  const weights = Float64Array.from(table.hypotheses, (hypothesis) => hypothesis.prior);
  const root = stateOf(solver, weights, 2 ** questions.length - 1, 0);
  const price = priceOf(solver, root, Number.POSITIVE_INFINITY);
  return solver.expanded > capacity ? undefined : price;
}
