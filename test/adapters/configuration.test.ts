import { existsSync } from "node:fs";
import { isAbsolute } from "node:path";
import { expect, test } from "vitest";
import { demonstrationHandbook, parseConfiguration } from "../../adapters/configuration.ts";

function configured(environment: Record<string, string | undefined>) {
  const result = parseConfiguration(environment);
  if (!result.ok) throw new Error(result.problems.join("; "));
  return result;
}

function problemsOf(environment: Record<string, string>): readonly string[] {
  const result = parseConfiguration(environment);
  return result.ok ? [] : result.problems;
}

test("an empty environment gives the documented defaults", () => {
  expect(configured({}).configuration).toEqual({
    dataFolder: "./data",
    databaseUrl: undefined,
    handbookFolders: [demonstrationHandbook],
    port: 8787,
    host: "127.0.0.1",
    publicAddress: undefined,
    webhookSecrets: new Map(),
    logLevel: "info",
  });
});

test("the shipped handbook is found from wherever the program is started", () => {
  expect(isAbsolute(demonstrationHandbook)).toBe(true);
  expect(existsSync(demonstrationHandbook)).toBe(true);
});

test("a variable set to nothing counts as not set", () => {
  expect(configured({ PORT: "", DATABASE_URL: "  ", HANDBOOKS: "" }).configuration).toEqual(
    configured({}).configuration,
  );
});

test("handbook folders are separated by commas or as paths are", () => {
  expect(configured({ HANDBOOKS: "books/one, books/two" }).configuration.handbookFolders).toEqual([
    "books/one",
    "books/two",
  ]);
});

test("all problems are listed at once, by name", () => {
  const problems = problemsOf({
    PORT: "70000",
    LOG_LEVEL: "loud",
    DATABASE_URL: "mysql://somewhere",
    HANDBOOKS: ",",
    HOST: "http://here",
  });
  expect(problems.map((problem) => problem.split(":")[0])).toEqual([
    "DATABASE_URL",
    "HANDBOOKS",
    "PORT",
    "HOST",
    "LOG_LEVEL",
  ]);
});

test("a value is never echoed, for it may be a password", () => {
  const secret = "hunter-of-mirrors";
  for (const name of ["PORT", "LOG_LEVEL", "DATABASE_URL"]) {
    const problems = problemsOf({ [name]: secret });
    expect(problems).toHaveLength(1);
    expect(problems.join()).not.toContain(secret);
  }
});

test("both spellings of a Postgres address are taken", () => {
  for (const scheme of ["postgres", "postgresql"]) {
    const address = `${scheme}://club:secret@db.example/club`;
    expect(configured({ DATABASE_URL: address }).configuration.databaseUrl).toBe(address);
  }
});

test("the public address is an origin: a scheme and a host, and no path", () => {
  expect(configured({ PUBLIC_ADDRESS: "https://mark.example/" }).configuration.publicAddress).toBe(
    "https://mark.example",
  );
  for (const address of [
    "mark.example",
    "ftp://mark.example",
    "https://mark.example/club",
    "https://a@b.example",
  ]) {
    expect(problemsOf({ PUBLIC_ADDRESS: address })).toHaveLength(1);
  }
});

test("each forum has a name and a secret of its own, and a secret that is short or twice named is refused", () => {
  const secret = (letter: string) => `whsec_${letter.repeat(32)}`;
  const both = { WEBHOOK_SECRETS: `forum=${secret("a")}, club-board=${secret("b")}` };
  expect([...configured(both).configuration.webhookSecrets]).toEqual([
    ["forum", secret("a")],
    ["club-board", secret("b")],
  ]);
  for (const text of [
    secret("a"),
    "forum=whsec_short",
    `Forum=${secret("a")}`,
    `a=${secret("a")},a=${secret("b")}`,
  ]) {
    const [problem, ...others] = problemsOf({ WEBHOOK_SECRETS: text });
    expect(others).toEqual([]);
    expect(problem).toMatch(/^WEBHOOK_SECRETS: /u);
    expect(problem).not.toContain("aaaa");
  }
});

test("a name one or two slips from a known one is hinted at", () => {
  expect(configured({ HANDBOOK: "x", LOGLEVEL: "debug", DATA_DRI: "y" }).hints).toEqual([
    "HANDBOOK is not read; did you mean HANDBOOKS",
    "LOGLEVEL is not read; did you mean LOG_LEVEL",
    "DATA_DRI is not read; did you mean DATA_DIR",
  ]);
});

test("an ordinary environment gives no hints", () => {
  const ordinary = ["HOME", "PATH", "PWD", "HOSTNAME", "SHELL", "TERM", "LANG", "USER", "LOGNAME", "EDITOR"];
  expect(configured(Object.fromEntries(ordinary.map((name) => [name, "x"]))).hints).toEqual([]);
});

test("a platform is served once its token is set, at another address where one is given", () => {
  const { configuration } = configured({
    DISCORD_TOKEN: "token",
    DISCORD_API_BASE: "http://127.0.0.1:9/api/",
  });
  expect(configuration).toMatchObject({ discordToken: "token", discordApiBase: "http://127.0.0.1:9/api" });
  expect(problemsOf({ DISCORD_API_BASE: "https://example.org/api/v10" })).toEqual([
    "DISCORD_API_BASE: an address that begins with http:// or https://, without /v10 at its end, is needed",
  ]);
});
