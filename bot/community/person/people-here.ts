/** Notes, once for each person and conversation, that they have spoken there. */
import type { Conversation } from "../../conversation/conversation.ts";
import type { IncomingMessage } from "../../message.ts";
import { keptRecord, type RecordChange } from "../record-change.ts";
import { personKind, personRecordId } from "./person-record.ts";

export interface PeopleHere {
  readonly conversation: Conversation;
  readonly changes: readonly RecordChange[];
}

/** The conversation with everybody this message is from in it, and the changes of those who were not there before. */
export function withPeopleHere(conversation: Conversation, message: IncomingMessage): PeopleHere {
  const known = conversation.people ?? [];
  const speaking = [message.from, ...(message.quoted === undefined ? [] : [message.quoted.from])];
  const fresh = [...new Set(speaking)].filter((person) => !known.includes(person));
  if (fresh.length === 0) return { conversation, changes: [] };
  const changes = fresh.map((person) => ({
    ...keptRecord(personKind, personRecordId(person), "spoke here", (before) => ({
      conversations: [...new Set([...(before?.conversations ?? []), message.conversation])],
    })),
    isAside: true,
  }));
  return { conversation: { ...conversation, people: [...known, ...fresh] }, changes };
}
