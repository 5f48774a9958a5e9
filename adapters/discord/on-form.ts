/** A filled form. What somebody wrote is never thrown away: when the case has gone on meanwhile, they get their words back. */
import type { ModalSubmitInteraction } from "discord.js";
import { deferReply, deferUpdate } from "./acknowledge.ts";
import { controlsOf, numbered } from "./controls.ts";
import { type Pressed, readCustomId } from "./custom-id.ts";
import type { Desk } from "./desk.ts";
import { saidInForm } from "./form.ts";
import { followPrivately } from "./interaction-outlets.ts";
import { escaped } from "./markdown.ts";
import { conversationOf, type Said, type Standing, sayStale, takeTurn } from "./on-press.ts";
import { once } from "./outlast.ts";
import { plainBody, withFile } from "./payload.ts";
import { trouble as words } from "./phrases.ts";
import type { Place } from "./places.ts";
import { replyAt } from "./show.ts";

const LONGEST_GIVEN_BACK = 1200;

export async function onForm(desk: Desk, interaction: ModalSubmitInteraction): Promise<void> {
  const pressed = readCustomId(interaction.customId);
  const isAnswerable = interaction.isFromMessage()
    ? await deferUpdate(interaction, desk.log)
    : await deferReply(interaction, true, desk.log);
  if (pressed === undefined) {
    if (isAnswerable) await followPrivately(interaction, plainBody(escaped(words.noCase)));
    return;
  }
  const conversation = conversationOf(interaction, pressed);
  const values = valuesOf(interaction);
  // Looked at once: a turn that is tried again has itself moved the case on.
  const look = once(() => lookedUp(desk, pressed, conversation, values));
  await desk.turns.run(conversation, async () => {
    const { place, isStale, said } = await look();
    if (place === undefined || isStale) {
      return giveBack(desk, interaction, { pressed, conversation, place }, [...values.values()]);
    }
    if (said !== undefined) await takeTurn(desk, interaction, { pressed, conversation, place }, said);
  });
}

/** In the message itself while there is room for them, else in a file. */
async function giveBack(
  desk: Desk,
  interaction: ModalSubmitInteraction,
  { pressed, conversation, place }: Omit<Standing, "place"> & { readonly place: Place | undefined },
  written: readonly string[],
): Promise<void> {
  const own = written.filter((text) => text.trim() !== "").join("\n");
  const isShort = escaped(own).length <= LONGEST_GIVEN_BACK;
  const why = isShort ? `${words.staleForm}\n${own}` : words.staleFormInFile;
  if (!isShort || place === undefined) {
    const told = plainBody(
      why
        .split("\n")
        .map((line) => `-# ${escaped(line)}`)
        .join("\n"),
    );
    await followPrivately(interaction, isShort ? told : withFile(told, "what-you-wrote.txt", own));
  }
  await sayStale(desk, interaction, pressed, conversation, place, isShort ? why : words.stale);
}

interface LookedUp {
  readonly place: Place | undefined;
  /** The case shows another reply now. */
  readonly isStale: boolean;
  readonly said?: Said | undefined;
}

async function lookedUp(
  desk: Desk,
  pressed: Pressed,
  conversation: string,
  values: ReadonlyMap<string, string>,
): Promise<LookedUp> {
  const place = await desk.places.find(conversation, pressed.caseKey);
  if (place === undefined || place.reply !== pressed.reply) return { place, isStale: true };
  return { place, isStale: false, said: await saidIn(desk, { pressed, conversation, place }, values) };
}

async function saidIn(
  desk: Desk,
  { pressed, conversation, place }: Standing,
  values: ReadonlyMap<string, string>,
): Promise<Said | undefined> {
  const controls = controlsOf(await replyAt(desk, conversation, place));
  if (pressed.key === "f") return saidInForm(controls.question, values);
  const control = numbered(controls)[Number(pressed.key.slice(1))];
  if (control?.does !== "complete") return undefined;
  return { text: control.say.replace(/\s*(?:…|\.\.\.)\s*$/u, ` ${values.get("rest")?.trim() ?? ""}`) };
}

export function valuesOf(interaction: ModalSubmitInteraction): ReadonlyMap<string, string> {
  return new Map(
    interaction.fields.fields.map((field) => [
      field.customId,
      "value" in field ? String(field.value ?? "") : "",
    ]),
  );
}
