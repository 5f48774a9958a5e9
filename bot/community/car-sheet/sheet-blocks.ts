/** A car sheet as it is said in a chat. */
import type { Block } from "../../reply.ts";
import * as phrases from "../phrases/car-sheet.ts";
import type { CarSheet, SheetPart } from "./car-sheet.ts";

export function sheetBlocks({ handbookName, car, parts, date, edition }: CarSheet): readonly Block[] {
  return [
    {
      kind: "list",
      lead: phrases.title(handbookName),
      items: car.map(({ label, value }) => phrases.carLine(label, value)),
    },
    ...parts.map((part): Block => ({ kind: "list", lead: part.name, items: partLines(part) })),
    { kind: "edition", text: phrases.onDate(date, edition) },
  ];
}

const mostStanding = 3;

function partLines({ card, photographs }: SheetPart): readonly string[] {
  const pictures = photographs.length === 0 ? [] : [phrases.photographs(photographs.length)];
  if (card === undefined) return [phrases.notLooked, ...pictures];
  const answer = card.answer.find((block) => block.kind === "text" && block.tone === "answer");
  const ranking = card.standing.slice(0, mostStanding).map(({ name, words }) => `${name}, ${words}`);
  return [
    phrases.wanted(card.goal),
    ...(answer?.kind === "text" ? [answer.text] : [phrases.stands(ranking.join("; "))]),
    ...(card.seen.length === 0
      ? []
      : [phrases.seen(card.seen.map(({ label, value }) => `${label} ${value}`).join("; "))]),
    ...(card.settle === undefined ? [] : [card.settle]),
    ...pictures,
  ];
}
