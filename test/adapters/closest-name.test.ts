import { expect, test } from "vitest";
import { closestName } from "../../adapters/closest-name.ts";

test("a near name is named, a far one and a tie are not", () => {
  const commands = ["chat", "converse", "model", "check"];
  expect(closestName("convrese", commands)).toBe("converse");
  expect(closestName("spoiler", commands)).toBeUndefined();
  expect(closestName("chet", ["chat", "chit"])).toBeUndefined();
});

test("a short name allows one slip, a longer one two", () => {
  expect(closestName("HOTS", ["HOST"])).toBe("HOST");
  expect(closestName("HOME", ["HOST"])).toBeUndefined();
  expect(closestName("HANDBOKK", ["HANDBOOKS"])).toBe("HANDBOOKS");
});
