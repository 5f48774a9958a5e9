/** Names offered while somebody types. Discord wants them within three seconds; names that come too late are none. */
import type { AutocompleteInteraction } from "discord.js";
import type { Desk } from "./desk.ts";
import { fitted } from "./markdown.ts";
import { communityOf } from "./where.ts";

const MOST = 25;
const LONGEST = 100;
const PATIENCE_MILLISECONDS = 1500;

export async function onTyping(desk: Desk, interaction: AutocompleteInteraction): Promise<void> {
  const { guildId, options } = interaction;
  const focused = options.getFocused(true);
  const community = guildId === null ? "home" : communityOf(guildId);
  const suggestions = await Promise.race([
    desk.bot.suggest(community, focused.value),
    new Promise<readonly []>((resolve) => setTimeout(() => resolve([]), PATIENCE_MILLISECONDS)),
  ]);
  const offered = suggestions
    .map(({ name, say }) => ({ name: fitted(name, LONGEST), value: focused.name === "part" ? name : say }))
    .filter(({ name, value }) => name !== "" && value !== "" && value.length <= LONGEST);
  await interaction.respond(offered.slice(0, MOST));
}
