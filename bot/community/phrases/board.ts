/** What is said of questions that stay open. */
import { counted } from "../../conversation/phrases/grammar.ts";

export const boardLead = (count: number) => `${counted(count, "question")} asked here, by part:`;
export const boardEmpty = "Nothing has been asked here yet.";
export const boardLine = (part: string, asked: number, answered: number, leftOpen: number) =>
  `${part}: ${asked} asked, ${answered} answered, ${leftOpen} left open`;
export const missingLead = "Not known when it was needed, the most often first:";
export const missingLine = (part: string, feature: string, count: number) =>
  `${part}, ${feature}: ${counted(count, "time")}`;
export const misbeliefsLead = "Misbeliefs that were stated:";
export const misbeliefLine = (claim: string, count: number) => `“${claim}”: ${counted(count, "time")}`;
export const receivedLead = (right: number, wrong: number) =>
  `Of the answers somebody came back to, ${right} turned out right and ${wrong} wrong.`;
export const wrongLine = (part: string, count: number) => `${part}: ${count} wrong`;

export const turnsOut = "When you find out, tell me whether it was right.";
export const wasRight = "it was right";
export const wasWrong = "it was wrong";
export const thanksRight = "Noted: it was right.";
export const thanksWrong =
  "Noted: it was wrong. “Ask a keeper” tells them what it is instead, so that the next one gets a better answer.";
