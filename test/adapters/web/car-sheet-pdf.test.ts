import { extractText, getMeta } from "unpdf";
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

test("what a member wrote stands in it as it was written, in every alphabet the letters have", async () => {
  const sheet = await sheetOf(said);
  const odd = "<b>Škoda</b> Ωμέγα Москва ½ × “quoted” (\\) %PDF";
  const bytes = await carSheetPdf({ ...sheet, car: [{ label: odd, value: odd }] }, surroundings);
  const { text } = await extractText(bytes, { mergePages: true });
  expect(text.replaceAll(/\s+/gu, " ")).toContain("Škoda</b> Ωμέγα Москва ½ ×");
});
