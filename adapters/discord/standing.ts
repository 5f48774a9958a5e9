/** What Discord vouches for: who manages the server decides who keeps; keepers by role, else by permission; members may record. */
import { PermissionFlagsBits, type PermissionsBitField } from "discord.js";
import type { Standing } from "../../bot/index.ts";
import type { ServerSettings } from "./server-settings.ts";

export function standingOf(
  permissions: Readonly<PermissionsBitField>,
  roles: readonly string[],
  settings: ServerSettings,
): Standing {
  if (permissions.has(PermissionFlagsBits.ManageGuild)) return "owner";
  const hasRole = settings.keeperRoles.some((role) => roles.includes(role));
  const isModerator =
    settings.keeperRoles.length === 0 && permissions.has(PermissionFlagsBits.ManageMessages);
  return hasRole || isModerator ? "keeper" : "contributor";
}
