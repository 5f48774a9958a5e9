import { expect, test } from "vitest";
import { newestSeen } from "../../../adapters/discord/newest-seen.ts";

test("what a new session tells first does not hide what was missed before it", () => {
  const seen = newestSeen();
  seen.saw(0, "9");
  seen.saw(0, "10");
  seen.saw(0, "8");
  seen.broke(0);
  seen.saw(0, "12");
  seen.broke(0);
  expect(seen.renewed(0)).toBe("10");
  expect(seen.renewed(0)).toBe("12");
});

test("what another shard has seen meanwhile says nothing of what this one missed", () => {
  const seen = newestSeen();
  seen.saw(0, "10");
  seen.broke(0);
  seen.saw(1, "14");
  expect(seen.renewed(0)).toBe("10");
  expect(seen.renewed(2)).toBeUndefined();
});

test("a session that is resumed has missed nothing", () => {
  const seen = newestSeen();
  seen.saw(0, "10");
  seen.broke(0);
  seen.resumed(0);
  seen.saw(0, "12");
  seen.broke(0);
  expect(seen.renewed(0)).toBe("12");
});
