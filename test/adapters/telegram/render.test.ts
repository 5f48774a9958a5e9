import fc from "fast-check";
import { expect, test } from "vitest";
import { keyboardOf } from "../../../adapters/telegram/buttons.ts";
import { captionOf, pagesOf } from "../../../adapters/telegram/pages.ts";
import { type Rendered, renderReply } from "../../../adapters/telegram/render.ts";
import { keyOf } from "../../../adapters/telegram/shown.ts";
import type { Block, Reply } from "../../../bot/index.ts";
import { readHtml } from "../../doubles/telegram/html-entities.ts";
import { buttonsOf, ringsFor } from "../../doubles/telegram/limits.ts";
import { plainSummary as summary } from "../../support/plain-summary.ts";

function rendered(...blocks: readonly Block[]): Rendered {
  return renderReply({ blocks, summary });
}

/** As a member reads it. */
function read(html: string): string {
  const reading = readHtml(html);
  if (!reading.ok) throw new Error(reading.problem);
  return reading.text;
}

const words = fc.oneof(
  fc.string({ unit: "binary", maxLength: 300 }),
  fc.string({ unit: "grapheme", maxLength: 300 }),
  fc.constantFrom(
    "<b>",
    "</code>",
    "a & b",
    "&lt;",
    "@karl_of_wexcombe",
    '<a href="x">',
    "\u202Eturned",
    "x".repeat(5000),
  ),
  fc.lorem({ mode: "sentences", maxCount: 60 }),
);
const choice = fc.record({ id: words, label: words, say: words });
const lines = fc.array(words, { maxLength: 12 });

const blocks: fc.Arbitrary<Block> = fc.oneof(
  fc.record({
    kind: fc.constant("text" as const),
    text: words,
    tone: fc.constantFrom("plain", "answer", "caution", "aside"),
  }),
  fc.record({
    kind: fc.constant("understood" as const),
    lead: words,
    items: fc.array(fc.record({ label: words, value: words, doubt: words }), { maxLength: 60 }),
    remarks: lines,
  }),
  fc.record({
    kind: fc.constant("standing" as const),
    lead: words,
    items: fc.array(
      fc.record({ name: words, probability: fc.double({ min: 0, max: 1, noNaN: true }), words }),
      { maxLength: 9 },
    ),
  }),
  fc.record({
    kind: fc.constant("evidence" as const),
    first: words,
    rival: words,
    items: fc.array(
      fc.record({
        words,
        bans: fc.double({ min: -4, max: 4, noNaN: true }),
        strength: words,
        sources: words,
      }),
      { maxLength: 9 },
    ),
  }),
  fc.record({
    kind: fc.constant("question" as const),
    feature: fc.string({ maxLength: 80 }),
    text: words,
    effort: fc.constant(1),
    photographDoes: fc.boolean(),
    answers: fc.array(choice, { maxLength: 60 }),
    expects: fc.constantFrom("choice", "measurement", "date", "words"),
    besides: fc.array(choice, { maxLength: 60 }),
  }),
  fc.record({
    kind: fc.constant("pinned" as const),
    pin: words,
    author: words,
    date: words,
    text: words,
    sources: lines,
    dispute: words,
  }),
  fc.record({
    kind: fc.constant("table" as const),
    caption: words,
    head: fc.array(words, { minLength: 1, maxLength: 4 }),
    rows: fc.array(fc.array(words, { maxLength: 4 }), { maxLength: 8 }),
  }),
  fc.record({ kind: fc.constant("list" as const), lead: words, items: lines }),
  fc.record({ kind: fc.constant("cautions" as const), lines }),
  fc.record({
    kind: fc.constant("sources" as const),
    items: fc.array(fc.record({ short: words, citation: words, grade: words }), { maxLength: 8 }),
  }),
  fc.record({ kind: fc.constant("choices" as const), choices: fc.array(choice, { maxLength: 150 }) }),
  fc.record({ kind: fc.constant("edition" as const), text: words }),
);

test("whatever a reply holds, every message is within the platform's limits, well formed, and rings for nobody", () => {
  fc.assert(
    fc.property(fc.array(blocks, { maxLength: 8 }), (several) => {
      const { pages, buttons } = rendered(...several);
      for (const page of pages) {
        const reading = readHtml(page);
        expect(reading).toMatchObject({ ok: true });
        if (!reading.ok) continue;
        expect(reading.text.trim().length).toBeGreaterThan(0);
        expect(reading.text.length).toBeLessThanOrEqual(4096);
        expect(reading.entities.length).toBeLessThanOrEqual(100);
        expect(ringsFor(reading.text)).toEqual([]);
      }
      const keyboard = keyboardOf(keyOf("telegram:1", "1:1"), buttons);
      expect(buttonsOf(keyboard).flat().length).toBe(buttons.flat().length);
    }),
    { seed: 1979, numRuns: 400 },
  );
});

test("paging loses no word and keeps their order", () => {
  fc.assert(
    fc.property(fc.lorem({ mode: "sentences", maxCount: 400 }), (text) => {
      const pages = pagesOf([{ look: "plain", spans: [{ text }] }]);
      expect(pages.map(read).join(" ").split(/\s+/u)).toEqual(text.split(/\s+/u));
    }),
    { seed: 1980, numRuns: 100 },
  );
});

test("a text longer than a message is parted at the end of a sentence", () => {
  const sentence = "The works milled the groove, and the reproduction has it cast in. ";
  const pages = rendered({ kind: "text", text: sentence.repeat(150) }).pages;
  expect(pages).toHaveLength(3);
  for (const page of pages) expect(page).toMatch(/^The works .* cast in\.\s?$/su);
});

test("a text without an end anywhere is parted between characters, never inside one", () => {
  const pages = rendered({ kind: "text", text: "🔧".repeat(5000) }).pages;
  expect(pages.map(read).join("")).toBe("🔧".repeat(5000));
  for (const page of pages) expect(page).not.toMatch(/\p{Surrogate}/u);
});

test("a caption of more than 1,024 characters ends where a sentence does", () => {
  const caption = captionOf(`${"A drawing of the foot from below. ".repeat(40)}`);
  expect(caption.length).toBeLessThanOrEqual(1024);
  expect(caption).toMatch(/from below\.…$/u);
  expect(captionOf("short")).toBe("short");
});

test("a caution, a pinned answer and sources keep apart from what the bot works out", () => {
  const { pages } = rendered(
    {
      kind: "pinned",
      pin: "P1",
      author: "Karl",
      date: "12 March 2026",
      text: "Two screws: first type.",
      sources: ["club file"],
      dispute: "Disputed.",
    },
    { kind: "cautions", lines: ["Goggles on."] },
    { kind: "sources", items: [{ short: "ledger", citation: "Works ledger, 1979", grade: "A" }] },
    { kind: "page", label: "the whole answer", path: "/case/1" },
  );
  expect(pages).toEqual([
    [
      "<b>Pinned answer by Karl, 12 March 2026:</b>",
      "<blockquote>Two screws: first type. [club file]</blockquote>",
      "! Disputed.",
      "<blockquote>! Goggles on.</blockquote>",
      "<blockquote expandable>[ledger] Works ledger, 1979 (grade A)</blockquote>",
    ].join("\n\n"),
  ]);
});

test("a page of the web is a link where the address is known", () => {
  const reply: Reply = { blocks: [{ kind: "page", label: "car & sheet", path: "/sheet/1" }], summary };
  expect(renderReply(reply, { publicAddress: "https://club.example" }).pages).toEqual([
    '<a href="https://club.example/sheet/1">car &amp; sheet</a>',
  ]);
});

test("a narrow table stands in columns, a wide one as a record a row", () => {
  const head = ["month", "cars"];
  const narrow = rendered({ kind: "table", caption: "Seen", head, rows: [["May 1980", "3"]] });
  expect(narrow.pages).toEqual(["<b>Seen</b>\n\n<pre>month     cars\nMay 1980  3</pre>"]);
  const row = ["groove", "square-cut, nearly always", "rounded bottom, nearly always"];
  const wide = (head: readonly string[]) => rendered({ kind: "table", caption: "", head, rows: [row] }).pages;
  expect(wide(["", "first", "second"])).toEqual([
    "<b>groove</b>\nfirst: square-cut, nearly always\nsecond: rounded bottom, nearly always",
  ]);
  expect(wide(["", "First-type mirror", "Reproduction"])).toEqual([
    "① First-type mirror\n② Reproduction\n\n<b>groove</b>\n① square-cut, nearly always\n② rounded bottom, nearly always",
  ]);
});
