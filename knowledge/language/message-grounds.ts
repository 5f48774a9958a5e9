// What speaks for and against a message telling anything of the part in hand, once its candidates are weighed. One candidate
// may be likely by its own words and yet stand in a message that is about another thing altogether: half the states that were
// asserted where nothing was told stood so.
import type { MessageView } from "./message-view.ts";
import type { Whole } from "./seen-candidate.ts";
import type { WeighedCandidate } from "./weighed-candidates.ts";

interface SeenMessage {
  readonly view: MessageView;
  readonly whole: Whole;
  /** The odds of the likeliest state of each feature, likeliest first, as a share of the largest. */
  readonly odds: readonly number[];
  readonly likeliest: WeighedCandidate | undefined;
  /** Sizes and dates that it tells. */
  readonly figures: number;
}

const largestOdds = 6;
const longest = 60;

function within(odds: number): number {
  return Math.max(-1, Math.min(1, odds / largestOdds));
}

function oddsOf(probability: number): number {
  return within(Math.log(probability / (1 - probability)));
}

/** "Klaus' panel", "Steve's mirrors". */
const ofSomebody = /(?:^|[^.!?]\s)[A-Z][a-z]+(?:['’]s|s['’])(?!\w)/;

const grounds = {
  "likeliest state": ({ odds: [first = -1] }) => first,
  "second state": ({ odds: [, second = -1] }) => second,
  "third state": ({ odds: [, , third = -1] }) => third,
  "message tells at all": ({ view }) => within(view.heard[0]?.tellingAtAll ?? 0),
  "most telling sentence": ({ view }) =>
    view.heard.length === 0 ? 0 : within(Math.max(...view.heard.map(({ telling }) => telling))),
  words: ({ view }) => Math.min(longest, view.tokens.length) / longest,
  "no case in hand": ({ view }) => view.context.part === undefined,
  "asked about it": ({ view, likeliest }) => view.context.askedFeature === likeliest?.feature,
  "asked about another": ({ view, likeliest }) =>
    view.context.askedFeature !== undefined && view.context.askedFeature !== likeliest?.feature,
  "asks something": ({ view }) => view.shown.includes("?"),
  "by its names": ({ likeliest }) => within(likeliest?.unheard ?? 0),
  "in plain words": ({ likeliest }) => likeliest?.isPlain === true,
  "heard alone": ({ likeliest }) => likeliest?.finder === "heard",
  "several sentences": ({ view }) => view.heard.length > 1,
  "something set aside": ({ view }) => view.stances.some(({ aside }) => aside !== undefined),
  denied: ({ likeliest }) => likeliest?.isDenied === true,
  doubted: ({ view, likeliest }) => (view.stances[likeliest?.clause ?? 0]?.certainty ?? 1) < 1,
  "foreign share": ({ whole }) => whole.share.foreign,
  "own share": ({ whole }) => whole.share.own,
  "figures told": ({ figures }) => figures > 0,
  "somebody's": ({ view }) => ofSomebody.test(view.shown),
} as const satisfies Readonly<Record<string, (seen: SeenMessage) => number | boolean>>;

export type MessageGroundName = keyof typeof grounds;

/** The names of all grounds, in the order of the table. */
export const messageGroundNames = Object.keys(grounds) as readonly MessageGroundName[];

export interface MessageGrounds {
  /** In the order of their names, each between -1 and 1. */
  readonly values: readonly number[];
  /** Words of its likeliest state were learnt: other weights hold then. */
  readonly isHeard: boolean;
}

/** The grounds of a message with its candidates weighed; `figures`: sizes and dates that it tells. */
export function messageGroundsOf(
  view: MessageView,
  weighed: readonly WeighedCandidate[],
  whole: Whole,
  figures: number,
): MessageGrounds {
  const inOrder = [...weighed].sort((one, other) => other.probability - one.probability);
  const best = new Map<string, number>();
  for (const { feature, probability } of inOrder) if (!best.has(feature)) best.set(feature, probability);
  const [likeliest] = inOrder;
  const seen = { view, whole, figures, likeliest, odds: [...best.values()].map(oddsOf) };
  return {
    values: messageGroundNames.map((name) => Number(grounds[name](seen))),
    isHeard: likeliest?.isHeard === true,
  };
}
