/**
 * What several people said about one feature, as one likelihood per true state. The same person's later word has
 * already replaced the earlier; two people are neither one nor independent, for both may fall into the same trap.
 */
import { notThere, type Report } from "../evidence/report.ts";
import { type MistakeChannel, NOT_THERE_MISTAKE } from "./mistake-channel.ts";

/** Chance that everybody who looks is misled by the same appearance (judgement, not fitted). */
const SHARED_TRAP = 0.5;

/**
 * P(reports | state) for every state of the channel (identification method, section 3):
 * κ · Π_j P(r_j | s) + (1 − κ) · Σ_t M[s][t] · Π_j (c_j · [r_j = t] + (1 − c_j)/K), κ = .5, which for one person is
 * c · M[s][r] + (1 − c)/K. Weighed states multiply in as soft evidence, w_s, for they are measured and not read off.
 * No reports: 1 for every state.
 */
export function reportsByState(channel: MistakeChannel, reports: readonly Report[]): Float64Array {
  const size = channel.states.length;
  const looks: { said: number; certainty: number }[] = [];
  const likelihood = new Float64Array(size).fill(1);
  for (const { value, certainty } of reports) {
    if (value.kind === "state") looks.push({ said: channel.states.indexOf(value.state), certainty });
    if (value.kind === "weighed-states")
      multiplyWeights(likelihood, channel.states, value.weights, certainty);
  }
  if (looks.length === 0) return likelihood;
  const guess = (certainty: number): number => (1 - certainty) / size;
  const seenAlike = new Float64Array(size);
  for (let seen = 0; seen < size; seen += 1) {
    seenAlike[seen] = looks.reduce(
      (product, look) => product * ((look.said === seen ? look.certainty : 0) + guess(look.certainty)),
      1,
    );
  }
  for (let is = 0; is < size; is += 1) {
    let apart = 1;
    let together = 0;
    for (const look of looks) {
      apart *= look.certainty * (channel.chances[is * size + look.said] as number) + guess(look.certainty);
    }
    for (let seen = 0; seen < size; seen += 1) {
      together += (channel.chances[is * size + seen] as number) * (seenAlike[seen] as number);
    }
    likelihood[is] = (likelihood[is] as number) * ((1 - SHARED_TRAP) * apart + SHARED_TRAP * together);
  }
  return likelihood;
}

function multiplyWeights(
  likelihood: Float64Array,
  states: readonly string[],
  weights: Readonly<Record<string, number>>,
  certainty: number,
): void {
  const weightOf = (state: string): number => (Object.hasOwn(weights, state) ? (weights[state] ?? 0) : 0);
  const real = states.filter((state) => state !== notThere);
  const mean = real.reduce((sum, state) => sum + weightOf(state), 0) / real.length;
  if (mean <= 0) return;
  states.forEach((state, index) => {
    const weight = state === notThere ? Math.max(weightOf(state), NOT_THERE_MISTAKE * mean) : weightOf(state);
    likelihood[index] = (likelihood[index] as number) * (certainty * weight + (1 - certainty) * mean);
  });
}
