// Logs for tests: one that says nothing, one that remembers.
import type { Log } from "../../bot/index.ts";

export const silentLog: Log = { info: () => undefined, warn: () => undefined, error: () => undefined };

export interface LogLine {
  readonly level: "info" | "warn" | "error";
  readonly fields: object;
  readonly message: string;
}

export function rememberingLog(): { readonly log: Log; readonly lines: readonly LogLine[] } {
  const lines: LogLine[] = [];
  const at =
    (level: LogLine["level"]) =>
    (fields: object, message: string): void => {
      lines.push({ level, fields, message });
    };
  return { log: { info: at("info"), warn: at("warn"), error: at("error") }, lines };
}
