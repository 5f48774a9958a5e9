/** A slash command: acknowledged at once, then its sentence said to the bot, privately or where all can read the answer. */
import { ApplicationCommandOptionType, type ChatInputCommandInteraction } from "discord.js";
import type { IncomingMessage } from "../../bot/index.ts";
import { deferReply } from "./acknowledge.ts";
import { threadOutlet } from "./channel-outlets.ts";
import { spokenCommands } from "./commands.ts";
import type { Desk } from "./desk.ts";
import { deferredOutlet } from "./interaction-outlets.ts";
import { escaped, fitted } from "./markdown.ts";
import { plainBody } from "./payload.ts";
import { takePhotographs } from "./photographs-taken.ts";
import { trouble as words } from "./phrases.ts";
import { conversationIn } from "./places.ts";
import { type Outlet, show } from "./show.ts";
import { threadFrom } from "./threads.ts";
import { authorOfInteraction } from "./where.ts";

export async function onCommand(desk: Desk, interaction: ChatInputCommandInteraction): Promise<void> {
  const command = spokenCommands.find(({ name }) => name === interaction.commandName);
  if (command === undefined) return;
  const isPrivate =
    command.isPrivate === "option" ? interaction.options.getBoolean("private") === true : command.isPrivate;
  await deferReply(interaction, isPrivate && interaction.guildId !== null, desk.log);
  const text = command.say((name) => optionText(interaction, name));
  await say(desk, interaction, isPrivate, text);
}

function optionText(interaction: ChatInputCommandInteraction, name: string): string {
  const option = interaction.options.get(name);
  return option?.type === ApplicationCommandOptionType.String ? String(option.value).trim() : "";
}

async function say(
  desk: Desk,
  interaction: ChatInputCommandInteraction,
  isPrivate: boolean,
  text: string,
): Promise<void> {
  const scope = isPrivate && interaction.guildId !== null ? "private" : "open";
  const author = await desk.outlast(() => authorOfInteraction(desk, interaction));
  const image = interaction.options.getAttachment("photograph");
  const images = image === null ? [] : [image];
  const taken = await desk.outlast(() => takePhotographs(desk, images, author.from));
  const place = await desk.outlast(() => placeFor(desk, interaction, scope, text, author.community));
  const { conversation, outlet } = place;
  await desk.turns.run(conversation, async () => {
    const said: IncomingMessage = {
      ...author,
      name: author.name.slice(0, 80),
      conversation,
      id: interaction.id,
      text,
      isPrivate: isPrivate || interaction.guildId === null,
      ...(taken.photographs.length === 0 ? {} : { photographs: [...taken.photographs] }),
    };
    const reply = await desk.receive(said);
    const before = [...(place.before === undefined ? [] : [place.before]), ...taken.remarks];
    await show(
      desk,
      {
        conversation,
        community: author.community,
        scope,
        user: interaction.user.id,
        from: author.from,
        asker: author.from,
        reply,
        replyId: interaction.id,
        before: before.length === 0 ? undefined : before.map((line) => `-# ${escaped(line)}`).join("\n"),
      },
      outlet,
    );
  });
}

interface PlaceFor {
  readonly conversation: string;
  readonly outlet: Outlet;
  readonly before?: string;
}

/** Where the server prefers threads, the question stands in the channel and its answer in the thread below it. */
async function placeFor(
  desk: Desk,
  interaction: ChatInputCommandInteraction,
  scope: "open" | "private",
  text: string,
  community: string,
): Promise<PlaceFor> {
  const { channelId, user } = interaction;
  const here = {
    conversation: conversationIn(channelId, scope, user.id),
    outlet: deferredOutlet(desk, interaction, scope),
  };
  const { answers } = await desk.settings.of(community);
  const mayBegin =
    interaction.channel !== null && !interaction.channel.isDMBased() && !interaction.channel.isThread();
  if (answers !== "thread" || scope === "private" || !mayBegin || interaction.commandName !== "ask")
    return here;
  const shown = await here.outlet.post(plainBody(asked(text)));
  const posted = await interaction.channel.messages.fetch(shown?.message ?? "").catch(() => undefined);
  if (posted === undefined) return here;
  const begun = await threadFrom(desk, posted, text);
  if (begun.channel === undefined)
    return begun.lacking === undefined ? here : { ...here, before: words.noThread(begun.lacking) };
  return {
    conversation: conversationIn(begun.channel.id, "open", user.id),
    outlet: threadOutlet(desk, begun.channel, user.id, interaction.id),
  };
}

const LONGEST_QUESTION = 2000;

/** What was asked, as it stands above its thread; with many marks to be made harmless it may be too long for a message. */
function asked(text: string): string {
  const whole = escaped(text);
  return whole.length <= LONGEST_QUESTION ? whole : escaped(fitted(text, LONGEST_QUESTION / 2));
}
