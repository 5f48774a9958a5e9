/**
 * Answers that their askers made a page of: the card as it stood that day, under an address nobody can guess. Whoever shared it may
 * withdraw it; nothing else about it ever changes, which is what makes it citable.
 */
import { z } from "zod";
import { type AnswerCard, type Clock, type Store, sharedAnswerKind } from "../../bot/index.ts";
import { addressIdForm, newAddressId } from "./secrets.ts";

/** One that was shared in a chat: its community, and a secret of its own. */
const chatIdForm = /^[\w.:-]{1,120}\/[0-9a-f]{32}$/u;

const Share = z.strictObject({
  by: z.string(),
  /** Milliseconds since 1970. */
  at: z.number(),
  isWithdrawn: z.boolean(),
  /** Our own value, kept as it was made. */
  card: z
    .custom<AnswerCard>((value) => typeof value === "object" && value !== null && "answer" in value)
    .nullable(),
});
export type Share = z.output<typeof Share>;

/** The id of a new page of this card. */
export async function shareAnswer(store: Store, clock: Clock, by: string, card: AnswerCard): Promise<string> {
  const id = newAddressId();
  const at = clock.milliseconds();
  const state: Share = { by, at, isWithdrawn: false, card };
  await store.advance({ kind: sharedAnswerKind, id, by, at, why: "shared" }, () => ({
    state,
    outcome: null,
  }));
  return id;
}

/** The share of an id; undefined when there is none or it was withdrawn. */
export async function sharedAnswer(
  store: Store,
  id: string,
): Promise<(Share & { readonly card: AnswerCard }) | undefined> {
  if (!addressIdForm.test(id) && !chatIdForm.test(id)) return undefined;
  const parsed = Share.safeParse(await store.current(sharedAnswerKind, id));
  if (!parsed.success || parsed.data.isWithdrawn) return undefined;
  const { card, ...share } = parsed.data;
  return card === null ? undefined : { ...share, card };
}

/** Withdraws a page; false when it is none of these persons', as whom one and the same is known. */
export async function withdrawShare(
  store: Store,
  clock: Clock,
  id: string,
  persons: readonly string[],
): Promise<boolean> {
  const share = await sharedAnswer(store, id);
  if (share === undefined || !persons.includes(share.by)) return false;
  const change = { kind: sharedAnswerKind, id, by: share.by, at: clock.milliseconds(), why: "withdrawn" };
  return await store.advance(change, (state) => {
    const parsed = Share.safeParse(state);
    if (!parsed.success) return { state, outcome: false };
    return { state: { ...parsed.data, isWithdrawn: true, card: null }, outcome: true };
  });
}
