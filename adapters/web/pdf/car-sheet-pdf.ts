/** A car sheet on paper, to be handed to a judge: the same words as its page, in the same order. */
import type { Block, CarSheet, SheetPart } from "../../../bot/index.ts";
import { answerPage, carSheet, evidence } from "../phrases.ts";
import { sheetSources } from "../render/car-sheet.ts";
import { type Paper, type Photograph, paper } from "./paper.ts";

/** Two bans, a hundred to one, fill a side. */
const FULL_BANS = 2;

/** `photograph`: the bytes behind an id. `address`: of the page, for the foot. The same sheet on the same day gives the same bytes. */
export async function carSheetPdf(
  sheet: CarSheet,
  { at, address, photograph }: SheetSurroundings,
): Promise<Uint8Array> {
  const title = carSheet.title(sheet.thing, sheet.handbookName);
  const on = paper(title, at);
  on.heading(title, 1);
  on.paragraph(`${answerPage.sharedOn(sheet.date)} · ${sheet.edition}`, "quiet");
  on.heading(answerPage.thing(sheet.thing), 2);
  if (sheet.car.length === 0) on.paragraph(carSheet.thingUnknown(sheet.thing));
  else on.facts(sheet.car);
  on.heading(carSheet.atAGlance, 2);
  on.facts(sheet.parts.map(glance));
  const gaps = sheet.parts.filter(({ card }) => card === undefined).map(({ name }) => name);
  for (const part of sheet.parts) {
    writePart(on, part);
    if (part.card !== undefined) await writePhotographs(on, part, photograph);
  }
  if (gaps.length > 0) {
    on.heading(carSheet.gaps, 2);
    on.paragraph(gaps.join("; "));
  }
  writeSources(on, sheet);
  on.paragraph(carSheet.judge, "quiet");
  return on.finished(address, carSheet.page);
}

export interface SheetSurroundings {
  readonly at: Date;
  readonly address: string;
  readonly photograph: (id: string) => Promise<Uint8Array | undefined>;
}

function glance({ name, card }: SheetPart): { readonly label: string; readonly value: string } {
  const [first] = card?.standing ?? [];
  return {
    label: name,
    value: first === undefined ? carSheet.notLooked : `${first.name}, ${first.words}`,
  };
}

function writePart(on: Paper, { name, card }: SheetPart): void {
  if (card === undefined) return;
  on.heading(name, 2);
  on.paragraph(answerPage.wanted(card.partName, card.goal), "quiet");
  for (const { name: kind, words, probability } of card.standing.slice(0, 3))
    on.bar(kind, words, probability);
  for (const block of card.answer) writeBlock(on, block);
  if (card.seen.length > 0) {
    on.heading(answerPage.seen, 3);
    on.facts(card.seen.map(({ label, value }) => ({ label, value })));
  }
  if (card.untold.length > 0) on.paragraph(answerPage.couldNotTell(card.untold.join("; ")), "quiet");
  if (card.settle !== undefined) on.paragraph(card.settle);
}

function writeBlock(on: Paper, block: Block): void {
  if (block.kind === "text") on.paragraph(block.text, block.tone === "answer" ? "strong" : "plain");
  if (block.kind === "list") {
    on.paragraph(block.lead);
    for (const item of block.items) on.paragraph(`– ${item}`);
  }
  if (block.kind === "table") {
    on.paragraph(block.caption);
    on.facts(block.rows.map(([label = "", ...cells]) => ({ label, value: cells.join(" · ") })));
  }
  if (block.kind === "evidence") writeEvidence(on, block);
}

function writeEvidence(on: Paper, { first, rival, items }: Extract<Block, { kind: "evidence" }>): void {
  on.paragraph(`◂ ${rival}   |   ${first} ▸`, "quiet");
  for (const { words, bans, strength, sources } of items) {
    const side = evidence.speaksFor(bans > 0 ? first : rival);
    const behind = sources === "" ? "" : ` [${sources}]`;
    on.balance(`${words} (${side}, ${strength})${behind}`, Math.max(-1, Math.min(1, bans / FULL_BANS)));
  }
}

async function writePhotographs(
  on: Paper,
  { name, photographs }: SheetPart,
  read: SheetSurroundings["photograph"],
): Promise<void> {
  const found: Photograph[] = [];
  for (const [index, id] of photographs.entries()) {
    const jpeg = await read(id);
    if (jpeg !== undefined) found.push({ jpeg, alternative: carSheet.photograph(name, index + 1) });
  }
  on.photographs(found);
}

function writeSources(on: Paper, { parts }: CarSheet): void {
  const sources = sheetSources(parts);
  if (sources.length === 0) return;
  on.heading(answerPage.sources, 2);
  on.facts(
    sources.map(({ short, citation, grade }) => ({
      label: `[${short}]`,
      value: `${citation} (grade ${grade})`,
    })),
  );
}
