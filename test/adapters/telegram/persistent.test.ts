import { GrammyError, HttpError } from "grammy";
import { expect, test } from "vitest";
import { OutsideError } from "../../../adapters/errors.ts";
import { persistently } from "../../../adapters/telegram/persistent.ts";
import { silentLog } from "../../support/logs.ts";

/** How long is waited in all for work that fails so often, and whether it was given up. */
async function endured(failures: number, failure: Error) {
  const waited: number[] = [];
  let left = failures;
  let isLost = false;
  await persistently(
    silentLog,
    async () => {
      left -= 1;
      if (left >= 0) throw failure;
    },
    async () => {
      isLost = true;
    },
    async (milliseconds) => waited.push(milliseconds),
  );
  return { seconds: waited.reduce((sum, one) => sum + one, 0) / 1000, isLost };
}

test("a fault of ours is given up after seconds, a store that is gone waited for some ten minutes", async () => {
  expect(await endured(2, new Error("ours"))).toEqual({ seconds: 6, isLost: false });
  expect(await endured(3, new Error("ours"))).toEqual({ seconds: 6, isLost: true });
  expect(await endured(20, new OutsideError("store"))).toEqual({ seconds: 531, isLost: false });
  expect(await endured(99, new OutsideError("store"))).toEqual({ seconds: 621, isLost: true });
});

test("so long is a platform waited for that cannot be reached or asks to wait, and no refusal of it", async () => {
  const refused = (code: number) =>
    new GrammyError("refused", { ok: false, error_code: code, description: "no" }, "sendMessage", {});
  for (const failure of [refused(502), refused(429), new HttpError("cut", new Error("cut"))])
    expect(await endured(20, failure)).toEqual({ seconds: 531, isLost: false });
  expect(await endured(20, refused(400))).toEqual({ seconds: 6, isLost: true });
});

test("that it could not be said that something was lost ends nothing", async () => {
  const fails = async () => {
    throw new Error("no way");
  };
  await expect(persistently(silentLog, fails, fails, async () => undefined)).resolves.toBeUndefined();
});
