/** The first answer to an interaction, within three seconds and before anything slow: else Discord tells the member that we failed. */
import {
  type MessageComponentInteraction,
  MessageFlags,
  type ModalSubmitInteraction,
  type RepliableInteraction,
} from "discord.js";
import type { Log } from "../../bot/index.ts";
import { insisted, troubleOf } from "./trouble.ts";

/** False when the interaction can no longer be answered: then its token is of no use either. */
export async function acknowledged(call: () => Promise<unknown>, log: Log): Promise<boolean> {
  try {
    await insisted(call);
    return true;
  } catch (failure) {
    const trouble = troubleOf(failure);
    // The first attempt arrived, only its answer was lost.
    if (trouble === "acknowledged already") return true;
    log.warn({ trouble }, "interaction not acknowledged");
    if (trouble === "other") throw failure;
    return false;
  }
}

export async function deferReply(
  interaction: RepliableInteraction,
  isPrivate: boolean,
  log: Log,
): Promise<boolean> {
  const flags = isPrivate ? { flags: MessageFlags.Ephemeral as const } : {};
  const is = await acknowledged(() => interaction.deferReply(flags), log);
  // discord.js does not know of an acknowledgement whose answer was lost.
  interaction.deferred = true;
  interaction.ephemeral = isPrivate;
  return is;
}

export async function deferUpdate(
  interaction: MessageComponentInteraction | (ModalSubmitInteraction & { deferUpdate(): Promise<unknown> }),
  log: Log,
): Promise<boolean> {
  const is = await acknowledged(() => interaction.deferUpdate(), log);
  interaction.deferred = true;
  return is;
}
