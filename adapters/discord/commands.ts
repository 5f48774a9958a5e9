/**
 * The slash commands and menus, as what Discord is told and as the words they say to the bot. A command does nothing of its own:
 * it is a sentence that need not be typed.
 */
import {
  type APIApplicationCommandOption,
  ApplicationCommandOptionType,
  ApplicationCommandType,
  InteractionContextType,
  PermissionFlagsBits,
  type RESTPutAPIApplicationCommandsJSONBody,
} from "discord.js";
import { menuNames, commandWords as words } from "./phrases.ts";

interface Spoken {
  readonly name: string;
  readonly description: string;
  readonly options: readonly APIApplicationCommandOption[];
  /** The sentence, from the options that were given. */
  readonly say: (option: (name: string) => string) => string;
  /** Only the one who typed it sees the answer: always, never, or as an option says. */
  readonly isPrivate: boolean | "option";
  readonly for: "everybody" | "keepers" | "owners";
  readonly inServersOnly?: boolean;
}

function text(
  name: string,
  description: string,
  required: boolean,
  more: object = {},
): APIApplicationCommandOption {
  return {
    type: ApplicationCommandOptionType.String,
    name,
    description,
    required,
    max_length: 2000,
    ...more,
  };
}

function choice(
  name: string,
  description: string,
  choices: Readonly<Record<string, string>>,
): APIApplicationCommandOption {
  return {
    type: ApplicationCommandOptionType.String,
    name,
    description,
    required: false,
    choices: Object.entries(choices).map(([value, label]) => ({ name: label, value })),
  };
}

const desk: Readonly<Record<string, string>> = {
  "keepers' queue": words.keepersQueue,
  keepers: words.keepersList,
  "open questions": words.keepersOpen,
  "invite a keeper": words.keepersInvite,
  audit: words.keepersAudit,
};

const own: Readonly<Record<string, string>> = {
  mine: words.mineShow,
  "export mine": words.mineExport,
  "erase mine": words.mineErase,
};

/** Commands that are sentences. /setup and /settings are not: they are about Discord itself. */
export const spokenCommands: readonly Spoken[] = [
  {
    name: "ask",
    description: words.ask,
    options: [
      text("question", words.askQuestion, true, { autocomplete: true }),
      {
        type: ApplicationCommandOptionType.Attachment,
        name: "photograph",
        description: words.askPhotograph,
        required: false,
      },
      {
        type: ApplicationCommandOptionType.Boolean,
        name: "private",
        description: words.askPrivate,
        required: false,
      },
    ],
    say: (option) => option("question"),
    isPrivate: "option",
    for: "everybody",
  },
  {
    name: "observe",
    description: words.observe,
    options: [],
    say: () => "record an observation",
    isPrivate: true,
    for: "everybody",
  },
  {
    name: "observations",
    description: words.observations,
    options: [],
    say: () => "observations",
    isPrivate: true,
    for: "everybody",
  },
  {
    name: "pins",
    description: words.pins,
    options: [],
    say: () => "pins",
    isPrivate: true,
    for: "everybody",
  },
  {
    name: "pin",
    description: words.pin,
    options: [text("answer", words.pinWords, true)],
    say: (option) => `pin this: ${option("answer")}`,
    isPrivate: true,
    for: "keepers",
  },
  {
    name: "sheet",
    description: words.sheet,
    options: [],
    say: () => "car sheet",
    isPrivate: true,
    for: "everybody",
  },
  {
    name: "changeovers",
    description: words.changeovers,
    options: [text("part", words.changeoversPart, false, { autocomplete: true })],
    say: (option) => (option("part") === "" ? "changeovers" : `changeovers of the ${option("part")}`),
    isPrivate: false,
    for: "everybody",
  },
  {
    name: "mine",
    description: words.mine,
    options: [choice("what", words.mineWhat, own)],
    say: (option) => option("what") || "mine",
    isPrivate: true,
    for: "everybody",
  },
  {
    name: "keepers",
    description: words.keepers,
    options: [choice("what", words.keepersWhat, desk)],
    say: (option) => option("what") || "keepers' queue",
    isPrivate: true,
    for: "keepers",
    inServersOnly: true,
  },
  {
    name: "redeem",
    description: words.redeem,
    options: [text("code", words.redeemCode, true)],
    say: (option) => `redeem ${option("code")}`,
    isPrivate: true,
    for: "everybody",
  },
  {
    name: "help",
    description: words.help,
    options: [],
    say: () => "help",
    isPrivate: true,
    for: "everybody",
  },
];

const everywhere = [InteractionContextType.Guild, InteractionContextType.BotDM];
const inServers = [InteractionContextType.Guild];
const forKeepers = String(PermissionFlagsBits.ManageMessages);
const forOwners = String(PermissionFlagsBits.ManageGuild);

/** Whether a keeper may do it is the bot's to decide; Discord only shows it to fewer people. */
function shownTo(whom: Spoken["for"]): string | null {
  if (whom === "everybody") return null;
  return whom === "keepers" ? forKeepers : forOwners;
}

/** All commands, as Discord is told. */
export function commandBodies(): RESTPutAPIApplicationCommandsJSONBody {
  const spoken = spokenCommands.map(({ name, description, options, for: whom, inServersOnly }) => ({
    type: ApplicationCommandType.ChatInput as const,
    name,
    description,
    options: [...options],
    default_member_permissions: shownTo(whom),
    contexts: inServersOnly === true ? inServers : everywhere,
  }));
  const owners = [
    { name: "setup", description: words.setup },
    { name: "settings", description: words.settings },
  ].map((one) => ({
    ...one,
    type: ApplicationCommandType.ChatInput as const,
    options: [],
    default_member_permissions: forOwners,
    contexts: inServers,
  }));
  const menus = [
    { name: menuNames.askAbout, default_member_permissions: null },
    { name: menuNames.observe, default_member_permissions: null },
    { name: menuNames.pin, default_member_permissions: forKeepers },
    { name: menuNames.pinHere, default_member_permissions: forKeepers },
  ].map((one) => ({ ...one, type: ApplicationCommandType.Message as const, contexts: inServers }));
  return [...spoken, ...owners, ...menus];
}
