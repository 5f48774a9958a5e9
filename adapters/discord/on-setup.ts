/** /setup and /settings, for whoever manages the server; Discord hides them from others, and here it is asked again. */
import {
  type ChatInputCommandInteraction,
  GatewayIntentBits,
  type MessageComponentInteraction,
} from "discord.js";
import { acknowledged, deferReply, deferUpdate } from "./acknowledge.ts";
import type { Desk } from "./desk.ts";
import { followPrivately } from "./interaction-outlets.ts";
import { escaped } from "./markdown.ts";
import { plainBody } from "./payload.ts";
import { trouble as words } from "./phrases.ts";
import { settingsText, setupChange, setupMessage } from "./setup-steps.ts";
import { insisted } from "./trouble.ts";
import { authorOfInteraction } from "./where.ts";

export async function onSetup(desk: Desk, interaction: ChatInputCommandInteraction): Promise<void> {
  await deferReply(interaction, true, desk.log);
  const author = await desk.outlast(() => authorOfInteraction(desk, interaction));
  const refusal = refusalFor(interaction, author.standing);
  if (refusal !== undefined) {
    await insisted(() => interaction.editReply(plainBody(escaped(refusal))()));
    return;
  }
  const scene = await desk.outlast(() => sceneOf(desk, author.community));
  const { content, rows } =
    interaction.commandName === "setup" ? setupMessage(0, scene) : { content: settingsText(scene), rows: [] };
  await insisted(() => interaction.editReply(plainBody(content, rows)()));
}

export async function onSetupPress(desk: Desk, interaction: MessageComponentInteraction): Promise<void> {
  if (!(await deferUpdate(interaction, desk.log))) return;
  const author = await desk.outlast(() => authorOfInteraction(desk, interaction));
  const refusal = refusalFor(interaction, author.standing);
  const change = setupChange(interaction.customId);
  if (refusal !== undefined || change === undefined) {
    await followPrivately(interaction, plainBody(escaped(refusal ?? words.noCase)));
    return;
  }
  const values: readonly string[] = interaction.isAnySelectMenu() ? interaction.values : [];
  await desk.turns.run(`settings ${author.community}`, () =>
    desk.settings.change(author.community, author.from, (settings) => change.take(settings, values)),
  );
  const { content, rows } = setupMessage(
    change.next,
    await desk.outlast(() => sceneOf(desk, author.community)),
  );
  await acknowledged(() => interaction.editReply(plainBody(content, rows)()), desk.log);
}

function refusalFor({ guildId }: { readonly guildId: string | null }, standing: string): string | undefined {
  if (guildId === null) return words.onlyInServer;
  return standing === "owner" ? undefined : words.onlyOwners;
}

async function sceneOf(desk: Desk, community: string) {
  return {
    settings: await desk.bot.settings(community),
    handbooks: desk.handbooks,
    hasMessageContent: desk.client.options.intents.has(GatewayIntentBits.MessageContent),
  };
}
