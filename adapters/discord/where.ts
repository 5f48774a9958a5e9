/** Which community an event belongs to, and what its author may do there. A direct message belongs where the person last spoke. */
import { type BaseInteraction, GuildMember, type Message, PermissionsBitField } from "discord.js";
import { z } from "zod";
import type { Standing } from "../../bot/index.ts";
import type { Desk } from "./desk.ts";
import { personOf } from "./places.ts";
import { standingOf } from "./standing.ts";
import { troubleOf } from "./trouble.ts";

export interface Author {
  readonly community: string;
  readonly from: string;
  readonly name: string;
  readonly standing: Standing;
}

const personKind = "discord-person";
const Person = z.strictObject({ community: z.string() });
const prefix = "discord-";

export function communityOf(guild: string): string {
  return `${prefix}${guild}`;
}

/** The server of a community of this platform. */
export function guildOf(community: string): string | undefined {
  return community.startsWith(prefix) ? community.slice(prefix.length) : undefined;
}

export async function authorOfInteraction(desk: Desk, interaction: BaseInteraction): Promise<Author> {
  const { guildId, member, user } = interaction;
  if (guildId === null || member === null) return directAuthor(desk, user.id, user.displayName);
  const community = communityOf(guildId);
  const settings = await desk.settings.of(community);
  const roles = member instanceof GuildMember ? [...member.roles.cache.keys()] : member.roles;
  const permissions = interaction.memberPermissions ?? new PermissionsBitField();
  await rememberCommunity(desk, user.id, community);
  const name = member instanceof GuildMember ? member.displayName : user.displayName;
  return { community, from: personOf(user.id), name, standing: standingOf(permissions, roles, settings) };
}

export async function authorOfMessage(desk: Desk, message: Message): Promise<Author> {
  const { guildId, member, author } = message;
  if (guildId === null) return directAuthor(desk, author.id, author.displayName);
  const community = communityOf(guildId);
  const settings = await desk.settings.of(community);
  await rememberCommunity(desk, author.id, community);
  const permissions = member?.permissions ?? new PermissionsBitField();
  const roles = member === null ? [] : [...member.roles.cache.keys()];
  const name = member?.displayName ?? author.displayName;
  return { community, from: personOf(author.id), name, standing: standingOf(permissions, roles, settings) };
}

async function directAuthor(desk: Desk, user: string, name: string): Promise<Author> {
  const kept = Person.safeParse(await desk.store.current(personKind, user));
  const community = kept.success ? kept.data.community : "home";
  const from = personOf(user);
  const guild = desk.client.guilds.cache.get(guildOf(community) ?? "");
  if (guild === undefined) return { community, from, name, standing: "asker" };
  try {
    const member = await guild.members.fetch(user);
    const settings = await desk.settings.of(community);
    const standing = standingOf(member.permissions, [...member.roles.cache.keys()], settings);
    return { community, from, name: member.displayName, standing };
  } catch (failure) {
    // Somebody who left may still ask, and keeps nothing of what a member may do.
    if (troubleOf(failure) === "other") throw failure;
    return { community, from, name, standing: "asker" };
  }
}

const lastSpoken = new WeakMap<Desk, Map<string, string>>();
const MOST_REMEMBERED = 5000;

async function rememberCommunity(desk: Desk, user: string, community: string): Promise<void> {
  const known = lastSpoken.get(desk) ?? new Map<string, string>();
  lastSpoken.set(desk, known);
  if (known.get(user) === community) return;
  if (known.size >= MOST_REMEMBERED) known.clear();
  const kept = Person.safeParse(await desk.store.current(personKind, user));
  const change = {
    kind: personKind,
    id: user,
    by: personOf(user),
    at: desk.clock.milliseconds(),
    why: "spoke",
  };
  if (!kept.success || kept.data.community !== community)
    await desk.store.advance(change, () => ({ state: { community }, outcome: null }));
  // Once it is kept: what could not be is tried again.
  known.set(user, community);
}
