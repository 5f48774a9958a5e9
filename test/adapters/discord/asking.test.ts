import { afterEach, expect, test } from "vitest";
import { type Served, served } from "./served.ts";

let running: Served | undefined;
async function begin(options = {}): Promise<Served> {
  running = await served(options);
  return running;
}
afterEach(async () => {
  const violations = running?.double.world.violations ?? [];
  await running?.close();
  running = undefined;
  expect(violations).toEqual([]);
});

test("a question by slash command becomes one message that pressed answers edit until the answer stands", async () => {
  const s = await begin();
  const { people } = s.double;
  const asked = people.slash(s.ann, s.channel, "ask", {
    question: "which rear spoiler is this? square tips",
  });
  const message = await s.answer(asked);
  await s.settled();
  people.press(s.ann, message, "cannot tell");
  await s.settled();
  expect(message.edits).toBe(1);
  expect(s.double.written(s.channel.id)).toHaveLength(1);
});
