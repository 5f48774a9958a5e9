// The front door of the conversation room.
export { IncomingMessage, PressedAnswer } from "./message.ts";
export type { Clock, Log, Store } from "./ports.ts";
export type { Block, CaseSummary, Choice, QuestionBlock, Reply } from "./reply.ts";
