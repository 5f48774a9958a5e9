/**
 * Puts a reply where its case is shown: into the one message that is edited, or into a new one whose forerunner loses its buttons.
 * What is not about the case (a list, the sources) stands by itself and leaves the case's message alone.
 */
import type { Reply } from "../../bot/index.ts";
import { mayCarry, saysStanding, withStandingOf } from "./carried-standing.ts";
import { type Posted, takeButtonsOff } from "./channel-messages.ts";
import { caseKey } from "./custom-id.ts";
import type { Desk } from "./desk.ts";
import { type Body, bodyOf } from "./payload.ts";
import { conversationIn, type Place } from "./places.ts";
import { renderReply } from "./render.ts";

/** The way a reply goes out: over an interaction, into a channel, into a thread. */
export interface Outlet {
  /** May the message that shows the case be edited from here, rather than a new one written? */
  mayEdit(place: Place, key: string): boolean;
  /** Undefined when the message is gone. */
  edit(place: Place, body: Body): Promise<Posted | undefined>;
  /** Undefined when the message that shows the case shall stay as it is. */
  post(body: Body): Promise<Posted | undefined>;
  /** Beside the case's message. */
  aside(body: Body): Promise<Posted | undefined>;
  /** To the one who spoke, alone; undefined when that cannot be done. */
  whisper(body: Body): Promise<Posted | undefined>;
}

export interface Showing {
  readonly conversation: string;
  /** Where the message stands, when that is another conversation than what it says. */
  readonly standsIn?: string;
  readonly community: string;
  readonly scope: "open" | "private";
  /** The person's id on Discord. */
  readonly user: string;
  readonly from: string;
  /** Whose case it is when it is shown for the first time. */
  readonly asker: string;
  readonly reply: Reply;
  readonly replyId: string;
  /** The key under which the pressed message is kept, when that is no case's. */
  readonly keptAs?: string | undefined;
  /** Words of the adapter that stand first. */
  readonly before?: string | undefined;
}

export async function show(desk: Desk, showing: Showing, outlet: Outlet): Promise<void> {
  const { reply, keptAs } = showing;
  const isAside = !isAboutCase(reply) && !isFlow(reply);
  // An answer by the way to a button by the way takes its place; one to a button of the case stands beside it.
  const key = isAside && keptAs !== undefined ? keptAs : keyOf(showing);
  if (reply.isPrivate === true && showing.scope === "open") {
    return keepAside(desk, showing, key, await outlet.whisper(await bodyFor(desk, showing, key)));
  }
  if (isAside && keptAs === undefined) {
    return keepAside(desk, showing, key, await outlet.aside(await bodyFor(desk, showing, key)));
  }
  await showInPlace(desk, showing, key, outlet);
}

async function showInPlace(desk: Desk, showing: Showing, key: string, outlet: Outlet): Promise<void> {
  const { conversation, standsIn = conversation, reply, replyId } = showing;
  const home = key === showing.keptAs ? standsIn : conversation;
  const before = await desk.places.find(home, key);
  const earlier = await standingBefore(desk, conversation, before);
  const standing = standingIn(reply, replyId, earlier, before);
  const place = (posted: Posted): Place => ({
    ...placeOf(showing, posted),
    asker: before?.asker ?? showing.asker,
    ...(standing === undefined ? {} : { standing }),
    ...(home === conversation ? {} : { speaksIn: conversation }),
  });
  const shown = earlier === undefined ? reply : withStandingOf(earlier, reply);
  const body = await bodyFor(desk, { ...showing, reply: shown }, key);
  if (before !== undefined && outlet.mayEdit(before, key)) {
    // Kept first: should the edit be lost, the old buttons are stale and show the way on.
    await desk.places.keep(home, key, place(before));
    const edited = await outlet.edit(before, body);
    if (edited?.message === before.message) return;
    const posted = edited ?? (await outlet.post(body));
    return posted === undefined ? undefined : desk.places.keep(home, key, place(posted));
  }
  const posted = await outlet.post(body);
  if (posted === undefined) return;
  await desk.places.keep(home, key, place(posted));
  const isElsewhere = before !== undefined && before.message !== posted.message;
  if (isElsewhere && showing.scope === "open") await takeButtonsOff(desk.client, before);
}

/** The id of the reply that says where the case stands, this one or an earlier one. */
function standingIn(
  reply: Reply,
  replyId: string,
  earlier: Reply | undefined,
  before: Place | undefined,
): string | undefined {
  if (saysStanding(reply)) return replyId;
  return earlier !== undefined && mayCarry(earlier, reply) ? before?.standing : undefined;
}

/** The reply that last said where the case of a place stands. */
async function standingBefore(
  desk: Desk,
  conversation: string,
  place: Place | undefined,
): Promise<Reply | undefined> {
  if (place?.standing === undefined) return undefined;
  return desk.recall(place.speaksIn ?? conversation, { ...place, reply: place.standing });
}

/** The reply a place shows, as it shows it; of a notice only what its buttons say is known. */
export async function replyAt(desk: Desk, conversation: string, place: Place): Promise<Reply> {
  const { says } = place;
  if (says !== undefined) {
    const choices = says.map(({ label, say }) => ({ id: say, label, say }));
    return { blocks: [{ kind: "choices", choices }] } as unknown as Reply;
  }
  const reply = await desk.recall(place.speaksIn ?? conversation, place);
  const earlier = await standingBefore(desk, conversation, place);
  return earlier === undefined ? reply : withStandingOf(earlier, reply);
}

export async function bodyFor(
  desk: Desk,
  { reply, replyId, scope, before }: Pick<Showing, "reply" | "replyId" | "scope" | "before">,
  key: string,
  page = 0,
): Promise<Body> {
  const holder = { scope, caseKey: key, reply: replyId };
  const lead = before === undefined ? {} : { before };
  return bodyOf(renderReply(reply, { holder, page, address: desk.address, ...lead }), desk);
}

async function keepAside(
  desk: Desk,
  showing: Showing,
  key: string,
  posted: Posted | undefined,
): Promise<void> {
  if (posted === undefined) return;
  const { conversation, scope, user } = showing;
  const standsIn = conversationIn(posted.channel, scope, user);
  const elsewhere = standsIn === conversation ? {} : { speaksIn: conversation };
  const { case: _, ...place } = placeOf(showing, posted);
  await desk.places.keep(standsIn, key, { ...place, ...elsewhere });
}

function placeOf({ replyId, from, asker, community, reply, before }: Showing, posted: Posted): Place {
  const lead = before === undefined ? {} : { before };
  return { ...posted, reply: replyId, from, asker, community, case: reply.summary.case, ...lead };
}

/** Whether a reply says where a case stands or asks on about it; else it is an answer by the way. */
export function isAboutCase({ blocks, summary }: Reply): boolean {
  return blocks.some(
    (block) =>
      (block.kind === "question" && block.feature === summary.question?.feature) ||
      block.kind === "standing" ||
      block.kind === "evidence" ||
      (block.kind === "text" && block.tone === "answer" && summary.done),
  );
}

/** Under which key a reply is kept: its case, a flow of questions beside the case (one a person at a time), or none of both. */
function keyOf({ reply, replyId, user }: Showing): string {
  if (isAboutCase(reply)) return caseKey(reply.summary.case);
  return isFlow(reply) ? `flow-${user}` : `aside-${replyId}`;
}

/** Recording an observation asks questions of its own. */
function isFlow({ blocks }: Reply): boolean {
  return blocks.some(({ kind }) => kind === "question");
}
