/** The guided set-up: a few questions one after another, each answered with a select or left as it is. Pure: settings in, message out. */
import type { APIActionRowComponent, APIComponentInMessageActionRow } from "discord.js";
import type { Settings } from "../../bot/index.ts";
import type { HandbookName } from "./desk.ts";
import { escaped, fitted } from "./markdown.ts";
import { setup as words } from "./phrases.ts";
import { bold } from "./render-blocks.ts";
import { type ServerSettings, serverSettings, withServer } from "./server-settings.ts";

type Row = APIActionRowComponent<APIComponentInMessageActionRow>;

export const setupPrefix = "setup~";
const LARGEST_SELECT = 25;

interface Step {
  readonly id: string;
  readonly asks: string;
  readonly row: (settings: Settings, handbooks: readonly HandbookName[]) => Row | undefined;
  /** The settings after these were chosen; values that are none of the offered ones change nothing. */
  readonly take: (settings: Settings, values: readonly string[]) => Settings;
}

const steps: readonly Step[] = [
  {
    id: "handbooks",
    asks: words.handbooks,
    row: ({ handbooks }, served) => handbookRow(served, handbooks),
    take: (settings, values) => ({ ...settings, handbooks: handbooksOf(settings, values) }),
  },
  {
    id: "answers",
    asks: words.answers,
    row: (settings) => choiceRow("answers", ["message", "thread"], serverSettings(settings).answers),
    take: (settings, [value]) =>
      value === "message" || value === "thread" ? withServer(settings, { answers: value }) : settings,
  },
  {
    id: "channels",
    asks: words.channels,
    row: (settings) =>
      channelRow("channels", words.pick.channels, serverSettings(settings).channels, LARGEST_SELECT),
    take: (settings, values) => withServer(settings, { channels: values }),
  },
  {
    id: "keepersChannel",
    asks: words.keepersChannel,
    row: (settings) => {
      const { keepersChannel } = serverSettings(settings);
      return channelRow(
        "keepersChannel",
        words.pick.keepersChannel,
        keepersChannel === null ? [] : [keepersChannel],
        1,
      );
    },
    take: (settings, [value]) => withServer(settings, { keepersChannel: value ?? null }),
  },
  {
    id: "keeperRoles",
    asks: words.keeperRoles,
    row: (settings) => roleRow(serverSettings(settings).keeperRoles),
    take: (settings, values) => withServer(settings, { keeperRoles: values }),
  },
  {
    id: "units",
    asks: words.units,
    row: ({ units }) => choiceRow("units", ["metric", "imperial", "both"], units),
    take: (settings, [value]) =>
      value === "metric" || value === "imperial" || value === "both"
        ? { ...settings, units: value }
        : settings,
  },
];

/** "Every handbook" is chosen already when nothing is set: whoever adds one to it means that one. */
function handbooksOf({ handbooks }: Settings, values: readonly string[]): string[] | null {
  const named = values.filter((value) => value !== "*");
  const isEvery = values.includes("*") && (handbooks !== null || named.length === 0);
  return isEvery || named.length === 0 ? null : named;
}

export interface SetupMessage {
  readonly content: string;
  readonly rows: readonly Row[];
}

export interface SetupScene {
  readonly settings: Settings;
  readonly handbooks: readonly HandbookName[];
  readonly hasMessageContent: boolean;
}

/** The question of a step, from 0; after the last one what has been set. */
export function setupMessage(step: number, scene: SetupScene): SetupMessage {
  const current = steps[step];
  if (current === undefined) return { content: `${settingsText(scene)}\n\n${escaped(words.done)}`, rows: [] };
  const row = current.row(scene.settings, scene.handbooks);
  const next: Row = {
    type: 1,
    components: [{ type: 2, style: 2, label: words.next, custom_id: `${setupPrefix}next~${step + 1}` }],
  };
  return {
    content: `${escaped(words.lead(step + 1, steps.length))}\n${bold(current.asks)}`,
    rows: row === undefined ? [next] : [row, next],
  };
}

/** What a select of the set-up was for, and which step comes after it. */
export function setupChange(
  id: string,
):
  | { readonly next: number; readonly take: (settings: Settings, values: readonly string[]) => Settings }
  | undefined {
  const [, name = "", number] = id.split("~");
  if (name === "next") return { next: Number(number), take: (settings) => settings };
  const at = steps.findIndex((step) => step.id === name);
  const step = steps[at];
  return step === undefined ? undefined : { next: at + 1, take: step.take };
}

/** The settings as they stand, one a line. */
export function settingsText({ settings, handbooks, hasMessageContent }: SetupScene): string {
  const server: ServerSettings = serverSettings(settings);
  const { shown, choices } = words;
  const books = settings.handbooks?.map((id) => handbooks.find((one) => one.id === id)?.name ?? id);
  const lines: readonly (readonly [string, string])[] = [
    [shown.handbooks, books === undefined ? choices.everyHandbook : escaped(books.join("; "))],
    [shown.answers, server.answers === "thread" ? choices.thread : choices.message],
    [shown.channels, server.channels.map((id) => `<#${id}>`).join(" ") || words.none],
    [shown.keepersChannel, server.keepersChannel === null ? words.none : `<#${server.keepersChannel}>`],
    [shown.keeperRoles, server.keeperRoles.map((id) => `<@&${id}>`).join(" ") || words.none],
    [shown.units, choices[settings.units]],
    [shown.content, hasMessageContent ? words.granted : words.notGranted],
  ];
  return lines.map(([label, value]) => `- ${escaped(label)}: ${value}`).join("\n");
}

function choiceRow(id: string, values: readonly (keyof typeof words.choices)[], current: string): Row {
  return {
    type: 1,
    components: [
      {
        type: 3,
        custom_id: `${setupPrefix}${id}`,
        options: values.map((value) => ({ label: words.choices[value], value, default: value === current })),
      },
    ],
  };
}

function handbookRow(served: readonly HandbookName[], current: readonly string[] | null): Row | undefined {
  if (served.length === 0) return undefined;
  const offered = served.slice(0, LARGEST_SELECT - 1);
  const options = [
    { label: words.choices.everyHandbook, value: "*", default: current === null },
    ...offered.map(({ id, name }) => ({
      label: fitted(name, 100),
      value: id,
      default: current?.includes(id) === true,
    })),
  ];
  return {
    type: 1,
    components: [
      {
        type: 3,
        custom_id: `${setupPrefix}handbooks`,
        placeholder: words.pick.handbooks,
        min_values: 1,
        max_values: options.length,
        options,
      },
    ],
  };
}

function channelRow(id: string, placeholder: string, current: readonly string[], most: number): Row {
  return {
    type: 1,
    components: [
      {
        type: 8,
        custom_id: `${setupPrefix}${id}`,
        placeholder,
        channel_types: [0, 5],
        min_values: 0,
        max_values: most,
        default_values: current.slice(0, most).map((channel) => ({ id: channel, type: "channel" as never })),
      },
    ],
  };
}

function roleRow(current: readonly string[]): Row {
  return {
    type: 1,
    components: [
      {
        type: 6,
        custom_id: `${setupPrefix}keeperRoles`,
        placeholder: words.pick.keeperRoles,
        min_values: 0,
        max_values: 10,
        default_values: current.slice(0, 10).map((role) => ({ id: role, type: "role" as never })),
      },
    ],
  };
}
