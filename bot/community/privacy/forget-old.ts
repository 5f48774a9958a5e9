/** Forgets cases that nobody has touched for longer than their community keeps them. Run now and then, by one process or several. */
import { dayOfMilliseconds } from "../../../knowledge/index.ts";
import { type Conversation, forgotten, readConversation } from "../../conversation/conversation.ts";
import type { Store } from "../../ports.ts";
import type { CommunityMemories } from "../community-memory.ts";
import { transcriptKind } from "../pages/page-records.ts";
import { nobody, Person, personKind } from "../person/person-record.ts";
import { whyForgotten } from "../phrases/privacy.ts";
import { settingsIn } from "../settings-record.ts";

/** In every community that has said how long; `at`: milliseconds since 1970, universal time. How many conversations were forgotten. */
export async function forgetOld(store: Store, memories: CommunityMemories, at: number): Promise<number> {
  const conversations = new Map<string, Set<string>>();
  for await (const { id, state } of store.currents(personKind.kind, "")) {
    const parsed = Person.safeParse(state);
    if (!parsed.success) continue;
    const community = id.slice(0, id.indexOf("/"));
    const known = conversations.get(community) ?? new Set();
    conversations.set(community, known);
    for (const one of parsed.data.conversations) known.add(one);
  }
  let forgotten = 0;
  for (const [community, ids] of conversations) {
    const months = settingsIn((await memories.upToDate(community)).settings).retentionMonths;
    if (months === null) continue;
    const oldest = dayOfMilliseconds(at).from - months;
    for (const id of ids) forgotten += (await forgetIfOlder(store, id, oldest, at)) ? 1 : 0;
  }
  return forgotten;
}

async function forgetIfOlder(store: Store, id: string, oldest: number, at: number): Promise<boolean> {
  const now = await store.current("conversation", id);
  if (now === undefined || isForgotten(now)) return false;
  const [last] = await store.history("conversation", id, (await store.version("conversation", id)) - 1);
  if (last === undefined || dayOfMilliseconds(last.at).from >= oldest) return false;
  const change = { kind: "conversation", id, by: nobody, at, why: whyForgotten };
  const also = { by: () => nobody, why: () => whyForgotten };
  await store.erase(change, leftOf, also);
  await store.erase({ ...change, kind: transcriptKind }, () => undefined, also);
  return true;
}

/** Nothing that was said, but which numbers its cases had. */
function leftOf(state: unknown): Conversation | undefined {
  const conversation = readConversation(state);
  return conversation && forgotten(conversation);
}

function isForgotten(state: unknown): boolean {
  return JSON.stringify(leftOf(state)) === JSON.stringify(state);
}
