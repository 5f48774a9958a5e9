/** A shared sheet for the page behind its link: put together anew each time, so that it shows the car as it stands. */
import type { Interval } from "../../../knowledge/index.ts";
import { readConversation } from "../../conversation/conversation.ts";
import type { Knowledge } from "../../conversation/knowledge.ts";
import type { Store } from "../../ports.ts";
import type { CommunityMemory } from "../community-memory.ts";
import { learntKnowledge } from "../observations/learnt-knowledge.ts";
import type { OwnConversation } from "../person/own-records.ts";
import { type CarSheet, carSheet, ownCars } from "./car-sheet.ts";
import { ownPhotographs } from "./car-sheet-affair.ts";
import { SharedSheet, sharedSheetKind } from "./shared-sheet.ts";

/** Undefined: no such link, or it was taken back. */
export async function readSharedSheet(
  store: Store,
  served: readonly Knowledge[],
  memory: CommunityMemory,
  community: string,
  id: string,
  today: Interval,
): Promise<CarSheet | undefined> {
  if (!/^[0-9a-f]{32}$/u.test(id)) return undefined;
  const shared = SharedSheet.safeParse(await store.current(sharedSheetKind.kind, `${community}/${id}`));
  if (!shared.success || shared.data.stands !== "shared") return undefined;
  const { person, cases } = shared.data;
  const conversations = await conversationsOf(store, [
    ...new Set(cases.map(({ conversation }) => conversation)),
  ]);
  const car = ownCars(person, conversations).find((one) =>
    one.cases.some(({ conversation, kept }) =>
      cases.some((own) => own.conversation === conversation && own.case === kept.id),
    ),
  );
  const plain = served.find(({ handbook }) => handbook.cover.id === car?.handbook);
  if (car === undefined || plain === undefined) return undefined;
  const knowledge = learntKnowledge(plain, memory.observations);
  return carSheet(knowledge, car, ownPhotographs(memory.observations.byId, person, car), today);
}

async function conversationsOf(store: Store, ids: readonly string[]): Promise<readonly OwnConversation[]> {
  const found = await Promise.all(
    ids.map(async (id) => ({ id, conversation: readConversation(await store.current("conversation", id)) })),
  );
  return found.flatMap(({ id, conversation }) => (conversation === undefined ? [] : [{ id, conversation }]));
}
