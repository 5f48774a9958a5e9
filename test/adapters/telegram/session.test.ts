import { expect, test } from "vitest";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import { randomSession } from "./random-session.ts";

test("through two hundred steps of chance, with faults between them, no limit is broken and nothing is said twice", async () => {
  const session = await randomSession(chanceFrom(1978), memoryStore());
  await session.steps(200);
  await session.close();
  expect(session.broken).toEqual([]);
}, 240_000);
