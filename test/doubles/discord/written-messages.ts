// A message as the bot writes or edits it: checked first, then kept, its files readable at an address as on Discord.

import { messageTrouble } from "./limits.ts";
import { againstDescription } from "./published-description.ts";
import type { Asked } from "./routes-shape.ts";
import { invalidForm } from "./routes-shape.ts";
import type { Attachment, Component, Json, Message } from "./wire-shapes.ts";

/** Refuses, and notes, a body that breaks the description or a limit. */
export function checked(asked: Asked, schema: string, body: Json, message: Json): void {
  const trouble = [...againstDescription(schema, body), ...messageTrouble(message)];
  if (trouble.length === 0) return;
  asked.world.violations.push(...trouble);
  throw invalidForm(trouble.join("; "));
}

export function written(
  asked: Asked,
  body: Json,
  where: { readonly channel: string; readonly guild?: string; readonly onlyFor?: string },
): Message {
  const { world } = asked;
  const reference = body.message_reference as Json | undefined;
  const referenced = world.messages.get(String(reference?.message_id ?? ""));
  if (reference !== undefined && referenced === undefined && reference.fail_if_not_exists !== false)
    throw invalidForm("message_reference: Unknown message");
  const attachments = attachmentsOf(asked, body, []);
  if (contentOf(body) === "" && attachments.length === 0 && componentsOf(body).length === 0)
    throw invalidForm("Cannot send an empty message");
  const message: Message = {
    id: world.nextId(),
    type: referenced === undefined ? 0 : 19,
    channel_id: where.channel,
    author: world.bot,
    content: contentOf(body),
    components: componentsOf(body),
    attachments,
    mentions: [],
    flags: Number(body.flags ?? 0),
    pinned: false,
    edits: 0,
    ...(where.guild === undefined ? {} : { guild_id: where.guild }),
    ...(where.onlyFor === undefined ? {} : { onlyFor: where.onlyFor }),
    ...(body.nonce === undefined ? {} : { nonce: String(body.nonce) }),
    ...(referenced === undefined || reference === undefined ? {} : { message_reference: reference }),
  };
  world.messages.set(message.id, message);
  return message;
}

export function edited(asked: Asked, message: Message, body: Json): Message {
  if ("content" in body) message.content = contentOf(body);
  if ("components" in body) message.components = componentsOf(body);
  if ("attachments" in body || asked.files.size > 0)
    message.attachments = attachmentsOf(asked, body, message.attachments);
  if ("flags" in body) message.flags = Number(body.flags ?? 0);
  if (message.content === "" && message.attachments.length === 0 && message.components.length === 0)
    throw invalidForm("Cannot send an empty message");
  message.edits += 1;
  return message;
}

function contentOf(body: Json): string {
  return typeof body.content === "string" ? body.content : "";
}

function componentsOf(body: Json): readonly Component[] {
  return Array.isArray(body.components) ? (body.components as readonly Component[]) : [];
}

function attachmentsOf(asked: Asked, body: Json, before: readonly Attachment[]): readonly Attachment[] {
  const named = Array.isArray(body.attachments) ? (body.attachments as readonly Json[]) : undefined;
  const kept =
    named === undefined ? before : before.filter(({ id }) => named.some((one) => String(one.id) === id));
  const added = [...asked.files].map(([index, file]) => {
    const told = named?.find((one) => String(one.id) === index);
    const id = asked.world.nextId();
    const path = `/attachments/${id}/${file.name}`;
    asked.world.files.set(path, file.bytes);
    const description = told?.description;
    return {
      id,
      filename: file.name,
      size: file.bytes.length,
      url: `${asked.host}${path}`,
      proxy_url: `${asked.host}${path}`,
      ...(file.type === "" ? {} : { content_type: file.type }),
      ...(typeof description === "string" ? { description } : {}),
    };
  });
  for (const { filename, description } of added) {
    if (filename.endsWith(".png") && description === undefined)
      asked.world.violations.push(`${filename} has no alternative text`);
  }
  return [...kept, ...added];
}
