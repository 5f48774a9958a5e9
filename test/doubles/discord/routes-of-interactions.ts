// Callbacks and what follows them: three seconds for the first, fifteen minutes for the rest, one acknowledgement only.
import { messageTrouble, modalTrouble } from "./limits.ts";
import { againstDescription } from "./published-description.ts";
import {
  type Asked,
  acknowledgedAlready,
  invalidForm,
  invalidToken,
  type Route,
  unknownInteraction,
  unknownMessage,
  unknownWebhook,
} from "./routes-shape.ts";
import { ephemeral, type Interaction, type Json, type Message, type Modal } from "./wire-shapes.ts";
import { checked, edited, written } from "./written-messages.ts";

const ACKNOWLEDGE_WITHIN = 3000;
const TOKEN_LASTS = 15 * 60_000;

const schemaOfCallback: Readonly<Record<number, string>> = {
  4: "CreateMessageInteractionCallbackRequestSchema",
  5: "CreateMessageInteractionCallbackRequestSchema",
  6: "UpdateMessageInteractionCallbackRequestSchema",
  7: "UpdateMessageInteractionCallbackRequestSchema",
  8: "ApplicationCommandAutocompleteCallbackRequestSchema",
  9: "ModalInteractionCallbackRequestSchema",
};

function callback(asked: Asked): unknown {
  const { world, names, body } = asked;
  const [id = "", token = ""] = names;
  const interaction = world.interactions.get(id);
  if (interaction === undefined || interaction.token !== token) throw unknownInteraction();
  const type = Number(body.type);
  const schema = schemaOfCallback[type];
  if (schema === undefined) throw invalidForm(`callback type ${type}`);
  if (interaction.acknowledgedAt !== undefined) throw acknowledgedAlready();
  refuseLate(asked, interaction);
  const data = (body.data ?? {}) as Json;
  const trouble = [
    ...againstDescription(schema, body),
    ...(type === 4 || type === 7 ? messageTrouble(data) : []),
    ...(type === 9 ? modalTrouble(data) : []),
    ...(type === 8 && listLength(data.choices) > 25 ? ["more than 25 suggestions"] : []),
  ];
  if (trouble.length > 0) {
    world.violations.push(...trouble);
    throw invalidForm(trouble.join("; "));
  }
  interaction.acknowledgedAt = asked.arrived;
  interaction.acknowledgedBy = type;
  applyCallback(asked, interaction, type, data);
  for (const watcher of interaction.watchers) watcher();
  return asked.query.get("with_response") === "true" ? responseOf(asked, interaction) : undefined;
}

/** Discord gives a bot three seconds. */
function refuseLate({ world, arrived }: Asked, interaction: Interaction): void {
  if (arrived - interaction.sentAt <= ACKNOWLEDGE_WITHIN) return;
  world.violations.push("acknowledged later than three seconds");
  interaction.isExpired = true;
  for (const watcher of interaction.watchers) watcher();
  throw unknownInteraction();
}

function applyCallback(asked: Asked, interaction: Interaction, type: number, data: Json): void {
  if (type === 4 || type === 5) {
    interaction.isEphemeral = (Number(data.flags ?? 0) & ephemeral) !== 0;
    if (type === 4) interaction.original = followUp(asked, interaction, data);
  }
  if (type === 6 || type === 7) {
    if (interaction.on !== undefined) interaction.original = interaction.on;
    if (type === 7 && interaction.on !== undefined) shownAnew(asked, edited(asked, interaction.on, data));
  }
  if (type === 8) interaction.suggestions = data.choices as NonNullable<Interaction["suggestions"]>;
  if (type === 9) interaction.modal = data as unknown as Modal;
}

function responseOf({ shown }: Asked, interaction: Interaction): Json {
  return {
    interaction: { id: interaction.id, type: 2 },
    resource: {
      type: interaction.acknowledgedBy,
      ...(interaction.original === undefined ? {} : { message: shown(interaction.original) }),
    },
  };
}

function followUp(asked: Asked, interaction: Interaction, data: Json): Message {
  const { world } = asked;
  const isPrivate = (Number(data.flags ?? 0) & ephemeral) !== 0 || false;
  const channel = world.channels.get(interaction.channel);
  const message = written(asked, data, {
    channel: interaction.channel,
    ...(channel?.guild_id === undefined ? {} : { guild: channel.guild_id }),
    ...(isPrivate ? { onlyFor: interaction.user.id } : {}),
  });
  shownAnew(asked, message);
  return message;
}

function byToken({ world, names }: Asked): Interaction {
  const interaction = world.byToken.get(names[1] ?? "");
  if (interaction === undefined) throw unknownWebhook();
  if (interaction.isExpired === true || performance.now() - interaction.sentAt > TOKEN_LASTS)
    throw invalidToken();
  if (interaction.acknowledgedAt === undefined) throw unknownWebhook();
  return interaction;
}

function named(asked: Asked, interaction: Interaction): Message {
  const id = asked.names[2] ?? "@original";
  const message = id === "@original" ? interaction.original : asked.world.messages.get(id);
  if (message === undefined || !asked.world.messages.has(message.id)) throw unknownMessage();
  return message;
}

/** The first edit of a deferred reply makes its message. */
function editOriginal(asked: Asked): Json {
  const interaction = byToken(asked);
  checked(asked, "IncomingWebhookUpdateRequestPartialSchema", asked.body, asked.body);
  const isFirst =
    (asked.names[2] ?? "@original") === "@original" &&
    interaction.acknowledgedBy === 5 &&
    interaction.original === undefined;
  if (isFirst) {
    const flags = Number(asked.body.flags ?? 0) | (interaction.isEphemeral === true ? ephemeral : 0);
    interaction.original = followUp(asked, interaction, { ...asked.body, flags });
    for (const watcher of interaction.watchers) watcher();
    return asked.shown(interaction.original);
  }
  const message = edited(asked, named(asked, interaction), asked.body);
  shownAnew(asked, message);
  return asked.shown(message);
}

function shownAnew({ world, gateway, shown }: Asked, message: Message): void {
  if (message.onlyFor !== undefined) return;
  const event = message.edits === 0 ? "MESSAGE_CREATE" : "MESSAGE_UPDATE";
  gateway.send(event, message.guild_id, () => shown(message));
  if (world.messages.size > 50_000) world.messages.delete(world.messages.keys().next().value ?? "");
}

function listLength(value: unknown): number {
  return Array.isArray(value) ? value.length : 0;
}

export const interactionRoutes: readonly Route[] = [
  { method: "POST", path: /^\/interactions\/(\d+)\/([^/]+)\/callback$/u, isOpen: true, answer: callback },
  {
    method: "POST",
    path: /^\/webhooks\/(\d+)\/([^/]+)$/u,
    isOpen: true,
    answer: (asked) => {
      const interaction = byToken(asked);
      checked(asked, "IncomingWebhookInteractionRequestSchema", asked.body, asked.body);
      return asked.shown(followUp(asked, interaction, asked.body));
    },
  },
  {
    method: "GET",
    path: /^\/webhooks\/(\d+)\/([^/]+)\/messages\/([^/]+)$/u,
    isOpen: true,
    answer: (asked) => asked.shown(named(asked, byToken(asked))),
  },
  {
    method: "PATCH",
    path: /^\/webhooks\/(\d+)\/([^/]+)\/messages\/([^/]+)$/u,
    isOpen: true,
    answer: editOriginal,
  },
  {
    method: "DELETE",
    path: /^\/webhooks\/(\d+)\/([^/]+)\/messages\/([^/]+)$/u,
    isOpen: true,
    answer: (asked) => {
      const interaction = byToken(asked);
      if (interaction.original === undefined && interaction.acknowledgedBy === 5) return undefined;
      asked.world.messages.delete(named(asked, interaction).id);
      return undefined;
    },
  },
];
