/** Everything a community keeps that is somebody's own, as it is found for "mine" and for the car sheet. */
import { type Conversation, readConversation } from "../../conversation/conversation.ts";
import type { FoundRecord, RecordQuery } from "../affair.ts";
import { Person, personKind, personRecordId } from "./person-record.ts";

export interface OwnConversation {
  readonly id: string;
  readonly conversation: Conversation;
}

/** First where they have spoken, then those conversations: two looks, the second from what the first found. */
export function ownQueries(
  person: string,
  found: ReadonlyMap<string, readonly FoundRecord[]>,
): readonly RecordQuery[] {
  const index = found.get(personKind.kind);
  if (index === undefined) return [{ kind: personKind.kind, id: personRecordId(person) }];
  return conversationsOf(index, person).map((id) => ({ kind: "conversation", id, isOfAll: true }));
}

function conversationsOf(index: readonly FoundRecord[], person: string): readonly string[] {
  const record = index.find(({ id }) => id === personRecordId(person));
  return record === undefined || record.state === null || record.state === undefined
    ? []
    : Person.parse(record.state).conversations;
}

/** The conversations in which they have spoken, as far as they are readable. */
export function ownConversations(
  found: ReadonlyMap<string, readonly FoundRecord[]>,
): readonly OwnConversation[] {
  return (found.get("conversation") ?? []).flatMap(({ id, state }) => {
    const conversation = readConversation(state);
    return conversation === undefined ? [] : [{ id, conversation }];
  });
}
