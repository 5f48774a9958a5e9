// What happens in a server, written down as somebody who reads along would see it: who did what, and what the bot wrote or edited.
import type { Interaction, Message, User } from "../../doubles/discord/wire-shapes.ts";
import { demoKnowledge } from "../../support/demo-knowledge.ts";
import { asKept } from "../../support/golden-conversation.ts";
import { asRead } from "./as-read.ts";
import type { Served } from "./served.ts";

export interface Transcript {
  /** Does it, waits for what comes of it, and writes both down. */
  act<Outcome>(what: string, does: () => Outcome | Promise<Outcome>): Promise<Outcome>;
  /** The message that was written or edited last. */
  last(): Message;
  text(): string;
}

export function transcriptOf(s: Served): Transcript {
  const lines: string[] = [];
  const { world } = s.double;
  let last: Message | undefined;

  function changedSince(before: ReadonlyMap<string, number>): readonly Message[] {
    return [...world.messages.values()].filter(
      ({ id, edits, author }) => author.id === world.bot.id && before.get(id) !== edits,
    );
  }

  return {
    async act(what, does) {
      const before = new Map([...world.messages.values()].map(({ id, edits }) => [id, edits]));
      const outcome = await does();
      await s.settled();
      lines.push(`* ${what}`);
      const opened = isInteraction(outcome) ? outcome.modal : undefined;
      if (opened !== undefined) lines.push("", ...formLines(opened));
      const changed = changedSince(before);
      for (const message of changed) lines.push("", ...messageLines(s, message, before.has(message.id)));
      const gone = [...before.keys()].filter((id) => !world.messages.has(id));
      if (gone.length > 0) lines.push("", "  (a message is taken away)");
      if (changed.length === 0 && opened === undefined && gone.length === 0) lines.push("", "  (nothing)");
      lines.push("");
      last = changed.findLast(({ components }) => components.length > 0) ?? changed.at(-1) ?? last;
      return outcome;
    },
    last() {
      if (last === undefined) throw new Error("nothing was written yet");
      return last;
    },
    text: () => asKept(lines.join("\n"), demoKnowledge().handbook.edition),
  };
}

function isInteraction(value: unknown): value is Interaction {
  return typeof value === "object" && value !== null && "token" in value;
}

function formLines(modal: NonNullable<Interaction["modal"]>): readonly string[] {
  return [
    `  a form opens: ${modal.title}`,
    ...modal.components.map((part) =>
      part.type === 18
        ? `    ${part.label}: ____ ${part.component?.placeholder ?? ""}`.trimEnd()
        : `    ${part.content}`,
    ),
  ];
}

function messageLines(s: Served, message: Message, isEdit: boolean): readonly string[] {
  const channel = s.double.world.channels.get(message.channel_id);
  const place = channel === undefined ? "nowhere" : channel.type === 1 ? "directly" : `in #${channel.name}`;
  const only = message.onlyFor === undefined ? "" : `, only for ${nameOf(s, message.onlyFor)}`;
  return [
    `  witness-mark ${isEdit ? "edits its message" : "writes"} ${place}${only}:`,
    ...asRead(message.content)
      .split("\n")
      .map((line) => `  | ${line}`.trimEnd()),
    ...message.attachments.map(({ description }) => `  (picture: ${description ?? "without words"})`),
    ...message.components.map(
      ({ components }) =>
        `  ${(components ?? []).map((one) => (one.options === undefined ? `[${one.label ?? one.placeholder}]` : `<${one.placeholder ?? "choose"}: ${one.options.map(({ label }) => label).join(" / ")}>`)).join(" ")}`,
    ),
  ];
}

function nameOf(s: Served, id: string): string {
  const users: readonly User[] = [...s.guild.members.values()].map(({ user }) => user);
  return users.find((user) => user.id === id)?.username ?? "somebody";
}
