/** The menu of a message: another member's post read as the question, recorded, pinned as the answer, or our answer pinned in the channel. */
import type { Message, MessageContextMenuCommandInteraction, ModalSubmitInteraction } from "discord.js";
import type { IncomingMessage } from "../../bot/index.ts";
import { acknowledged, deferReply } from "./acknowledge.ts";
import { threadOutlet } from "./channel-outlets.ts";
import type { Desk } from "./desk.ts";
import { pinForm } from "./form.ts";
import { deferredOutlet, followPrivately } from "./interaction-outlets.ts";
import { escaped } from "./markdown.ts";
import { valuesOf } from "./on-form.ts";
import { placeOnMessage } from "./on-message.ts";
import { plainBody } from "./payload.ts";
import { lackingForPins } from "./permissions.ts";
import { takePhotographs } from "./photographs-taken.ts";
import { menuNames, trouble as words } from "./phrases.ts";
import { conversationIn, personOf } from "./places.ts";
import { wordsOfPost } from "./said.ts";
import { show } from "./show.ts";
import { threadFrom } from "./threads.ts";
import { insisted, troubleOf } from "./trouble.ts";
import { authorOfInteraction } from "./where.ts";

export const pinFormPrefix = "pin-post~";

export async function onMenu(desk: Desk, interaction: MessageContextMenuCommandInteraction): Promise<void> {
  switch (interaction.commandName) {
    case menuNames.askAbout:
      return askAbout(desk, interaction, false, "");
    case menuNames.observe:
      return askAbout(desk, interaction, true, "record an observation");
    case menuNames.pin:
      await acknowledged(
        () =>
          interaction.showModal(
            pinForm(`${pinFormPrefix}${interaction.targetId}`, wordsToPin(interaction.targetMessage)),
          ),
        desk.log,
      );
      return;
    case menuNames.pinHere:
      return pinHere(desk, interaction);
  }
}

/** What the bot itself wrote is no keeper's answer. */
function wordsToPin({ author, content, client }: Message): string {
  return author.id === client.user.id ? "" : content;
}

/** The post is the question, its author the asker; whoever chose the menu is somebody else in the case. */
async function askAbout(
  desk: Desk,
  interaction: MessageContextMenuCommandInteraction,
  isPrivate: boolean,
  text: string,
): Promise<void> {
  await deferReply(interaction, isPrivate, desk.log);
  const post = interaction.targetMessage;
  const author = await desk.outlast(() => authorOfInteraction(desk, interaction));
  const scope = isPrivate ? "private" : "open";
  const here = deferredOutlet(desk, interaction, scope);
  const isOwn = post.author.id === interaction.client.user.id;
  if (isOwn && !isPrivate) {
    await here.post(plainBody(escaped(words.ownPost)));
    return;
  }
  const quoted = quotedOf(interaction, post);
  if (quoted.text === "" && post.attachments.size === 0) {
    await here.post(plainBody(escaped(words.nothingToRead)));
    return;
  }
  const photographs = [...post.attachments.values()];
  const taken = await desk.outlast(() => takePhotographs(desk, photographs, quoted.from));
  const { answers } = await desk.outlast(() => desk.settings.of(author.community));
  const isInThread = answers === "thread" && !isPrivate && interaction.channel?.isThread() === false;
  const begun = isInThread ? await desk.outlast(() => threadFrom(desk, post)) : {};
  const channel = begun.channel?.id ?? interaction.channelId;
  const conversation = conversationIn(channel, scope, interaction.user.id);
  const link = plainBody(`<#${begun.channel?.id}>`);
  if (begun.channel !== undefined) await desk.outlast(() => here.post(link));
  const outlet =
    begun.channel === undefined
      ? here
      : threadOutlet(desk, begun.channel, interaction.user.id, interaction.id);
  await desk.turns.run(conversation, async () => {
    const said: IncomingMessage = {
      ...author,
      name: author.name.slice(0, 80),
      conversation,
      id: interaction.id,
      text,
      isPrivate,
      ...(isOwn ? {} : { quoted }),
      ...(taken.photographs.length === 0 ? {} : { photographs: [...taken.photographs] }),
    };
    const reply = await desk.receive(said);
    await show(
      desk,
      {
        conversation,
        community: author.community,
        scope,
        user: interaction.user.id,
        from: author.from,
        asker: isPrivate ? author.from : quoted.from,
        reply,
        replyId: interaction.id,
        before: begun.lacking === undefined ? undefined : `-# ${escaped(words.noThread(begun.lacking))}`,
      },
      outlet,
    );
  });
}

function quotedOf(
  interaction: MessageContextMenuCommandInteraction,
  post: Message,
): NonNullable<IncomingMessage["quoted"]> {
  const { author, member } = post;
  const name = (member?.displayName ?? author.displayName).slice(0, 80);
  const client = interaction.client;
  return {
    from: personOf(author.id),
    name,
    text: client.isReady() ? wordsOfPost(client, post) : post.content,
  };
}

/** The form that "Pin as the answer" opened: its words become the keeper's sentence. */
export async function onPinForm(desk: Desk, interaction: ModalSubmitInteraction): Promise<void> {
  await deferReply(interaction, true, desk.log);
  const author = await desk.outlast(() => authorOfInteraction(desk, interaction));
  const conversation = conversationIn(interaction.channelId ?? "", "open", interaction.user.id);
  const target = interaction.customId.slice(pinFormPrefix.length);
  const place = await desk.outlast(() => placeOf(desk, interaction, target, conversation));
  await desk.turns.run(conversation, async () => {
    const reply = await desk.receive({
      ...author,
      name: author.name.slice(0, 80),
      conversation,
      id: interaction.id,
      text: `pin this: ${valuesOf(interaction).get("rest")?.trim() ?? ""}`,
      ...(place?.case === undefined ? {} : { case: place.case }),
    });
    const outlet = deferredOutlet(desk, interaction, "private");
    const { from, community } = author;
    const showing = {
      conversation,
      community,
      scope: "open",
      user: interaction.user.id,
      from,
      asker: from,
    } as const;
    await show(
      desk,
      { ...showing, reply, replyId: interaction.id, keptAs: `aside-${interaction.id}` },
      { ...outlet, edit: async () => undefined, mayEdit: () => false },
    );
  });
}

async function placeOf(
  desk: Desk,
  interaction: ModalSubmitInteraction,
  target: string,
  conversation: string,
) {
  const message = await interaction.channel?.messages.fetch(target).catch(() => undefined);
  return message === undefined ? undefined : placeOnMessage(desk, message, conversation);
}

async function pinHere(desk: Desk, interaction: MessageContextMenuCommandInteraction): Promise<void> {
  await deferReply(interaction, true, desk.log);
  const said = await desk.outlast(() => pinnedHere(desk, interaction));
  await desk.outlast(() => followPrivately(interaction, plainBody(escaped(said))));
}

async function pinnedHere(desk: Desk, interaction: MessageContextMenuCommandInteraction): Promise<string> {
  const post = interaction.targetMessage;
  const { standing } = await authorOfInteraction(desk, interaction);
  if (standing !== "keeper" && standing !== "owner") return words.onlyKeepers;
  if (post.author.id !== interaction.client.user.id) return words.notAnAnswer;
  try {
    await insisted(() => post.pin());
    return words.pinnedHere;
  } catch (failure) {
    if (troubleOf(failure) !== "lacking permission") throw failure;
    return words.lacking(lackingForPins(interaction.channel));
  }
}
