/**
 * The door to Discord: logs in, tells Discord the commands when they changed, and hands every event to its handler. A handler that
 * fails costs its one event; the member is told where that is still possible.
 */
import { type BaseInteraction, type Client, Events, type Message } from "discord.js";
import { catchUp } from "./catch-up.ts";
import { type Desk, type DiscordOptions, openDesk } from "./desk.ts";
import { newestSeen } from "./newest-seen.ts";
import { tellNotices } from "./notices.ts";
import { onCommand } from "./on-command.ts";
import { onForm } from "./on-form.ts";
import { onMenu, onPinForm, pinFormPrefix } from "./on-menu.ts";
import { onMessage } from "./on-message.ts";
import { onPress } from "./on-press.ts";
import { onSetup, onSetupPress } from "./on-setup.ts";
import { onTyping } from "./on-typing.ts";
import { openClient } from "./open-client.ts";
import { inviteLink } from "./permissions.ts";
import { registerCommands } from "./register-commands.ts";
import { sayInteractionLost, sayLost } from "./say-lost.ts";
import { setupPrefix } from "./setup-steps.ts";
import { troubleOf } from "./trouble.ts";

export type { DiscordOptions, HandbookName } from "./desk.ts";
export type { Photographs } from "./payload.ts";

export interface DiscordDoor {
  readonly where: string;
  /** Resolves when nothing that was heard is still being worked on. */
  settled(): Promise<void>;
  close(): Promise<void>;
}

/** Resolves when the bot is logged in; rejects with OutsideError when it cannot be. */
export async function startDiscord(options: DiscordOptions): Promise<DiscordDoor> {
  const { client, rest, application } = await openClient(options.token, options.apiBase);
  const closing = new AbortController();
  const desk = openDesk(client, options, closing.signal);
  const working = new Set<Promise<void>>();
  const work = (job: Promise<void>) => {
    working.add(job);
    void job.finally(() => working.delete(job));
  };
  const hear = (message: Message) =>
    work(onMessage(desk, message).catch((failure: unknown) => messageLost(desk, message, failure)));
  const seen = newestSeen();
  client.on(Events.MessageCreate, (message) => {
    seen.saw(message.guild?.shardId ?? 0, message.id);
    hear(message);
  });
  client.on(Events.InteractionCreate, (interaction) => {
    if (!desk.isNew(interaction.id)) return;
    work(
      onInteraction(desk, interaction).catch((failure: unknown) =>
        interactionLost(desk, interaction, failure),
      ),
    );
  });
  watch(client, desk);
  await registerCommands(rest, application);
  await loggedIn(client, options.token);
  const missed = { hear, closing: closing.signal };
  work(catchUp(desk, { ...missed, since: undefined }));
  client.on(Events.ShardReconnecting, seen.broke);
  client.on(Events.ShardResume, seen.resumed);
  client.on(Events.ShardReady, (shard) =>
    work(catchUp(desk, { ...missed, shard, since: seen.renewed(shard) })),
  );
  const stopNotices = tellNotices(desk);
  const settled = async () => {
    while (working.size > 0) await Promise.all(working);
  };
  return {
    where: client.isReady()
      ? `Discord as ${client.user.username}; invite it with ${inviteLink(client)}`
      : "Discord",
    settled,
    async close() {
      client.removeAllListeners(Events.MessageCreate);
      client.removeAllListeners(Events.InteractionCreate);
      client.removeAllListeners(Events.ShardReady);
      closing.abort();
      await stopNotices();
      await settled();
      await client.destroy();
    },
  };
}

async function loggedIn(client: Client, token: string): Promise<void> {
  const ready = new Promise<void>((resolve) => client.once(Events.ClientReady, () => resolve()));
  await client.login(token);
  await ready;
}

/** A rejection in a listener becomes the client's "error" event, and an unheard one would end the program. */
function watch(client: Client, { log }: Desk): void {
  client.on(Events.Error, (failure) => log.error({ err: failure }, "discord"));
  client.on(Events.ShardError, (failure, shard) => log.warn({ err: failure, shard }, "gateway"));
  client.on(Events.ShardReconnecting, (shard) => log.info({ shard }, "gateway reconnecting"));
  client.on(Events.ShardResume, (shard) => log.info({ shard }, "gateway resumed"));
  client.on(Events.ShardDisconnect, ({ code }, shard) =>
    log.error({ shard, code }, "gateway closed for good"),
  );
}

async function onInteraction(desk: Desk, interaction: BaseInteraction): Promise<void> {
  if (interaction.isAutocomplete()) return onTyping(desk, interaction);
  if (interaction.isMessageContextMenuCommand()) return onMenu(desk, interaction);
  if (interaction.isChatInputCommand()) {
    const isOurs = interaction.commandName === "setup" || interaction.commandName === "settings";
    return isOurs ? onSetup(desk, interaction) : onCommand(desk, interaction);
  }
  if (interaction.isModalSubmit()) {
    return interaction.customId.startsWith(pinFormPrefix)
      ? onPinForm(desk, interaction)
      : onForm(desk, interaction);
  }
  if (!interaction.isMessageComponent()) return;
  if (interaction.customId.startsWith(setupPrefix)) return onSetupPress(desk, interaction);
  if (interaction.isButton() || interaction.isStringSelectMenu()) return onPress(desk, interaction);
}

async function messageLost(desk: Desk, message: Message, failure: unknown): Promise<void> {
  desk.log.error({ err: failure, trouble: troubleOf(failure) }, "message lost");
  await told(desk, () => sayLost(desk, message, failure));
}

async function interactionLost(desk: Desk, interaction: BaseInteraction, failure: unknown): Promise<void> {
  desk.log.error({ err: failure, trouble: troubleOf(failure) }, "interaction lost");
  if (interaction.isRepliable()) await told(desk, () => sayInteractionLost(desk, interaction, failure));
}

async function told(desk: Desk, say: () => Promise<void>): Promise<void> {
  try {
    await say();
  } catch (failure) {
    desk.log.warn({ trouble: troubleOf(failure) }, "the member could not be told");
  }
}
