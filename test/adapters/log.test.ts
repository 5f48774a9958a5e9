import { mkdtempSync, readFileSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import pino from "pino";
import { expect, test } from "vitest";
import type { LogLevel } from "../../adapters/configuration.ts";
import { logOptions, openLog } from "../../adapters/log.ts";

function logged(level: LogLevel, fields: object): Record<string, unknown> {
  const lines: string[] = [];
  pino(logOptions(level), { write: (line: string) => lines.push(line) }).info(fields, "an event");
  return JSON.parse(lines.join(""));
}

test("tokens and passwords are withheld at every level", () => {
  for (const level of ["info", "debug"] as const) {
    const line = logged(level, { token: "t0", database: { password: "p0" } });
    expect(JSON.stringify(line)).not.toMatch(/t0|p0/u);
  }
});

test("what people wrote is shown at debug and withheld above", () => {
  expect(logged("debug", { text: "my mirror" }).text).toBe("my mirror");
  expect(JSON.stringify(logged("info", { text: "my mirror", message: { text: "my mirror" } }))).not.toContain(
    "my mirror",
  );
});

test("a log in a file makes its folder and is for its owner's eyes", () => {
  const file = join(mkdtempSync(join(tmpdir(), "wm-")), "deeper", "log.jsonl");
  openLog({ level: "info", file }).info({ part: "door-mirror" }, "answered");
  expect(JSON.parse(readFileSync(file, "utf8"))).toMatchObject({ part: "door-mirror", msg: "answered" });
  expect(statSync(file).mode & 0o077).toBe(0);
});
