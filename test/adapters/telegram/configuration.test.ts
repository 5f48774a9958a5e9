import { expect, test } from "vitest";
import { parseConfiguration } from "../../../adapters/configuration.ts";

const token = "123456:the-token_of-BotFather";

function telegramOf(environment: Readonly<Record<string, string>>) {
  const parsed = parseConfiguration(environment);
  return parsed.ok ? parsed.configuration.telegram : parsed.problems;
}

test("without a token the platform is left alone", () => {
  expect(telegramOf({})).toBeUndefined();
  expect(telegramOf({ TELEGRAM_API_ROOT: "http://127.0.0.1:8081" })).toBeUndefined();
});

test("a token alone polls the platform itself; a root of one's own loses the slashes at its end", () => {
  expect(telegramOf({ TELEGRAM_BOT_TOKEN: token })).toEqual({
    token,
    root: "https://api.telegram.org",
    webhook: undefined,
  });
  const own = { TELEGRAM_BOT_TOKEN: token, TELEGRAM_API_ROOT: "http://127.0.0.1:8081//" };
  expect(telegramOf(own)).toMatchObject({ root: "http://127.0.0.1:8081" });
});

test("a webhook needs its secret, and its port has a usual one", () => {
  const url = "https://bot.example/telegram";
  const hooked = { TELEGRAM_BOT_TOKEN: token, TELEGRAM_WEBHOOK_URL: url };
  expect(telegramOf(hooked)).toEqual(["TELEGRAM_WEBHOOK_SECRET: it is needed beside TELEGRAM_WEBHOOK_URL"]);
  const secret = "0123456789abcdef";
  expect(telegramOf({ ...hooked, TELEGRAM_WEBHOOK_SECRET: secret })).toMatchObject({
    webhook: { url, secret, port: 8443 },
  });
});

test("what is wrong is named without being shown", () => {
  const wrong = {
    TELEGRAM_BOT_TOKEN: "hunter2",
    TELEGRAM_API_ROOT: "ftp://hunter2",
    TELEGRAM_WEBHOOK_SECRET: "hunter2",
    TELEGRAM_WEBHOOK_PORT: "hunter2",
  };
  const problems = telegramOf(wrong);
  expect(problems).toHaveLength(4);
  expect(JSON.stringify(problems)).not.toContain("hunter2");
});
