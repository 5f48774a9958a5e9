// Several observations of one feature in one message become one finding, or are left aside: what was put right
// replaces, what was denied excludes, "more rough than smooth" leans, "rough or smooth" keeps both.
import { certainties, type ReportValue } from "../evidence/report.ts";
import type { StateFeature } from "../handbook/schema.ts";
import { glueWords } from "./common-words.ts";
import { wordsOfFeature } from "./lexicon.ts";
import type { FeatureFinding } from "./message-reading.ts";
import { type MessageView, wordsBetween } from "./message-view.ts";
import { stemsOf } from "./name-stems.ts";
import type { Observation } from "./observations.ts";
import { statesLeft } from "./states-left.ts";

export interface Weighed {
  readonly findings: readonly FeatureFinding[];
  readonly leftAside: readonly string[];
}

/** Words by which a speaker puts right what they said. */
export const corrections =
  /\b(?:sorry|i meant|i mean|correction|scratch that|make that|actually|rather|edit|oops|wait|no its|no it is|no theyre|on second|my mistake|should read|i was wrong|strike that|instead|turns out|but looking|on closer|looking (?:again|closer|better)|cleaned it|looked again|had another look|checked again)\b/;

/** One finding a feature at most, in the order first said. */
export function weighObservations(view: MessageView, observations: readonly Observation[]): Weighed {
  const byFeature = new Map<string, Observation[]>();
  for (const observation of observations.toSorted((one, other) => one.from - other.from)) {
    const key = `${observation.part ?? ""} ${observation.feature}`;
    byFeature.set(key, [...(byFeature.get(key) ?? []), observation]);
  }
  const findings: FeatureFinding[] = [];
  const leftAside: string[] = [];
  for (const group of byFeature.values()) {
    const finding = weighGroup(view, group);
    if (typeof finding === "string") leftAside.push(finding);
    else if (finding !== undefined) findings.push(finding);
  }
  return { findings, leftAside };
}

function weighGroup(view: MessageView, group: readonly Observation[]): FeatureFinding | string | undefined {
  const said = withoutSubsumed(
    view,
    group.filter((each) => !each.isDenied),
  );
  const denied = group.filter((each) => each.isDenied);
  const kept = dropThought(view, dropCompared(view, said));
  const states = new Set(kept.map((each) => each.state));
  const last = kept.at(-1);
  if (last === undefined) return deniedFinding(view, denied);
  if (states.size === 1) return finding(view, kept, { kind: "state", state: last.state });
  const corrected = lastCorrection(view, kept);
  if (corrected !== undefined) return finding(view, [corrected], { kind: "state", state: corrected.state });
  const feature = stateFeature(view, last);
  if (isChoice(view, kept) && feature !== undefined && states.size < feature.states.length) {
    const weights = Object.fromEntries(Array.from(states, (state) => [state, 1]));
    return finding(view, kept, { kind: "weighed-states", weights });
  }
  const plainest = isOfSides(view, kept) ? undefined : farLikeliest(kept);
  if (plainest !== undefined) return finding(view, [plainest], { kind: "state", state: plainest.state });
  return spanWords(view, kept);
}

/** Odds by which one state must stand out from every other said. */
const standingOut = 3;

/** The observation that stands out from all of another state; undefined when none does. */
function farLikeliest(said: readonly Observation[]): Observation | undefined {
  const [best] = said.toSorted((one, other) => oddsOf(other) - oddsOf(one));
  const rivals = said.filter((each) => each.state !== best?.state);
  return best !== undefined && rivals.every((each) => oddsOf(best) >= standingOut * oddsOf(each))
    ? best
    : undefined;
}

/** "The left one has two screws, the right one three": both are so, each of its own. */
function isOfSides(view: MessageView, said: readonly Observation[]): boolean {
  const clauses = said.map((each) => view.clauses[each.clause]?.text ?? "");
  return [/\b(?:left|nearside|passengers?)\b/, /\b(?:right|offside|drivers?)\b/].every((side) =>
    clauses.some((clause) => side.test(clause)),
  );
}

function oddsOf({ probability = 0.5 }: Observation): number {
  return probability / (1 - probability);
}

/** "Hollowed, with a rib": a state whose words all stand in a name of another state said in the same clause. */
function withoutSubsumed(view: MessageView, said: readonly Observation[]): readonly Observation[] {
  const states = new Set(said.map((each) => each.state));
  const [first] = said;
  const feature = first === undefined || states.size < 2 ? undefined : stateFeature(view, first);
  if (feature === undefined) return said;
  const holds = (state: string, words: readonly string[]): boolean =>
    feature.states.some(
      (each) => each.id === state && words.every((word) => stemsOf(each.name).includes(word)),
    );
  return said.filter((each) => {
    const words = view.words.slice(each.from, each.to + 1).filter((word) => !glueWords.has(word));
    const isWithin = (other: Observation): boolean =>
      other.state !== each.state && other.clause === each.clause && holds(other.state, words);
    return !said.some(isWithin);
  });
}

/** The states that are left when some are denied. */
function deniedFinding(view: MessageView, denied: readonly Observation[]): FeatureFinding | undefined {
  const [first] = denied;
  const feature = first === undefined ? undefined : stateFeature(view, first);
  if (feature === undefined) return undefined;
  const excluded = new Set(denied.map((each) => each.state));
  const left = statesLeft(feature, excluded, wordsBeside(view, denied));
  const [only] = left;
  if (only === undefined) return undefined;
  if (left.length === 1) return finding(view, denied, { kind: "state", state: only });
  const weights = Object.fromEntries(left.map((state) => [state, 1]));
  return finding(view, denied, { kind: "weighed-states", weights });
}

/** The speaker's other words in the sentences of the denials. */
function wordsBeside(view: MessageView, denied: readonly Observation[]): readonly string[] {
  const sentences = new Set(denied.map((each) => view.clauses[each.clause]?.sentence));
  return view.words.filter((_, at) => {
    const clause = view.clauseOf[at] ?? 0;
    const isDenied = denied.some((each) => each.from <= at && at <= each.to);
    return (
      !isDenied && view.stances[clause]?.aside === undefined && sentences.has(view.clauses[clause]?.sentence)
    );
  });
}

function stateFeature(view: MessageView, observation: Observation): StateFeature | undefined {
  const parts = observation.part === null ? view.lexicon.parts.keys() : [observation.part];
  for (const part of parts) {
    const feature = wordsOfFeature(view.lexicon, part, observation.feature)?.feature;
    if (feature?.kind === "states") return feature;
  }
  return undefined;
}

function finding(view: MessageView, from: readonly Observation[], value: ReportValue): FeatureFinding {
  const [first] = from;
  const last = from.at(-1);
  const stated = Math.min(...from.map((each) => view.stances[each.clause]?.certainty ?? certainties.firm));
  const certainty = leans(view, from) ? Math.min(stated, certainties.thinks) : stated;
  return {
    part: first?.part ?? null,
    feature: first?.feature ?? "",
    value,
    certainty,
    words: wordsBetween(view, first?.from ?? 0, last?.to ?? 0),
  };
}

function spanWords(view: MessageView, group: readonly Observation[]): string {
  return wordsBetween(view, group[0]?.from ?? 0, group.at(-1)?.to ?? 0);
}

/** "rather than smooth", "more rough than smooth", "instead of three": what it is compared with goes. */
function dropCompared(view: MessageView, said: readonly Observation[]): readonly Observation[] {
  const kept = said.filter(
    (each) =>
      !/\b(?:than|instead of|as opposed to|unlike|versus|not|over|over (?:the|a|an|hard|old)|of the)$/.test(
        textBefore(view, each),
      ),
  );
  return kept.length === 0 ? said : kept;
}

/** "I thought cross stitch but it is rungs": what was only thought once gives way to what is. */
function dropThought(view: MessageView, said: readonly Observation[]): readonly Observation[] {
  const kept = said.filter(
    (each) =>
      !/\b(?:thought|tought|assumed|expected|expecting|used to|i (?:wrote|said|posted|typed|put|told you|answered)(?! (?:earlier )?(?:and|because))|first glance)\b/.test(
        view.clauses[each.clause]?.text ?? "",
      ),
  );
  return kept.length === 0 ? said : kept;
}

function leans(view: MessageView, from: readonly Observation[]): boolean {
  return from.some((each) =>
    /\b(?:more|mostly|mainly|rather|closer to|nearer to|tends to)(?: \w+)?$/.test(textBefore(view, each)),
  );
}

/** The observation a correction stands before or in ("no, smooth actually"), when it is the last. */
function lastCorrection(view: MessageView, said: readonly Observation[]): Observation | undefined {
  const last = said.at(-1);
  const previous = said.at(-2);
  if (last === undefined || previous === undefined || last.state === previous.state) return undefined;
  const clause = view.clauses[last.clause];
  const between = text(view, previous.to + 1, Math.max(last.from - 1, previous.to));
  const rest = text(view, last.to + 1, clause?.to ?? last.to);
  const next = view.clauses[last.clause + 1]?.text ?? "";
  const isCorrected =
    corrections.test(between) || /\bno\b/.test(between) || /^(?:actually|sorry|rather)\b/.test(rest);
  return isCorrected || /^(?:actually|sorry)$/.test(next) ? last : undefined;
}

function isChoice(view: MessageView, said: readonly Observation[]): boolean {
  return said.slice(1).every((each, at) => {
    const previous = said[at];
    return (
      previous !== undefined && /\b(?:or|between|either)\b/.test(text(view, previous.to + 1, each.from - 1))
    );
  });
}

function textBefore(view: MessageView, observation: Observation): string {
  return text(view, Math.max(0, observation.from - 3), observation.from - 1);
}

function text(view: MessageView, from: number, to: number): string {
  return view.tokens
    .slice(from, to + 1)
    .map((token) => token.folded)
    .join(" ");
}
