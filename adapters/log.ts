/**
 * The log: pino, one JSON line an event, static messages with fields. It goes to stderr, or to a file while the
 * terminal chat owns the terminal, so that a log line never lands in a conversation.
 */
import { mkdirSync } from "node:fs";
import { dirname } from "node:path";
import pino, { type Logger } from "pino";
import type { LogLevel } from "./configuration.ts";

/** Redaction is the second net (pino matches exact depths only); the first is never to log such a field. */
const SECRET_FIELDS = ["token", "password", "authorization", "cookie", "databaseUrl", "DATABASE_URL"];

/** What people wrote: shown at debug and below, and nowhere else. */
const SPOKEN_FIELDS = ["text", "words", "message.text", "message.answer"];

export interface LogPlace {
  readonly level: LogLevel;
  /** Absent: stderr. */
  readonly file?: string;
}

/** A logger that writes as it is told. The file's folder is made; a folder that cannot be made throws. */
export function openLog(place: LogPlace): Logger {
  if (place.file !== undefined) mkdirSync(dirname(place.file), { recursive: true, mode: 0o700 });
  const destination = pino.destination({
    dest: place.file ?? 2,
    sync: true,
    ...(place.file === undefined ? {} : { mode: 0o600 }),
  });
  return pino(logOptions(place.level), destination);
}

/** Exported for the tests, which write to a stream in memory. */
export function logOptions(level: LogLevel): pino.LoggerOptions {
  const showsWords = level === "debug" || level === "trace";
  const paths = [...SECRET_FIELDS, ...SECRET_FIELDS.map((field) => `*.${field}`)];
  return {
    level,
    base: null,
    timestamp: pino.stdTimeFunctions.isoTime,
    redact: { paths: showsWords ? paths : [...paths, ...SPOKEN_FIELDS], censor: "(withheld)" },
  };
}
