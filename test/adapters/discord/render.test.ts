import fc from "fast-check";
import { expect, test } from "vitest";
import { controlsOf, numbered } from "../../../adapters/discord/controls.ts";
import { caseKey, customId, readCustomId } from "../../../adapters/discord/custom-id.ts";
import { escaped } from "../../../adapters/discord/markdown.ts";
import { renderReply } from "../../../adapters/discord/render.ts";
import { splitText } from "../../../adapters/discord/split-text.ts";
import type { Block, Choice, Reply } from "../../../bot/index.ts";
import { messageTrouble } from "../../doubles/discord/limits.ts";
import { againstDescription } from "../../doubles/discord/published-description.ts";
import { demoKnowledge } from "../../support/demo-knowledge.ts";
import { hostileMessages } from "../../support/hostile-messages.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import { talk } from "../../support/talking.ts";
import { asRead } from "./as-read.ts";

const holder = { scope: "open", caseKey: "case-1", reply: "1300000000004194304" } as const;

const words = fc.oneof(
  fc.string({ maxLength: 300 }),
  fc.lorem({ maxCount: 60 }),
  fc.constantFrom("@everyone <@123456> [x](http://y)", "# big\n> quoted\n- listed"),
);
const choice: fc.Arbitrary<Choice> = fc.record({
  id: fc.string({ minLength: 1, maxLength: 20 }),
  label: words,
  say: words,
});
const block: fc.Arbitrary<Block> = fc.oneof(
  fc.record({
    kind: fc.constant("text" as const),
    text: fc.array(words, { maxLength: 20 }).map((all) => all.join(" ")),
  }),
  fc.record({ kind: fc.constant("list" as const), lead: words, items: fc.array(words, { maxLength: 30 }) }),
  fc.record({ kind: fc.constant("choices" as const), choices: fc.array(choice, { maxLength: 60 }) }),
  fc.record({
    kind: fc.constant("table" as const),
    caption: words,
    head: fc.constant(["kind", "when"]),
    rows: fc.array(fc.tuple(words, words), { maxLength: 12 }),
  }),
  fc.record({
    kind: fc.constant("question" as const),
    feature: fc.constant("finish"),
    text: fc.lorem({ maxCount: 40 }),
    effort: fc.constant(1),
    photographDoes: fc.boolean(),
    answers: fc.array(choice, { maxLength: 80 }),
    expects: fc.constantFrom("choice" as const, "date" as const),
    besides: fc.array(choice, { maxLength: 4 }),
  }),
);
const reply = fc.array(block, { maxLength: 6 }).map((blocks) => ({ blocks }) as unknown as Reply);

test("whatever the bot says keeps Discord's limits and its published description, on every page", () => {
  fc.assert(
    fc.property(reply, fc.nat({ max: 3 }), (said, page) => {
      const { content, rows } = renderReply(said, { holder, page });
      const body = { content: content || "x", components: rows, allowed_mentions: { parse: [] } };
      expect(messageTrouble(body)).toEqual([]);
      expect(againstDescription("MessageCreateRequestSchema", body)).toEqual([]);
    }),
    { seed: 11, numRuns: 150 },
  );
});

test("a text is split without losing a word, in pieces that fit, between sentences where there are any", () => {
  fc.assert(
    fc.property(
      fc.lorem({ maxCount: 200, mode: "sentences" }),
      fc.integer({ min: 200, max: 600 }),
      (text, room) => {
        const pieces = splitText(text, room);
        expect(pieces.every((piece) => piece.length <= room)).toBe(true);
        expect(pieces.join(" ").split(/\s+/u)).toEqual(text.split(/\s+/u));
        expect(pieces.every((piece) => piece.endsWith("."))).toBe(true);
      },
    ),
    { seed: 12, numRuns: 50 },
  );
});

test("nothing a member writes becomes formatting, a mention or a hidden link", () => {
  expect(escaped("**bold** _soft_ ~~gone~~ ||secret|| `code`")).toBe(
    "\\*\\*bold\\*\\* \\_soft\\_ \\~\\~gone\\~\\~ \\|\\|secret\\|\\| \\`code\\`",
  );
  expect(escaped("# heading\n> quote\n1. first\n- item")).toBe(
    "\\# heading\n\\> quote\n1\\. first\n\\- item",
  );
  expect(escaped("<@1234> @everyone [safe](http://else)")).toBe(
    "\\<@1234> @\u200beveryone [safe]\\(http://else)",
  );
});

test("hostile words in a conversation come out harmless", () => {
  const chance = chanceFrom(14);
  const hostile = hostileMessages(demoKnowledge().handbook, ["which rear spoiler is this?"]);
  for (let turn = 0; turn < 60; turn += 1) {
    const { reply: said } = talk("which rear spoiler is this?", hostile(chance));
    const { content, rows } = renderReply(said, { holder, page: 0 });
    expect(messageTrouble({ content, components: rows, allowed_mentions: { parse: [] } })).toEqual([]);
  }
});

test("every answer of a long question can be reached, and its number leads back to it", () => {
  const answers = Array.from({ length: 40 }, (_, at) => ({
    id: `a${at}`,
    label: `answer ${at}`,
    say: `answer ${at}`,
  }));
  const question = {
    kind: "question",
    feature: "f",
    text: "Which?",
    effort: 1,
    photographDoes: false,
    answers,
    expects: "choice",
    besides: [],
  } as const;
  const said = { blocks: [question] } as unknown as Reply;
  const { rows } = renderReply(said, { holder, page: 0 });
  const options = rows.flatMap(({ components }) =>
    components.flatMap((one) => ("options" in one ? (one.options ?? []) : [])),
  );
  expect(options).toHaveLength(40);
  const controls = numbered(controlsOf(said));
  for (const { label, value } of options) expect(controls[Number(value)]).toMatchObject({ label });
  expect(asRead(renderReply(said, { holder, page: 0 }).content)).toBe("Which?");
});

test("a custom id is read back as it was written, within 100 characters, and anything else is none of ours", () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 200 }), fc.nat({ max: 999 }), (id, number) => {
      const pressed = { ...holder, caseKey: caseKey(id), key: String(number) };
      const text = customId(pressed);
      expect(text.length).toBeLessThanOrEqual(100);
      expect(readCustomId(text)).toEqual(pressed);
    }),
    { seed: 13 },
  );
  for (const forged of ["", "o~a~b~c", "x~case-1~1~0", "o~case-1~1~0~0", "o~case-1~1~0;drop"])
    expect(readCustomId(forged)).toBeUndefined();
});
