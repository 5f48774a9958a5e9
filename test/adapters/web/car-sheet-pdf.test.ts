import sharp from "sharp";
import { extractText, getDocumentProxy, getMeta } from "unpdf";
import { expect, test } from "vitest";
import { systemClock } from "../../../adapters/clock.ts";
import { openHandbook } from "../../../adapters/handbooks.ts";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { carSheetPdf } from "../../../adapters/web/pdf/car-sheet-pdf.ts";
import {
  answerCard,
  type CarSheet,
  communityMemories,
  conversationKind,
  knowledgeOf,
  openBot,
} from "../../../bot/index.ts";
import { shrike } from "../program.ts";
import { silent } from "./web-site.ts";

const knowledge = knowledgeOf((await openHandbook(shrike)).handbook);

async function sheetOf(said: readonly string[]): Promise<CarSheet> {
  const store = memoryStore();
  const bot = openBot({
    knowledge: () => [knowledge],
    store,
    memories: communityMemories(store),
    clock: systemClock(),
    log: silent,
    secretKey: "a secret key of the tests, long enough",
    platform: "web",
  });
  for (const text of said) await bot.receive({ conversation: "web:a", from: "web:a", text });
  const state = await store.current(conversationKind, "web:a");
  const card = answerCard([knowledge], state, { person: "web:a" });
  return {
    handbook: "wexcombe-shrike",
    handbookName: "Wexcombe Shrike",
    thing: "car",
    car: card?.car ?? [],
    parts: [
      { part: "rear-spoiler", name: "rear spoiler", card, photographs: [] },
      { part: "door-mirror", name: "door mirror", card: undefined, photographs: [] },
    ],
    date: "25 November 2026",
    edition: "Wexcombe Shrike, edition 0123abcd",
  };
}

const surroundings = {
  at: new Date(Date.UTC(2026, 10, 25)),
  address: "https://mark.example/sheet/home/0123",
  photograph: async () => undefined,
};
const said = [
  "which rear spoiler is this? rough inside, square tips, two drain notches, home market car built may 1980",
];

test("the sheet on paper says the car, each part's answer with its weights, the gaps, the sources, date and edition", async () => {
  const bytes = await carSheetPdf(await sheetOf(said), surroundings);
  const { text, totalPages } = await extractText(bytes, { mergePages: true });
  for (const words of [
    "Car sheet: Wexcombe Shrike",
    "25 November 2026",
    "edition 0123abcd",
    "May 1980",
    "First spoiler with drains",
    "very likely (92 %)",
    "drain notches: two drain notches (for the First spoiler with drains, weak)",
    "What was seen",
    "Would settle it",
    "Not looked at yet",
    "door mirror",
    "service bulletin 9",
    "https://mark.example/sheet/home/0123",
  ]) {
    expect(text.replaceAll(/\s+/gu, " ")).toContain(words);
  }
  expect(totalPages).toBeLessThanOrEqual(3);
  expect(text).toContain(`1 of ${totalPages}`);
});

test("the file has a title and its date, is tagged for reading aloud, and the same sheet gives the same bytes", async () => {
  const sheet = await sheetOf(said);
  const bytes = await carSheetPdf(sheet, surroundings);
  const { info } = await getMeta(new Uint8Array(bytes));
  expect(info).toMatchObject({
    Title: "Car sheet: Wexcombe Shrike",
    CreationDate: expect.stringContaining("20261125"),
  });
  expect(Buffer.from(bytes).toString("latin1")).toMatch(
    /\/Marked true[\s\S]*\/StructTreeRoot|\/StructTreeRoot[\s\S]*\/Marked true/u,
  );
  expect(Buffer.compare(Buffer.from(bytes), Buffer.from(await carSheetPdf(sheet, surroundings)))).toBe(0);
});

interface Piece {
  readonly str: string;
  readonly width: number;
  readonly transform: readonly number[];
}

/** What stands on each page, with its place in points from the left and from below. */
async function piecesOf(bytes: Uint8Array): Promise<readonly (readonly Piece[])[]> {
  const file = await getDocumentProxy(bytes);
  const numbers = Array.from({ length: file.numPages }, (_, index) => index + 1);
  return Promise.all(
    numbers.map(async (number) => {
      const { items } = await (await file.getPage(number)).getTextContent();
      return items.filter((item): item is typeof item & Piece => "str" in item && item.str.trim() !== "");
    }),
  );
}

test("an address too long for the foot is written smaller, clear of the page's number", async () => {
  const address = `https://witness-mark.a-club-with-a-long-name.example/sheet/discord%3A${"1".repeat(19)}/${"0".repeat(32)}`;
  const [first = []] = await piecesOf(await carSheetPdf(await sheetOf(said), { ...surroundings, address }));
  const foot = first.find(({ str }) => str === address);
  const number = first.find(({ str }) => /^1 of \d$/u.test(str));
  const end = (foot?.transform[4] ?? Number.POSITIVE_INFINITY) + (foot?.width ?? 0);
  expect(end).toBeLessThan(number?.transform[4] ?? 0);
});

test("a value longer than a page goes on, and what follows stands below it", async () => {
  const sheet = await sheetOf(said);
  const car = [
    { label: "remarks", value: "a word or two ".repeat(600) },
    { label: "built", value: "May 1980, after all" },
  ];
  const pages = await piecesOf(await carSheetPdf({ ...sheet, car }, surroundings));
  const page = pages.find((pieces) => pieces.some(({ str }) => str === "May 1980, after all")) ?? [];
  const heightOf = (words: (str: string) => boolean) =>
    page.filter(({ str }) => words(str)).map(({ transform }) => transform[5] ?? 0);
  const [after = 0] = heightOf((str) => str === "May 1980, after all");
  const before = heightOf((str) => str.includes("a word or two"));
  expect(before.length).toBeGreaterThan(0);
  expect(Math.min(...before)).toBeGreaterThan(after);
  expect(after).toBeGreaterThan(96);
});

test("photographs stand two to a row, none over the edge of a page", async () => {
  const sheet = await sheetOf(said);
  const jpeg = await sharp({ create: { width: 300, height: 200, channels: 3, background: "#806040" } })
    .jpeg()
    .toBuffer();
  const pagesWith = async (count: number) => {
    const photographs = Array.from({ length: count }, (_, number) => `${number}`);
    const parts = sheet.parts.map((part, index) => (index === 0 ? { ...part, photographs } : part));
    const bytes = await carSheetPdf({ ...sheet, parts }, { ...surroundings, photograph: async () => jpeg });
    return (await getDocumentProxy(bytes)).numPages;
  };
  expect(await pagesWith(2)).toBe(await pagesWith(1));
  // Three rows to a page.
  expect((await pagesWith(14)) - (await pagesWith(2))).toBeLessThanOrEqual(2);
});

test("what a member wrote stands in it as it was written, in every alphabet the letters have", async () => {
  const sheet = await sheetOf(said);
  const odd = "<b>Škoda</b> Ωμέγα Москва ½ × “quoted” (\\) %PDF";
  const bytes = await carSheetPdf({ ...sheet, car: [{ label: odd, value: odd }] }, surroundings);
  const { text } = await extractText(bytes, { mergePages: true });
  expect(text.replaceAll(/\s+/gu, " ")).toContain("Škoda</b> Ωμέγα Москва ½ ×");
});
