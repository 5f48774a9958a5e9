/** What is to be told where nobody has just spoken: asked for every two seconds, told once, and settled when it cannot be told any more. */
import { createHash } from "node:crypto";
import type { SendableChannels } from "discord.js";
import type { Notice, NoticeOutcome } from "../../bot/index.ts";
import { type Posted, sendableChannel, sendOnce } from "./channel-messages.ts";
import { sendDirectly } from "./channel-outlets.ts";
import { controlsOf } from "./controls.ts";
import type { Desk } from "./desk.ts";
import { type Body, bodyOf, plainBody } from "./payload.ts";
import { conversationIn, keepersNotice } from "./places.ts";
import { renderReply } from "./render.ts";
import { bold } from "./render-blocks.ts";
import { troubleOf } from "./trouble.ts";

const EVERY_MILLISECONDS = 2000;
const AT_ONCE = 10;

/** Ends with the function it returns, after what is being told. */
export function tellNotices(desk: Desk, everyMilliseconds = EVERY_MILLISECONDS): () => Promise<void> {
  let isOver = false;
  let timer: NodeJS.Timeout | undefined;
  let working = Promise.resolve();
  const later = () => {
    if (isOver) return;
    timer = setTimeout(() => {
      working = round().finally(later);
    }, everyMilliseconds);
  };
  const round = async () => {
    try {
      for (const notice of await desk.bot.notices(AT_ONCE)) await tellOne(desk, notice);
    } catch (failure) {
      desk.log.error({ err: failure }, "notices not told, tried again");
    }
  };
  later();
  return async () => {
    isOver = true;
    clearTimeout(timer);
    await working;
  };
}

/** A notice that Discord cannot take now stays, is tried again, and holds up no other. */
async function tellOne(desk: Desk, notice: Notice): Promise<void> {
  try {
    await desk.bot.noticeSettled(notice.id, await told(desk, notice));
  } catch (failure) {
    const trouble = troubleOf(failure);
    if (trouble === "other") desk.log.error({ err: failure, notice: notice.id }, "notice not told");
    else desk.log.warn({ trouble, notice: notice.id }, "notice not told");
    if (trouble === "lacking permission" || trouble === "channel gone")
      await desk.bot.noticeSettled(notice.id, "gone");
  }
}

function told(desk: Desk, notice: Notice): Promise<NoticeOutcome> {
  return notice.to.audience === "keepers" ? toKeepers(desk, notice) : toPerson(desk, notice, notice.to);
}

async function toKeepers(desk: Desk, notice: Notice): Promise<NoticeOutcome> {
  const { keepersChannel } = await desk.settings.of(notice.community);
  const channel = keepersChannel === null ? undefined : await sendableChannel(desk.client, keepersChannel);
  if (channel === undefined) return "gone";
  const send: Send = (body, nonce) => sendOnce(channel, body, nonce);
  const posted = await sendAll(await noticeBodies(desk, notice), notice, send);
  if (posted === undefined) return "gone";
  await keep(desk, notice, posted, conversationIn(posted.channel, "open", ""), keepersNotice);
  return "told";
}

/** In the conversation the person spoke in; what was private goes to them directly. */
async function toPerson(
  desk: Desk,
  notice: Notice,
  { conversation, person }: Extract<Notice["to"], { audience: "person" }>,
): Promise<NoticeOutcome> {
  const [, channelId = "", isPrivate] = conversation.split(":");
  const user = person.replace(/^discord:/u, "");
  const channel = isPrivate === undefined ? await sendableChannel(desk.client, channelId) : undefined;
  const bodies = await noticeBodies(desk, notice, channel && (await nameIn(channel, user)));
  const send: Send = (body, nonce) =>
    channel === undefined ? sendDirectly(desk, user, body, nonce) : sendOnce(channel, body, nonce);
  const posted = await sendAll(bodies, notice, send);
  if (posted === undefined) return "gone";
  await keep(desk, notice, posted, conversationIn(posted.channel, "open", user), person, conversation);
  return "told";
}

/** Where all can read, it begins with the name of whom it is for; nobody is pinged. */
async function nameIn(channel: SendableChannels, user: string): Promise<string | undefined> {
  if (channel.isDMBased()) return undefined;
  const member = await channel.guild.members.fetch(user).catch(() => undefined);
  return member?.displayName;
}

/** One a page, the buttons under the last: what is not kept cannot be turned. */
async function noticeBodies(desk: Desk, notice: Notice, name?: string): Promise<readonly Body[]> {
  const holder = { scope: "open", caseKey: keyOf(notice), reply: "0" } as const;
  const before = name === undefined ? {} : { before: bold(name) };
  const rendered = (page: number) =>
    renderReply(notice.reply, { holder, page, address: desk.address, ...before });
  const { pages } = rendered(0);
  return Promise.all(
    Array.from({ length: pages }, (_, page) => {
      const one = rendered(page);
      if (page < pages - 1) return plainBody(one.content);
      // The last row turns the pages.
      return bodyOf({ ...one, rows: pages === 1 ? one.rows : one.rows.slice(0, -1) }, desk);
    }),
  );
}

type Send = (body: Body, nonce: string) => Promise<Posted | undefined>;

/** The message with the buttons; undefined when nothing can be said there. */
async function sendAll(bodies: readonly Body[], notice: Notice, send: Send): Promise<Posted | undefined> {
  let posted: Posted | undefined;
  for (const [page, body] of bodies.entries()) {
    posted = await send(body, `${nonceOf(notice)}${page === 0 ? "" : page}`);
    if (posted === undefined) return undefined;
  }
  return posted;
}

/** Its reply cannot be asked for again, so what its buttons say is kept. */
async function keep(
  desk: Desk,
  notice: Notice,
  posted: Posted,
  conversation: string,
  person: string,
  speaksIn = conversation,
): Promise<void> {
  const says = controlsOf(notice.reply).choices.flatMap((control) =>
    control.does === "answer" ? [] : [{ label: control.label, say: control.say }],
  );
  await desk.places.keep(conversation, keyOf(notice), {
    ...posted,
    reply: "0",
    from: person,
    asker: person,
    community: notice.community,
    says,
    ...(speaksIn === conversation ? {} : { speaksIn }),
  });
}

function keyOf({ id }: Notice): string {
  return `notice-${digest(id)}`;
}

function nonceOf({ id }: Notice): string {
  return `n${digest(id).slice(0, 22)}`;
}

function digest(id: string): string {
  return createHash("sha256").update(id).digest("hex").slice(0, 24);
}
