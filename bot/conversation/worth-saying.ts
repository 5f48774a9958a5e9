/**
 * Whether what was overheard is answered: where members talk to each other and the bot reads along, a reply that only shows that it could make
 * nothing of their words is a disturbance. What it was told by name, pressed or asked in private is always answered.
 */
import type { Block, Reply } from "../reply.ts";
import {
  nothingToStartOver,
  nothingToTakeBack,
  smallTalk,
  smallTalkInCase,
  yesOrNoToWhat,
} from "./phrases/commands.ts";
import {
  answerNotOnOffer,
  nothingSaid,
  notUnderstood,
  notYourCar,
  onlyPhotographs,
} from "./phrases/understood.ts";

/** Said to whoever speaks to the bot, and to nobody else. */
const idle: ReadonlySet<string> = new Set([
  smallTalk,
  smallTalkInCase,
  nothingToStartOver,
  nothingToTakeBack,
  yesOrNoToWhat,
  answerNotOnOffer,
  notUnderstood,
  notYourCar,
  nothingSaid,
  onlyPhotographs,
]);

/** True of a reply that took something in or tells something; of words alone, only while a case goes on. */
export function isWorthSaying({ blocks, summary }: Reply): boolean {
  if (blocks.some(tells)) return true;
  const isAsked = summary.part !== null && blocks.some(({ kind }) => kind === "question");
  return isAsked && blocks.some((block) => block.kind === "text" && !idle.has(block.text));
}

function tells(block: Block): boolean {
  switch (block.kind) {
    case "understood":
      return block.items.length > 0;
    case "text":
      return block.tone === "answer";
    case "question":
    case "choices":
    case "cautions":
    case "edition":
      return false;
    default:
      return true;
  }
}
