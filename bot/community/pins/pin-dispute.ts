/**
 * What speaks against a pinned answer: the handbook's own fitted periods, the community's accepted observations, or the evidence of the
 * case in hand. Only a pin that says which kind it is can be spoken against.
 */
import {
  type CarDescription,
  type CompiledPart,
  identify,
  notInHandbook,
  sayProbability,
  variantById,
} from "../../../knowledge/index.ts";
import type { CaseFacts } from "../../conversation/case.ts";
import { findPart, type Knowledge } from "../../conversation/knowledge.ts";
import { listed, withThe } from "../../conversation/phrases/grammar.ts";
import type { CaseSummary } from "../../reply.ts";
import type { CommunityScene } from "../affair.ts";
import * as phrases from "../phrases/pins.ts";
import type { Pin, PinScope } from "./pin.ts";

/** What is as unlikely as this speaks against an answer; "very unlikely" ends there in the published words for probabilities. */
const speaksAgainst = 0.1;

/** Because of what the works fitted in its whole scope; undefined when nothing speaks against it. `plain` is the handbook without observations. */
export function disputedByPeriods(plain: Knowledge, learnt: Knowledge, pin: Pin): string | undefined {
  const { scope, says } = pin;
  if (says.length === 0 || scope.built === null || scope.part === null) return undefined;
  const byHandbook = bestShare(plain, scope, says);
  const byAll = bestShare(learnt, scope, says);
  if (byAll === undefined || byAll.share >= speaksAgainst) return undefined;
  const name = kindName(learnt, scope.part, byAll.instead);
  const isHandbook = byHandbook !== undefined && byHandbook.share < speaksAgainst;
  return isHandbook ? phrases.handbookSays(name) : phrases.observationsSay(name);
}

/** The same in the handbook that the pin is for; undefined too where that one does not serve here. */
export function disputedHere({ served, loaded }: CommunityScene, pin: Pin): string | undefined {
  const isMeant = ({ handbook }: Knowledge) => handbook.cover.id === pin.scope.handbook;
  const [plain, learnt] = [served.find(isMeant), loaded.find(isMeant)];
  return plain && learnt && disputedByPeriods(plain, learnt, pin);
}

/** The same said to who is shown the pin, and to keepers. */
export interface Dispute {
  readonly toAsker: string;
  readonly toKeepers: string;
}

/** Because of the evidence of this case. */
export function disputedByCase(
  knowledge: Knowledge,
  pin: Pin,
  facts: CaseFacts,
  ranking: CaseSummary["ranking"],
): Dispute | undefined {
  const { says } = pin;
  const [first] = ranking;
  if (says.length === 0 || first === undefined || facts.reports.length === 0) return undefined;
  const share = ranking.reduce(
    (sum, { variant, probability }) => sum + (says.includes(variant) ? probability : 0),
    0,
  );
  if (share >= speaksAgainst || first.probability < 0.5) return undefined;
  const name = first.variant === notInHandbook ? phrases.somethingElse : withThe(first.name);
  const said = listed(says.map((id) => kindName(knowledge, facts.part ?? "", id)));
  return {
    toAsker: phrases.caseSays(said, name, sayProbability(first.probability)),
    toKeepers: phrases.anAskerSays(said, name),
  };
}

interface Share {
  readonly share: number;
  /** The likeliest kind of those it does not say. */
  readonly instead: string;
}

/** The largest share that the said kinds have anywhere in the scope. */
function bestShare(knowledge: Knowledge, scope: PinScope, says: readonly string[]): Share | undefined {
  const compiled = scope.part === null ? undefined : knowledge.compiled(scope.part);
  if (compiled === undefined) return undefined;
  const shares = carsOf(scope).map((car) => shareOn(compiled, car, says));
  return shares.reduce<Share | undefined>(
    (best, one) => (best === undefined || one.share > best.share ? one : best),
    undefined,
  );
}

function shareOn(compiled: CompiledPart, car: CarDescription, says: readonly string[]): Share {
  const { classes } = identify(compiled, { car, goal: "what-should-it-have", reports: [] });
  // Of a car to which the works fitted none, the handbook says nothing against a pin.
  if (classes.length === 0) return { share: 1, instead: notInHandbook };
  const said = classes.filter(({ class: id }) => says.includes(id));
  const instead = classes.find(({ class: id }) => !says.includes(id));
  return {
    share: said.reduce((sum, { probability }) => sum + probability, 0),
    instead: instead?.class ?? notInHandbook,
  };
}

/** Cars spread over the scope: every month, with every model, trim and market it names. */
function carsOf({ built, models, trims, markets }: PinScope): readonly CarDescription[] {
  const dated: readonly CarDescription[] =
    built === null ? [] : monthsOf(built).map((month) => ({ built: month }));
  const withModels = withEach(dated, "model", models);
  return withEach(withEach(withModels, "trim", trims), "market", markets);
}

function withEach(
  cars: readonly CarDescription[],
  aspect: "model" | "trim" | "market",
  ids: readonly string[],
): readonly CarDescription[] {
  return ids.length === 0 ? cars : cars.flatMap((car) => ids.map((id) => ({ ...car, [aspect]: id })));
}

/** A scope of many years is looked at in at most so many places. */
const mostPlaces = 36;

function monthsOf({ from, to }: { readonly from: number; readonly to: number }) {
  const count = Math.min(mostPlaces, Math.max(1, Math.ceil(to - from)));
  const width = (to - from) / count;
  return Array.from({ length: count }, (_, at) => ({ from: from + at * width, to: from + (at + 1) * width }));
}

function kindName(knowledge: Knowledge, part: string, id: string): string {
  const kind = findPart(knowledge, part);
  const variant = kind === undefined ? undefined : variantById(kind, id);
  return variant === undefined ? phrases.somethingElse : withThe(variant.name);
}
