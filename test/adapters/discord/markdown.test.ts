import { expect, test } from "vitest";
import { escaped } from "../../../adapters/discord/markdown.ts";

test("an address stays what it is, and everything around it is harmless", () => {
  expect(escaped("see _https://club.example/a_b_c~1?part=door_mirror_ and *more*")).toBe(
    "see \\_https://club.example/a_b_c~1?part=door_mirror_ and \\*more\\*",
  );
  expect(escaped("https://club.example/a**b**")).toBe("https://club.example/a\\*\\*b\\*\\*");
  expect(escaped("[here](https://club.example/x_y)")).toBe("[here]\\(https://club.example/x_y)");
  expect(escaped("https://club.example/@everyone <@123>")).toBe(
    "https://club.example/@\u200beveryone \\<@123>",
  );
});
