/** What waits to be told on one platform, read from the store, and whose turn it is. Asynchronous because the store is. */
import type { Notice } from "../../bot.ts";
import type { Store } from "../../ports.ts";
import { Person, personKind, personRecordId } from "../person/person-record.ts";
import { noticeOf, noticesKind, WaitingNotices } from "./notices.ts";

export interface WaitingOn {
  readonly toTell: readonly Notice[];
  /** Ids of those that nobody is to be told. */
  readonly toNobody: readonly string[];
}

/** Of all communities, the oldest of each first. */
export async function waitingOn(store: Store, platform: string): Promise<WaitingOn> {
  const toTell: Notice[] = [];
  const toNobody: string[] = [];
  for await (const { id, state } of store.currents(noticesKind.kind, "")) {
    if (state === null || !id.endsWith(`/${platform}`)) continue;
    const community = id.slice(0, -platform.length - 1);
    for (const one of WaitingNotices.parse(state).waiting) {
      if (await hasSpokenThere(store, community, one.to)) toTell.push(noticeOf(community, one));
      else toNobody.push(one.id);
    }
  }
  return { toTell, toNobody };
}

/** Records that were taken in from elsewhere may name any person and place: nobody is told anything by a community they have not spoken in. */
async function hasSpokenThere(store: Store, community: string, to: Notice["to"]): Promise<boolean> {
  if (to.audience === "keepers") return true;
  const id = `${community}/${personRecordId(to.person)}`;
  const index = Person.safeParse(await store.current(personKind.kind, id));
  return index.success && index.data.conversations.includes(to.conversation);
}

/** A function that gives at most `limit` of those that wait; where more do, those it gave before come last, so that none holds up the others. */
export function inTurn(): (waiting: readonly Notice[], limit: number) => readonly Notice[] {
  let given: ReadonlyMap<string, number> = new Map();
  return (waiting, limit) => {
    if (waiting.length <= limit) return waiting;
    const times = new Map(waiting.map(({ id }) => [id, given.get(id) ?? 0]));
    const timesOf = ({ id }: Notice) => times.get(id) ?? 0;
    const next = waiting.toSorted((one, other) => timesOf(one) - timesOf(other)).slice(0, limit);
    for (const one of next) times.set(one.id, timesOf(one) + 1);
    given = times;
    return next;
  };
}
