/** The list of commands as the platform shows it: members' everywhere, keepers' to administrators and where the keepers meet; in each language. */
import type { Api } from "grammy";
import type { BotCommand, BotCommandScope } from "grammy/types";
import { commands } from "./commands.ts";
import { type Language, languages } from "./phrases.ts";

export async function registerCommands(api: Api): Promise<void> {
  for (const [index, language] of languages.entries()) {
    // The first language is everybody's whose own is not there.
    const shownTo = index === 0 ? {} : { language_code: language };
    const forMembers = listed("members", language);
    const forAll = [...forMembers, ...listed("keepers", language)];
    const scopes: readonly (readonly [BotCommandScope, readonly BotCommand[]])[] = [
      [{ type: "all_private_chats" }, forMembers],
      [{ type: "all_group_chats" }, forMembers],
      [{ type: "all_chat_administrators" }, forAll],
    ];
    for (const [scope, list] of scopes) await api.setMyCommands(list, { scope, ...shownTo });
  }
}

/** Everybody in the keepers' own chat sees what keepers can do. */
export async function registerKeepersCommands(api: Api, chat: number): Promise<void> {
  for (const [index, language] of languages.entries()) {
    const list = [...listed("keepers", language), ...listed("members", language)];
    const shownTo = index === 0 ? {} : { language_code: language };
    await api.setMyCommands(list, { scope: { type: "chat", chat_id: chat }, ...shownTo });
  }
}

function listed(whose: "members" | "keepers", language: Language): readonly BotCommand[] {
  return commands
    .filter((command) => command.for === whose)
    .map(({ name, description }) => ({ command: name, description: description[language] }));
}
