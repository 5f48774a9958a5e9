/**
 * The configuration: one zod object over the environment, parsed once. All problems are listed together and no
 * value is ever echoed, because a value may be a password. A file was not taken: containers and shells speak environment.
 */
import { delimiter } from "node:path";
import { fileURLToPath } from "node:url";
import { z } from "zod";
import { closestName } from "./closest-name.ts";
import { PublicAddress, WebhookSecrets } from "./web/configuration.ts";

/** The handbook that is shipped with the program, wherever it is started from. */
export const demonstrationHandbook: string = fileURLToPath(
  new URL("../knowledge/handbooks/wexcombe-shrike", import.meta.url),
);

/** The smallest one, from which the guide begins. */
export const smallestHandbook: string = fileURLToPath(
  new URL("../knowledge/handbooks/marlpit-wren", import.meta.url),
);

export const logLevels = ["fatal", "error", "warn", "info", "debug", "trace", "silent"] as const;
export type LogLevel = (typeof logLevels)[number];

const Environment = z.object({
  DATA_DIR: z.string().default("./data"),
  DATABASE_URL: z
    .string()
    .refine(isPostgresAddress, "an address that begins with postgres:// or postgresql:// is needed")
    .optional(),
  HANDBOOKS: z
    .string()
    .default(demonstrationHandbook)
    .transform(foldersOf)
    .refine((folders) => folders.length > 0, "at least one folder is needed"),
  PORT: z
    .string()
    .default("8787")
    .refine(isPort, "a whole number from 0 to 65535 is needed")
    .transform(Number),
  HOST: z
    .string()
    .default("127.0.0.1")
    .refine((host) => !/[\s/]/u.test(host), "a host name or address without a scheme or path is needed"),
  PUBLIC_ADDRESS: PublicAddress.optional(),
  WEBHOOK_SECRETS: WebhookSecrets.default(new Map()),
  SECRET_KEY: z.string().min(32, "at least 32 characters are needed").optional(),
  DISCORD_TOKEN: z.string().optional(),
  DISCORD_API_BASE: z
    .string()
    .refine(isApiBase, "an address that begins with http:// or https://, without /v10 at its end, is needed")
    .optional(),
  TELEGRAM_BOT_TOKEN: z
    .string()
    .regex(/^\d+:[\w-]+$/u, "the token that BotFather gave, as 123456:letters, is needed")
    .optional(),
  TELEGRAM_API_ROOT: z
    .string()
    .default("https://api.telegram.org")
    .refine(isRoot, "an address that begins with https:// or http:// is needed")
    .transform((root) => root.replace(/\/+$/u, "")),
  TELEGRAM_WEBHOOK_URL: z
    .string()
    .refine(isRoot, "an address that begins with https:// and that Telegram can reach is needed")
    .optional(),
  TELEGRAM_WEBHOOK_SECRET: z
    .string()
    .regex(/^[\w-]{16,256}$/u, "16 to 256 letters, digits, - or _ are needed")
    .optional(),
  TELEGRAM_WEBHOOK_PORT: z
    .string()
    .default("8443")
    .refine(isPort, "a whole number from 0 to 65535 is needed")
    .transform(Number),
  LOG_LEVEL: z.enum(logLevels, `one of ${logLevels.join(", ")} is needed`).default("info"),
});

export interface Configuration {
  readonly dataFolder: string;
  readonly databaseUrl: string | undefined;
  readonly handbookFolders: readonly string[];
  /** 0 lets the system choose a free one. */
  readonly port: number;
  readonly host: string;
  /** Where the pages are reached from outside, without a slash at the end; undefined: where they are served. */
  readonly publicAddress: string | undefined;
  /** By the name of the forum that signs with it. */
  readonly webhookSecrets: ReadonlyMap<string, string>;
  /** Undefined: one is kept in the data folder. */
  readonly secretKey: string | undefined;
  /** Undefined: the platform is not served. */
  readonly discordToken: string | undefined;
  /** Another place of Discord's HTTP API than its own. */
  readonly discordApiBase: string | undefined;
  readonly telegram: TelegramConfiguration | undefined;
  readonly logLevel: LogLevel;
}

export interface TelegramConfiguration {
  readonly token: string;
  /** Without a slash at the end. */
  readonly root: string;
  /** Undefined: long polling. */
  readonly webhook: { readonly url: string; readonly secret: string; readonly port: number } | undefined;
}

export type ConfigurationResult =
  | { readonly ok: true; readonly configuration: Configuration; readonly hints: readonly string[] }
  /** One line each: "NAME: what is needed". */
  | { readonly ok: false; readonly problems: readonly string[] };

/** The names that are read; everything else in the environment is somebody else's. */
export const variableNames: readonly string[] = Object.keys(Environment.shape);

/** The configuration in `environment`, or every problem it has. A variable that is set to nothing counts as not set. */
export function parseConfiguration(
  environment: Readonly<Record<string, string | undefined>>,
): ConfigurationResult {
  const given = Object.fromEntries(
    variableNames.flatMap((name) => {
      const value = environment[name]?.trim();
      return value === undefined || value === "" ? [] : [[name, value]];
    }),
  );
  const parsed = Environment.safeParse(given);
  if (!parsed.success) {
    const problems = parsed.error.issues.map((issue) => `${issue.path.join(".")}: ${issue.message}`);
    return { ok: false, problems };
  }
  const { data } = parsed;
  if (data.TELEGRAM_WEBHOOK_URL !== undefined && data.TELEGRAM_WEBHOOK_SECRET === undefined) {
    return { ok: false, problems: ["TELEGRAM_WEBHOOK_SECRET: it is needed beside TELEGRAM_WEBHOOK_URL"] };
  }
  const configuration: Configuration = {
    dataFolder: data.DATA_DIR,
    databaseUrl: data.DATABASE_URL,
    handbookFolders: data.HANDBOOKS,
    port: data.PORT,
    host: data.HOST,
    publicAddress: data.PUBLIC_ADDRESS,
    webhookSecrets: data.WEBHOOK_SECRETS,
    secretKey: data.SECRET_KEY,
    discordToken: data.DISCORD_TOKEN,
    discordApiBase: data.DISCORD_API_BASE?.replace(/\/+$/u, ""),
    telegram: telegramFrom(data),
    logLevel: data.LOG_LEVEL,
  };
  return { ok: true, configuration, hints: hintsFor(Object.keys(environment)) };
}

function telegramFrom(data: z.output<typeof Environment>): TelegramConfiguration | undefined {
  const { TELEGRAM_BOT_TOKEN: token, TELEGRAM_WEBHOOK_URL: url, TELEGRAM_WEBHOOK_SECRET: secret } = data;
  if (token === undefined) return undefined;
  const isHooked = url !== undefined && secret !== undefined;
  const webhook = isHooked ? { url, secret, port: data.TELEGRAM_WEBHOOK_PORT } : undefined;
  return { token, root: data.TELEGRAM_API_ROOT, webhook };
}

/** "did you mean" for variables that are one or two slips away from a known one and would be silently ignored. */
function hintsFor(names: readonly string[]): readonly string[] {
  return names
    .filter((name) => !variableNames.includes(name))
    .flatMap((name) => {
      const meant = closestName(name.toUpperCase(), variableNames);
      return meant === undefined ? [] : [`${name} is not read; did you mean ${meant}`];
    });
}

function isPostgresAddress(text: string): boolean {
  return /^postgres(?:ql)?:\/\/\S+$/u.test(text) && URL.canParse(text);
}

function isApiBase(text: string): boolean {
  return isRoot(text) && !/\/v\d+\/*$/u.test(text);
}

function isRoot(text: string): boolean {
  return /^https?:\/\/\S+$/u.test(text) && URL.canParse(text);
}

function isPort(text: string): boolean {
  return /^\d{1,5}$/u.test(text) && Number(text) <= 65535;
}

function foldersOf(text: string): readonly string[] {
  const separator = delimiter === ";" ? /[,;]/u : /[,:]/u;
  return text
    .split(separator)
    .map((folder) => folder.trim())
    .filter((folder) => folder !== "");
}
