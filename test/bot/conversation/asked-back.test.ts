import { expect, test } from "vitest";
import { talk } from "../../support/talking.ts";

test("what may be chatter is asked back in words that are then understood", () => {
  const asked = talk("steering wheel", "wearing leather gloves, it's freezing");
  expect(asked.text).toContain("By “leather gloves”, did you mean the steering wheel?");
  const [, words = ""] = /say “([^”]+)”/.exec(asked.text) ?? [];
  expect(talk("steering wheel", words).text).toContain(`I read – ${words}`);
});
