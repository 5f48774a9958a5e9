// The routes the bot uses, in groups.

import { channelAsSent, memberAsSent, userAsSent } from "./as-sent.ts";
import { againstDescription, eachAgainstDescription } from "./published-description.ts";
import { channelRoutes } from "./routes-of-channels.ts";
import { interactionRoutes } from "./routes-of-interactions.ts";
import type { Route } from "./routes-shape.ts";
import { unknownChannel, unknownMember } from "./routes-shape.ts";
import { directChannel } from "./world.ts";

const applicationRoutes: readonly Route[] = [
  {
    method: "GET",
    path: /^\/gateway\/bot$/u,
    answer: ({ gateway, world }) => ({
      url: gateway.address(),
      shards: world.shards,
      session_start_limit: { total: 1000, remaining: 999, reset_after: 1000, max_concurrency: 2 },
    }),
  },
  {
    method: "GET",
    path: /^\/(?:oauth2\/)?applications\/@me$/u,
    answer: ({ world }) => ({
      id: world.application,
      name: "witness-mark",
      description: "",
      flags: world.hasMessageContent ? 1 << 19 : 0,
      bot: userAsSent(world.bot),
    }),
  },
  { method: "GET", path: /^\/users\/@me$/u, answer: ({ world }) => userAsSent(world.bot) },
  {
    method: "GET",
    path: /^\/applications\/(\d+)\/commands$/u,
    answer: ({ world }) => world.commands,
  },
  {
    method: "PUT",
    path: /^\/applications\/(\d+)\/commands$/u,
    answer: ({ world, body }) => {
      const commands = body as unknown as readonly Record<string, unknown>[];
      // The description types the permission as a number; integers in text are what Discord takes and sends.
      const asTyped = commands.map((command) => ({
        ...command,
        default_member_permissions:
          command.default_member_permissions === null
            ? null
            : Number(command.default_member_permissions ?? 0),
      }));
      world.violations.push(...eachAgainstDescription("ApplicationCommandUpdateRequestSchema", asTyped));
      for (const type of [1, 2, 3]) {
        const many = commands.filter((command) => (command.type ?? 1) === type).length;
        if (many > (type === 1 ? 100 : 5)) world.violations.push(`${many} commands of type ${type}`);
      }
      world.registrations += 1;
      world.commands = commands.map((command) => ({
        id: world.nextId(),
        application_id: world.application,
        version: world.nextId(),
        type: 1,
        default_member_permissions: null,
        nsfw: false,
        ...command,
      }));
      return world.commands;
    },
  },
  {
    method: "POST",
    path: /^\/users\/@me\/channels$/u,
    answer: ({ world, body }) => {
      world.violations.push(...againstDescription("CreatePrivateChannelRequestSchema", body));
      const id = String(body.recipient_id);
      const known = [...world.guilds.values()].flatMap((guild) => guild.members.get(id)?.user ?? [])[0];
      return channelAsSent(world, directChannel(world, known ?? { id, username: "somebody" }));
    },
  },
  {
    method: "GET",
    path: /^\/channels\/(\d+)$/u,
    answer: ({ world, names: [id = ""] }) => {
      const channel = world.channels.get(id);
      if (channel === undefined) throw unknownChannel();
      return channelAsSent(world, channel);
    },
  },
  {
    method: "GET",
    path: /^\/guilds\/(\d+)\/members\/(\d+)$/u,
    answer: ({ world, names: [guildId = "", user = ""] }) => {
      const guild = world.guilds.get(guildId);
      if (guild?.members.has(user) !== true) throw unknownMember();
      return memberAsSent(world, guild, user);
    },
  },
];

export const routes: readonly Route[] = [...applicationRoutes, ...interactionRoutes, ...channelRoutes];
