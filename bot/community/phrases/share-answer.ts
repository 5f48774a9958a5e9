/** What is said when an answer is made a page of, and when it is no longer to be one. */
import { counted } from "../../conversation/phrases/grammar.ts";

export const nothingToShare = "There is no answer to share yet: ask about a part first.";
export const pageOfAnswer = (part: string) => `The answer about the ${part}, as a page`;
export const howToStop =
  "Whoever has the address can read it; it stays as the answer stands now. “Stop sharing answers” takes it back.";
export const nothingShared = "None of your answers is shared.";
export const unshared = (count: number) => `Taken back: ${counted(count, "page")}.`;
export const whyShared = "shared an answer";
export const whyUnshared = "took a shared answer back";
