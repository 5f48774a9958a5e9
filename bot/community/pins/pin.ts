/** A pinned answer: a keeper's own words, what they hold for, and what they rest on. */
import { z } from "zod";
import { goals, type Interval, type TextIndex, textIndex } from "../../../knowledge/index.ts";
import { oldestFirst } from "../oldest-first.ts";
import type { RecordKind } from "../record-kind.ts";

const Span: z.ZodType<Interval> = z.strictObject({ from: z.number(), to: z.number() }).readonly();

/** What a pinned answer holds for; whatever is null or empty is not asked about. */
export const PinScope = z
  .strictObject({
    handbook: z.string(),
    part: z.string().nullable(),
    goal: z.enum(goals).nullable(),
    built: Span.nullable(),
    models: z.array(z.string()).readonly(),
    trims: z.array(z.string()).readonly(),
    markets: z.array(z.string()).readonly(),
    /** The kinds it speaks about: it is shown when one of them is well in the running. */
    variants: z.array(z.string()).readonly(),
    /** A plain question that it answers, in the words somebody would ask it. */
    question: z.string().nullable(),
  })
  .readonly();
export type PinScope = z.output<typeof PinScope>;

export const Pin = z
  .strictObject({
    text: z.string(),
    author: z.string(),
    authorName: z.string(),
    /** Milliseconds since 1970, universal time: of these words, not of the first ones. */
    at: z.number(),
    scope: PinScope,
    /** Kinds that the answer says such a part or car has; what speaks against them speaks against the answer. Empty: it says none. */
    says: z.array(z.string()).readonly(),
    sources: z.array(z.string()).readonly(),
    /** When its author wants to look at it again. */
    review: Span.nullable(),
    stands: z.enum(["standing", "withdrawn"]),
    /** What spoke against it when the keepers were last told. */
    flagged: z.string().nullable(),
  })
  .readonly();
export type Pin = z.output<typeof Pin>;

/** The pins of a community with an index over their words, made anew only after a change. */
export interface PinsView {
  readonly byId: Map<string, Pin>;
  index: TextIndex | undefined;
  questions: TextIndex | undefined;
}

export const pinKind: RecordKind<Pin, PinsView> = {
  kind: "pin",
  shape: Pin,
  emptyView: () => ({ byId: new Map(), index: undefined, questions: undefined }),
  take(view, id, _before, after) {
    if (after === undefined) view.byId.delete(id);
    else view.byId.set(id, after);
    view.index = undefined;
    view.questions = undefined;
  },
};

/** Whether the time by which its author wanted to look at it again is over. */
export function isReviewDue({ today }: { readonly today: Interval }, review: Pin["review"]): boolean {
  return review !== null && review.to <= today.from;
}

/** The pins that stand, by id; newest last. */
export function standingPins(view: PinsView): readonly (readonly [string, Pin])[] {
  return oldestFirst([...view.byId].filter(([, pin]) => pin.stands === "standing"));
}

/** Over text, question and sources of the standing pins. */
export function pinIndex(view: PinsView): TextIndex {
  view.index ??= textIndex(
    new Map(
      standingPins(view).map(([id, pin]) => [
        id,
        [pin.text, pin.scope.question ?? "", ...pin.sources].join(" "),
      ]),
    ),
  );
  return view.index;
}

/** Over the plain questions that standing pins answer. */
export function questionIndex(view: PinsView): TextIndex {
  view.questions ??= textIndex(
    new Map(
      standingPins(view).flatMap(([id, { scope }]) =>
        scope.question === null ? [] : ([[id, scope.question]] as const),
      ),
    ),
  );
  return view.questions;
}
