import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { commandLine, newFolder, run, shrike, start } from "../program.ts";

const json = ["converse", "--handbook", shrike, "--json"];

function input(...messages: readonly object[]): string {
  return messages.map((message) => `${JSON.stringify(message)}\n`).join("");
}

function replies(out: string) {
  return out
    .split("\n")
    .filter((line) => line !== "")
    .map((line) => JSON.parse(line));
}

const asked = { from: "u1", text: "which rear spoiler is this?" };

describe("converse --json", () => {
  test("answers a line with a line that has the documented keys in their order", async () => {
    const { status, out, err } = await run(commandLine, json, input(asked));
    expect({ status, err }).toEqual({ status: 0, err: "" });
    const [reply, ...others] = replies(out);
    expect(others).toEqual([]);
    expect(Object.keys(reply)).toEqual([
      "case",
      "part",
      "goal",
      "car",
      "understood",
      "ranking",
      "verdict",
      "question",
      "done",
      "uncertainty",
      "pinned",
      "cautions",
      "sources",
      "text",
    ]);
    expect(reply).toMatchObject({ part: "rear-spoiler", goal: "which-variant", done: false });
    expect(reply.question.answers.length).toBeGreaterThan(1);
  });

  test("answers each line before the next is written", async () => {
    const running = start(commandLine, json);
    running.write(input(asked));
    const [first] = replies((await running.lines(1)).join("\n"));
    const { feature, answers } = first.question;
    running.write(input({ from: "u1", answer: { feature, state: answers[0].id } }));
    const [, second] = replies((await running.lines(2)).join("\n"));
    expect(second.case).toBe(first.case);
    expect(second.understood.map((fact: { feature: string }) => fact.feature)).toContain(feature);
    running.process.stdin?.end();
    expect((await running.ended).status).toBe(0);
  });

  test("takes a reading, cannot tell, and a goal", async () => {
    const { status, out } = await run(
      commandLine,
      json,
      input(
        { ...asked, goal: "genuine" },
        { from: "u1", answer: { feature: "width", reading: "1180 mm" } },
        { from: "u1", answer: { feature: "inside-finish", cannotTell: true } },
      ),
    );
    const [first, second] = replies(out);
    expect(status).toBe(0);
    expect(first.goal).toBe("genuine");
    expect(second.understood).toEqual([expect.objectContaining({ feature: "width" })]);
  });

  test("keeps cases apart that a script names itself", async () => {
    const { out } = await run(
      commandLine,
      json,
      input(
        { from: "u1", case: "barn", text: "rear spoiler, rough inside" },
        { from: "u1", case: "shop", text: "which door mirror is this?" },
        { from: "u1", case: "barn", text: "it is 1180 mm wide" },
      ),
    );
    const told = replies(out);
    expect(told.map((reply) => [reply.case, reply.part])).toEqual([
      ["barn", "rear-spoiler"],
      ["shop", "door-mirror"],
      ["barn", "rear-spoiler"],
    ]);
    expect(told[2].understood.map((fact: { feature: string }) => fact.feature)).toContain("inside-finish");
  });

  test("gives the same bytes for the same lines", async () => {
    const lines = input(asked, { from: "u1", text: "rough inside, 46 inches wide" });
    const once = await run(commandLine, json, lines);
    const again = await run(commandLine, json, lines);
    expect(again.out).toBe(once.out);
  });
});

describe("a line that cannot be used ends the program with status 2 and one line of words", () => {
  const cases: readonly [string, string, RegExp][] = [
    ["no JSON", "{oops\n", /^line 2: not JSON; one object a line is needed\n$/u],
    ["no object", "[]\n", /^line 2: [^\n]+\n$/u],
    ["nobody speaks", input({ text: "hello" }), /^line 2: from: [^\n]+\n$/u],
    ["nothing is said", input({ from: "u1" }), /^line 2: text, answer or goal is needed\n$/u],
    ["a key is unknown", input({ ...asked, mood: "fine" }), /^line 2: [^\n]*mood[^\n]*\n$/u],
    ["a goal is unknown", input({ ...asked, goal: "value" }), /^line 2: goal: [^\n]+\n$/u],
    ["a case is unknown", input({ ...asked, case: "case-9" }), /^line 2: unknown case: "case-9"\n$/u],
    [
      "a feature is unknown",
      input({ from: "u1", answer: { feature: "colour-of-the-owner", state: "red" } }),
      /^line 2: unknown feature of rear-spoiler: "colour-of-the-owner"\n$/u,
    ],
    [
      "a state is one slip off",
      input({ from: "u1", answer: { feature: "inside-finish", state: "ruogh" } }),
      /^line 2: unknown state of inside-finish: "ruogh", did you mean "rough"\n$/u,
    ],
    [
      "an answer is neither state nor reading",
      input({ from: "u1", answer: { feature: "width" } }),
      /^line 2: answer: [^\n]+\n$/u,
    ],
    ["a line has no end", `${"x".repeat(100_001)}\n`, /^line 2: longer than 100000 characters\n$/u],
  ];

  test.each(cases)("%s", async (_name, line, words) => {
    const { status, out, err } = await run(commandLine, json, input(asked) + line + input(asked));
    expect(status).toBe(2);
    expect(err).toMatch(words);
    expect(replies(out)).toHaveLength(1);
  });
});

describe("converse --store", () => {
  test("a later process goes on where the earlier ended", async () => {
    const folder = newFolder();
    const words = [...json, "--store", "kept.sqlite"];
    await run(commandLine, words, input(asked, { from: "u1", text: "rough inside" }), { folder });
    const { out } = await run(commandLine, words, input({ from: "u1", text: "1180 mm wide" }), { folder });
    const [reply] = replies(out);
    expect(reply.understood.map((fact: { feature: string }) => fact.feature)).toEqual(
      expect.arrayContaining(["inside-finish", "width"]),
    );
  });

  test("a line that is sent again with the same id counts once and is answered alike", async () => {
    const folder = newFolder();
    const words = [...json, "--store", "kept.sqlite"];
    const once = input({ ...asked, id: "m1" });
    const first = await run(commandLine, words, once, { folder });
    const again = await run(commandLine, words, once, { folder });
    expect(again).toEqual(first);
    const { out } = await run(commandLine, ["store", "check", "--store", "kept.sqlite"], "", { folder });
    expect(out).toBe("kept.sqlite: sound, 3 records, 3 versions\n");
  });

  test("a line that fails leaves what was answered before it, whole, and nothing else", async () => {
    const folder = newFolder();
    const words = [...json, "--store", "kept.sqlite"];
    await run(commandLine, words, `${input(asked)}{oops\n`, { folder });
    const { out } = await run(commandLine, ["store", "check", "--store", "kept.sqlite"], "", { folder });
    expect(out).toBe("kept.sqlite: sound, 3 records, 3 versions\n");
    expect(readdirSync(folder)).toEqual(["kept.sqlite", "kept.sqlite.key"]);
  });

  test("kill -9 loses nothing that was answered, and the next process takes the store over", async () => {
    const folder = newFolder();
    const words = [...json, "--store", "kept.sqlite"];
    const running = start(commandLine, words, { folder });
    const names = ["barn", "shop", "shed", "lawn"];
    running.write(input(...names.map((name) => ({ ...asked, case: name }))));
    await running.lines(names.length);
    running.process.kill("SIGKILL");
    expect((await running.ended).signal).toBe("SIGKILL");
    const check = await run(commandLine, ["store", "check", "--store", "kept.sqlite"], "", { folder });
    expect(check.out).toBe("kept.sqlite: sound, 9 records, 12 versions\n");
    const { status, out } = await run(
      commandLine,
      words,
      input({ from: "u1", case: "barn", text: "rough inside" }),
      {
        folder,
      },
    );
    expect(status).toBe(0);
    expect(replies(out)[0].part).toBe("rear-spoiler");
  });

  test("a store that is no store is refused and left as it is", async () => {
    const folder = newFolder();
    writeFileSync(join(folder, "kept.sqlite"), "dear diary\n");
    const { status, err, out } = await run(commandLine, [...json, "--store", "kept.sqlite"], input(asked), {
      folder,
    });
    expect({ status, out, err }).toEqual({
      status: 2,
      out: "",
      err: "store: kept.sqlite is no store of this program, or is damaged; name another file, or put a backup back\n",
    });
    expect(readFileSync(join(folder, "kept.sqlite"), "utf8")).toBe("dear diary\n");
  });
});

describe("a handbook that cannot be used", () => {
  test("is said in one line, with status 2, before anything is answered", async () => {
    const folder = newFolder();
    for (const words of [
      ["converse", "--handbook", "missing", "--json"],
      ["chat", "--handbook", "missing"],
      ["model", "--handbook", "missing", "--part", "rear-spoiler"],
      ["simulate", "--handbook", "missing", "--part", "rear-spoiler"],
    ]) {
      const { status, out, err } = await run(commandLine, words, input(asked), { folder });
      expect({ status, out }).toEqual({ status: 2, out: "" });
      expect(err).toMatch(/^handbook missing: [^\n]+\n$/u);
    }
  });

  test("is checked to the last problem, each with file, line and column", async () => {
    const folder = newFolder();
    mkdirSync(join(folder, "book"));
    writeFileSync(join(folder, "book", "handbook.yaml"), "format: 1\nid: Not An Id\n");
    const { status, out, err } = await run(commandLine, ["check", "--handbook", "book"], "", { folder });
    expect(status).toBe(2);
    expect(out).toMatch(/^handbook\.yaml:2:\d+ {2}.+$/mu);
    expect(err).toMatch(/^handbook book: \d+ to mend\n$/u);
  });
});

test("without --json a line is words and so is the answer", async () => {
  const { status, out } = await run(
    commandLine,
    ["converse", "--handbook", shrike],
    "which rear spoiler is this?\n",
  );
  expect(status).toBe(0);
  expect(out).toContain("spoiler");
  expect(out).not.toMatch(/^\{/u);
});

test("converse without --json takes the number before an answer as that answer", async () => {
  const asked = "which rear spoiler is this? rough inside, square tips, home market car built may 1980";
  const { status, out } = await run(commandLine, ["converse", "--handbook", shrike], `${asked}\n1\n`);
  expect(status).toBe(0);
  expect(out).toMatch(/drain notches {2}two drain notches/u);
});
