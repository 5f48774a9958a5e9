/** Something said at the desk: in the keeper's name, in a conversation of this session's own, so that the bot asks who may as everywhere. */
import { randomUUID } from "node:crypto";
import type { IncomingMessage, Reply } from "../../bot/index.ts";
import { converse } from "./conversing.ts";
import { saidIn } from "./said.ts";
import type { OpenSession } from "./sessions.ts";
import type { Site } from "./site.ts";
import { type Turn, turnsOf } from "./transcript.ts";

export function deskConversation({ id }: OpenSession): string {
  return `web:desk-${id.slice(0, 22)}`;
}

/** What was said last at the desk in this session, with its reply. */
export async function lastAtDesk(site: Site, session: OpenSession): Promise<Turn | undefined> {
  return (await turnsAtDesk(site, session)).at(-1);
}

function turnsAtDesk({ store }: Site, session: OpenSession): Promise<readonly Turn[]> {
  return turnsOf(store, deskConversation(session));
}

/** Says what a form of the desk says; nothing when it says nothing. */
export async function sayAtDesk(
  site: Site,
  session: OpenSession,
  fields: Readonly<Record<string, string>>,
): Promise<void> {
  const said = saidIn(wordsOf(fields), await turnsAtDesk(site, session));
  if (said === undefined) return;
  const { guest } = session;
  const speaker = { conversation: deskConversation(session), ...guest };
  await converse(site, speaker, said);
}

/** A form may give the words in two pieces: what to do, and the reason or answer that somebody typed. */
function wordsOf(fields: Readonly<Record<string, string>>): Readonly<Record<string, string>> {
  const { before = "", reason = "" } = fields;
  if (before === "") return fields;
  return { ...fields, words: `${before} ${reason}`.trim().slice(0, 4000) };
}

/** What the answer to words would be for this keeper; nothing is kept. */
export async function lookAtDesk(site: Site, session: OpenSession, text: string): Promise<Reply> {
  return site.pages.look(asKeeper(session, text));
}

/** Words as this keeper would say them, in a conversation nobody has spoken in. */
export function asKeeper({ guest }: OpenSession, text = ""): IncomingMessage {
  const { person, ...others } = guest;
  return { conversation: `web:look-${randomUUID()}`, from: person, ...others, isPrivate: true, text };
}
