/** For the failure that costs one thing said: who said it is told, by whichever way is left; what went before stays usable. */
import { DiscordAPIError, type Message, MessageFlags, type RepliableInteraction } from "discord.js";
import { sendableChannel, sendOnce } from "./channel-messages.ts";
import { sendDirectly } from "./channel-outlets.ts";
import type { Desk } from "./desk.ts";
import { NoWayOutError } from "./interaction-outlets.ts";
import { escaped } from "./markdown.ts";
import { plainBody } from "./payload.ts";
import { trouble as words } from "./phrases.ts";
import { addressedTo } from "./said.ts";
import { noSettings } from "./server-settings.ts";
import { insisted, troubleOf } from "./trouble.ts";

/** Below the message; who did not speak to us is told nothing. */
export async function sayLost(desk: Desk, message: Message, failure: unknown): Promise<void> {
  const { client } = message;
  const isForUs = client.isReady() && addressedTo(client, message, noSettings) !== undefined;
  // What counts as new even now was not yet found to be for us, as in a channel that is listened to.
  if (!isForUs && desk.isNew(message.id)) return;
  await desk.outlast(async () => {
    const channel = await sendableChannel(client, message.channelId);
    if (channel === undefined) return;
    await sendOnce(channel, plainBody(escaped(lostBy(failure))), `x${message.id}`, message.id);
  });
}

/** To the one alone; directly, when the interaction cannot be answered any more. */
export async function sayInteractionLost(
  desk: Desk,
  interaction: RepliableInteraction,
  failure: unknown,
): Promise<void> {
  const body = plainBody(escaped(lostBy(failure)));
  await desk.outlast(async () => {
    try {
      await insisted(() => answered(interaction, body()));
    } catch (second) {
      const trouble = troubleOf(second);
      if (trouble !== "token gone" && trouble !== "message gone") throw second;
      await sendDirectly(desk, interaction.user.id, body, `x${interaction.id}`);
    }
  });
}

async function answered(
  interaction: RepliableInteraction,
  body: ReturnType<ReturnType<typeof plainBody>>,
): Promise<void> {
  if (!interaction.deferred && !interaction.replied)
    await interaction.reply({ ...body, flags: MessageFlags.Ephemeral });
  else if (interaction.isChatInputCommand()) await interaction.editReply(body);
  else await interaction.followUp({ ...body, flags: MessageFlags.Ephemeral });
}

/** What stands between the answer and Discord says nothing of whether it was kept. */
function lostBy(failure: unknown): string {
  const mayBeKept =
    failure instanceof NoWayOutError ||
    failure instanceof DiscordAPIError ||
    troubleOf(failure) === "unreachable";
  return mayBeKept ? words.notShown : words.lost;
}
