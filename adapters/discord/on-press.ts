/**
 * A pressed button or a chosen option. It is acknowledged before anything is looked up; what it means is read from the reply it was
 * offered with, and only while that reply is the one that stands.
 */
import { setTimeout as pause } from "node:timers/promises";
import type { ButtonInteraction, StringSelectMenuInteraction } from "discord.js";
import type { IncomingMessage, Reply } from "../../bot/index.ts";
import { acknowledged, deferUpdate } from "./acknowledge.ts";
import { type Control, controlsOf, numbered } from "./controls.ts";
import { customId, type Pressed, readCustomId } from "./custom-id.ts";
import type { Desk } from "./desk.ts";
import { completionForm, questionForm } from "./form.ts";
import { followPrivately, pressedOutlet } from "./interaction-outlets.ts";
import { escaped } from "./markdown.ts";
import { once } from "./outlast.ts";
import { type Body, plainBody } from "./payload.ts";
import { forms, trouble as words } from "./phrases.ts";
import { conversationIn, keepersNotice, type Place } from "./places.ts";
import { bodyFor, type Outlet, replyAt, show } from "./show.ts";
import { type Author, authorOfInteraction } from "./where.ts";

export type Press = ButtonInteraction | StringSelectMenuInteraction;

export async function onPress(desk: Desk, interaction: Press): Promise<void> {
  const pressed = readCustomId(interaction.customId);
  if (pressed !== undefined && /^[fc]/u.test(pressed.key)) return openForm(desk, interaction, pressed);
  const isAnswerable = await deferUpdate(interaction, desk.log);
  if (pressed === undefined) {
    if (isAnswerable) await followPrivately(interaction, plainBody(escaped(words.noCase)));
    return;
  }
  const conversation = conversationOf(interaction, pressed);
  // Looked at once: a turn that is tried again has itself moved the case on.
  const look = once(() => lookedUp(desk, conversation, pressed));
  await desk.turns.run(conversation, async () =>
    take(desk, interaction, pressed, conversation, await look()),
  );
}

interface LookedUp {
  readonly place: Place | undefined;
  /** Undefined when the case shows another reply now. */
  readonly reply: Reply | undefined;
}

async function take(
  desk: Desk,
  interaction: Press,
  pressed: Pressed,
  conversation: string,
  { place, reply }: LookedUp,
): Promise<void> {
  if (place === undefined || reply === undefined)
    return sayStale(desk, interaction, pressed, conversation, place, words.stale);
  if (pressed.key.startsWith("p")) return turnPage(desk, interaction, pressed, place, reply);
  const control = controlFor(interaction, pressed, reply);
  if (control === undefined) return sayStale(desk, interaction, pressed, conversation, place, words.stale);
  await takeTurn(desk, interaction, { pressed, conversation, place }, saidBy(control));
}

export interface Standing {
  readonly pressed: Pressed;
  /** Where the message stands; what is said may belong to another conversation. */
  readonly conversation: string;
  readonly place: Place;
}

export type Said = Pick<IncomingMessage, "text" | "answer">;

/** Says it in the conversation and shows the reply where it was pressed. */
export async function takeTurn(
  desk: Desk,
  interaction: Parameters<typeof pressedOutlet>[1],
  { pressed, conversation, place }: Standing,
  said: Said,
): Promise<void> {
  const author = await authorOfInteraction(desk, interaction);
  const speaksIn = place.speaksIn ?? conversation;
  const reply = await desk.receive(messageOf(author, interaction, speaksIn, place, pressed, said));
  await show(
    desk,
    {
      conversation: speaksIn,
      standsIn: conversation,
      community: place.community,
      scope: pressed.scope,
      user: interaction.user.id,
      from: author.from,
      asker: author.from,
      reply,
      replyId: interaction.id,
      before: place.says === undefined ? undefined : noticeText(interaction.message?.content ?? ""),
      keptAs: /^(?:aside|flow|notice)-/u.test(pressed.caseKey) ? pressed.caseKey : undefined,
    },
    outletFor(desk, interaction, pressed, place, author),
  );
}

/** What only keepers may do, pressed by somebody else, is answered to them alone and leaves the keepers their buttons. */
function outletFor(
  desk: Desk,
  interaction: Parameters<typeof pressedOutlet>[1],
  { scope, caseKey }: Pressed,
  place: Place,
  { standing }: Author,
): Outlet {
  const outlet = pressedOutlet(desk, interaction, scope, caseKey);
  const isForKeepers = place.says !== undefined && place.from === keepersNotice;
  if (!isForKeepers || standing === "keeper" || standing === "owner") return outlet;
  const alone = async (body: Body) => {
    await outlet.whisper(body);
    return undefined;
  };
  return { ...outlet, mayEdit: () => false, post: alone, aside: alone };
}

/** What a notice told stays above what came of it, where there is room. */
function noticeText(content: string): string | undefined {
  return content === "" || content.length > LONGEST_NOTICE ? undefined : content;
}

function messageOf(
  { from, name, standing }: Author,
  interaction: Parameters<typeof pressedOutlet>[1],
  conversation: string,
  place: Place,
  pressed: Pressed,
  said: Said,
): IncomingMessage {
  return {
    conversation,
    id: interaction.id,
    from,
    name: name.slice(0, 80),
    standing,
    community: place.community,
    isPrivate: pressed.scope === "private" || interaction.guildId === null,
    ...(place.case === undefined ? {} : { case: place.case }),
    ...said,
  };
}

function controlFor(interaction: Press, pressed: Pressed, reply: Pick<Reply, "blocks">): Control | undefined {
  const number = interaction.isStringSelectMenu() ? interaction.values[0] : pressed.key;
  return number !== undefined && /^\d+$/u.test(number)
    ? numbered(controlsOf(reply))[Number(number)]
    : undefined;
}

/** What is to be completed and was chosen from a list is said as it stands: the bot asks for the rest. */
function saidBy(control: Control): Said {
  return control.does === "answer" ? { answer: control.answer } : { text: control.say };
}

/** Explains, and offers the question that is open now to the one who pressed. */
export async function sayStale(
  desk: Desk,
  interaction: Parameters<typeof followPrivately>[0],
  { scope, caseKey }: Pressed,
  conversation: string,
  place: Place | undefined,
  why: string,
): Promise<void> {
  if (place === undefined) {
    await followPrivately(interaction, plainBody(escaped(words.noCase)));
    return;
  }
  const shown = { reply: await replyAt(desk, conversation, place), replyId: place.reply, scope };
  const before = why
    .split("\n")
    .map((line) => `-# ${escaped(line)}`)
    .join("\n");
  const together = await bodyFor(desk, { ...shown, before }, caseKey);
  if (!isPaged(together)) {
    await followPrivately(interaction, together);
    return;
  }
  // Further pages are made of the reply alone.
  await followPrivately(interaction, plainBody(before));
  await followPrivately(interaction, await bodyFor(desk, { ...shown, before: place.before }, caseKey));
}

function isPaged(body: Body): boolean {
  return body().components.some(({ components }) =>
    components.some((one) => "custom_id" in one && readCustomId(one.custom_id)?.key.startsWith("p") === true),
  );
}

async function turnPage(
  desk: Desk,
  interaction: Press,
  pressed: Pressed,
  place: Place,
  reply: Reply,
): Promise<void> {
  const { scope, caseKey } = pressed;
  const page = Number(pressed.key.slice(1));
  const { before, reply: replyId } = place;
  const body = await bodyFor(desk, { reply, replyId, scope, before }, caseKey, page);
  const outlet = pressedOutlet(desk, interaction, scope, caseKey);
  if ((await outlet.edit({ ...place, message: interaction.message.id }, body)) === undefined)
    await outlet.aside(body);
}

export function conversationOf(
  { channelId, user }: { readonly channelId: string | null; readonly user: { readonly id: string } },
  { scope }: Pressed,
): string {
  return conversationIn(channelId ?? "", scope, user.id);
}

const LONGEST_NOTICE = 1500;

/** A form must be the first answer: what stands in it is looked up for a second and a half, and left out after that. */
const LOOK_UP_MILLISECONDS = 1500;

async function openForm(desk: Desk, interaction: Press, pressed: Pressed): Promise<void> {
  const conversation = conversationOf(interaction, pressed);
  const found = await Promise.race([
    lookedUp(desk, conversation, pressed),
    pause(LOOK_UP_MILLISECONDS, undefined),
  ]);
  if (found?.place !== undefined && found.reply === undefined) {
    // Nobody shall fill in what cannot be taken. Without a place it may have been shown this moment, and is noted by then.
    await deferUpdate(interaction, desk.log);
    return sayStale(desk, interaction, pressed, conversation, found.place, words.stale);
  }
  const form = formFor(interaction, pressed, found?.reply);
  await acknowledged(() => interaction.showModal(form), desk.log);
}

function formFor(interaction: Press, pressed: Pressed, reply: Reply | undefined) {
  const id = customId(pressed);
  const controls = reply === undefined ? undefined : controlsOf(reply);
  if (pressed.key === "f") return questionForm(id, controls?.question);
  const control = controls === undefined ? undefined : numbered(controls)[Number(pressed.key.slice(1))];
  const component = interaction.isButton() ? interaction.component : undefined;
  const pressedLabel = component !== undefined && "label" in component ? component.label : undefined;
  return completionForm(id, control?.label ?? pressedLabel ?? forms.title);
}

async function lookedUp(desk: Desk, conversation: string, pressed: Pressed): Promise<LookedUp> {
  const place = await desk.places.find(conversation, pressed.caseKey);
  const reply = place?.reply === pressed.reply ? await replyAt(desk, conversation, place) : undefined;
  return { place, reply };
}
