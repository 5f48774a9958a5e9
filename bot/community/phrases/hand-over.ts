/** What is said when a case goes to the keepers, and when their answer comes back. */
import { counted, ended, quoted } from "../../conversation/phrases/grammar.ts";
import { toldByKeeper } from "./keepers.ts";

export const handedOver = (id: string) =>
  `Your case is with the keepers now, with its notes, as ${id}. Their answer comes to you here. You can go on telling me what you see.`;
export const handedAlready = (id: string) => `This case is with the keepers already, as ${id}.`;
export const questionAsked = (id: string) =>
  `Your question is with the keepers now, as ${id}. Their answer comes to you here.`;
export const askedAlready = (id: string) => `This question is with the keepers already, as ${id}.`;
export const nothingToHandOver =
  "Tell me first what it is about; then I can hand your notes to a keeper. Or put it in your own words: “ask a keeper: what is this bracket?”";
/** Completes "on your …". */
export const question = "question";
export const caseNumber = (number: string) => `case ${number}`;
export const newForKeepers = (name: string, id: string) => `${name} asks the keepers (${id}):`;
export const howToAnswer = (id: string) => `“answer ${id}: your words”, or “ask back ${id}: your question”.`;
export const answerLabel = "answer";
export const askBackLabel = "ask back";
export const closeLabel = "close";
export const replyLabel = "reply";
export const queueLead = (count: number) => `${counted(count, "case")} waiting for a keeper:`;
export const queueLine = (id: string, name: string, part: string, date: string, stands: string) =>
  `${id}: ${part}, asked by ${name} on ${date}${stands}`;
export const askedBackMark = "; asked back";
export const queueEmpty = "Nothing waits for a keeper.";
export const noSuchCase = (id: string) => `No case ${id} was handed over here.`;
export const isSettled = (id: string) => `${id} is answered or closed already.`;
export const sayWhat = (verb: string, id: string) => `Say your words too: “${verb} ${id}: …”.`;
export const answered = (name: string) => `${name} has your answer.`;
export const askedBack = (name: string) => `${name} has your question.`;
export const replied = "The keepers have your reply.";
export const closed = (id: string) => `${id} is closed.`;
export const keeperAnswers = (keeper: string, matter: string) => `${toldByKeeper(keeper)} on your ${matter}:`;
export const keeperAsks = (keeper: string, matter: string) =>
  `${toldByKeeper(keeper)} asks about your ${matter}:`;
export const howToReply = (id: string) => `“reply ${id}: your words” goes back to the keepers.`;
export const askerReplies = (name: string, id: string) => `${name} replies on ${id}:`;
export const keeperClosed = (keeper: string, reason: string) =>
  `${toldByKeeper(keeper)} has closed your case${reason === "" ? "." : `: ${ended(reason)}`}`;
export const notYours = "Only who asked can reply to the keepers’ question.";
export const pinThis = "pin this answer";
export const partUnknown = "part not named";

export const whyHandedOver = (id: string) => `handed over ${id}`;
export const whyAnswered = (id: string, words: string) => `answered ${id}: ${quoted(words)}`;
export const whyAskedBack = (id: string) => `asked back on ${id}`;
export const whyReplied = (id: string) => `replied on ${id}`;
export const whyClosed = (id: string, reason: string) =>
  `closed ${id}${reason === "" ? "" : ` because ${reason}`}`;
