import { stripVTControlCharacters } from "node:util";
import { describe, expect, test } from "vitest";
import { commandLine, run, shrike, start } from "../program.ts";
import { hasPseudoTerminal, type Screen, screenOf } from "../screen.ts";

const chat = ["chat", "--handbook", shrike];
const ESCAPE = "\u001b";

describe("the chat in a pipe", () => {
  test("greets, gives three examples, answers each line, and ends with its input", async () => {
    const { status, out, err } = await run(commandLine, chat, "which rear spoiler is this?\nrough inside\n");
    expect({ status, err }).toEqual({ status: 0, err: "" });
    const greeting = out.split("\n").slice(0, 8).join("\n");
    expect(greeting.match(/^ {2}- /gmu)).toHaveLength(3);
    expect(out).toMatch(/inside/u);
  });

  test("prints neither prompt nor escapes, and no line over 80 columns", async () => {
    const { out } = await run(commandLine, chat, "which rear spoiler is this?\nwhy do you ask?\n");
    expect(out).not.toContain(ESCAPE);
    expect(out).not.toMatch(/^> /mu);
    for (const line of out.split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
  });

  test("its own three examples are understood", async () => {
    const { out } = await run(commandLine, chat, "bye\n");
    const examples = out.split("\n").flatMap((line) => (line.startsWith("  - ") ? [line.slice(4)] : []));
    expect(examples).toHaveLength(3);
    for (const example of examples) {
      const message = `${JSON.stringify({ from: "u1", text: example })}\n`;
      const reply = await run(commandLine, ["converse", "--handbook", shrike, "--json"], message);
      expect(JSON.parse(reply.out).part, example).not.toBeNull();
    }
  });

  test("a number answers the question before it", async () => {
    const { out } = await run(commandLine, chat, "which rear spoiler is this?\n1\n");
    const [, second = ""] = out.split("I read", 2);
    expect(second).not.toBe("");
  });

  test("bye ends it, and what follows is not answered", async () => {
    const one = await run(commandLine, chat, "which rear spoiler is this?\nBye\n");
    const more = await run(commandLine, chat, "which rear spoiler is this?\nBye\nrough inside\n");
    expect(more).toEqual(one);
  });

  test("a reader that stops reading ends it quietly", async () => {
    const running = start(commandLine, chat);
    await running.lines(2);
    running.process.stdout?.destroy();
    running.write("which rear spoiler is this?\nrough inside\n".repeat(50));
    running.process.stdin?.end();
    expect(await running.ended).toMatchObject({ status: 0, err: "" });
  });
});

function atTerminal(keys: readonly string[], environment: Record<string, string> = {}): Promise<Screen> {
  return screenOf([commandLine, ...chat], keys, { environment });
}

describe.skipIf(!hasPseudoTerminal)("the chat at a terminal (needs script of util-linux)", () => {
  test("prompts, answers in colour, and ends with Ctrl-D", async () => {
    const { text, status } = await atTerminal(["which rear spoiler is this?\r"]);
    expect(status).toBe(0);
    expect(text).toContain(`${ESCAPE}[1m`);
    expect(stripVTControlCharacters(text)).toMatch(/^\r?> /mu);
  });

  test("NO_COLOR takes every colour away", async () => {
    const { text } = await atTerminal(["which rear spoiler is this?\r"], { NO_COLOR: "1" });
    expect(text).toContain("spoiler");
    expect(text.split(ESCAPE).some((piece) => /^\[[0-9;]*m/u.test(piece))).toBe(false);
  });

  test("Ctrl-C ends it cleanly", async () => {
    expect((await atTerminal(["\u0003"])).status).toBe(0);
  });

  test("lines pasted together are one message", async () => {
    const { text } = await atTerminal(["rear spoiler here\rrough inside\r1180 mm wide\r"]);
    const read = stripVTControlCharacters(text).match(/I read/gu) ?? [];
    expect(read).toHaveLength(1);
  });
});

describe.skipIf(!hasPseudoTerminal)("notices at a terminal (needs script of util-linux)", () => {
  test("what is for the keepers of home is told to its owner between messages", async () => {
    const { text } = await atTerminal(["which rear spoiler is this?\r", "ask a keeper\r"]);
    const plain = stripVTControlCharacters(text).replace(/\s+/gu, " ");
    expect(plain.match(/The owner asks the keepers/gu)).toHaveLength(1);
  });
});

test("in a pipe it is told after the reply, once", async () => {
  const { out } = await run(commandLine, chat, "which rear spoiler is this?\nask a keeper\nrough inside\n");
  expect(out.match(/asks the keepers/gu)).toHaveLength(1);
});
