import { expect, test } from "vitest";
import { talk } from "../../support/talking.ts";

test("what may be chatter is asked back in words that are then understood", () => {
  const asked = talk("steering wheel", "Seats are black leather. Any idea on the wheel?");
  expect(asked.text).toContain("By “black leather”, did you mean the steering wheel?");
  const [, words = ""] = /say “([^”]+)”/.exec(asked.text) ?? [];
  expect(talk("steering wheel", words).text).toContain(`I read – ${words}`);
});
