// The front door of the conversation room.

// The bot, for a door
export type { Bot, Notice, NoticeOutcome, Suggestion } from "./bot.ts";
export { Settings } from "./bot.ts";
export type { CarSheet, SheetPart } from "./community/car-sheet/car-sheet.ts";
export { sharedSheetPath } from "./community/car-sheet/shared-sheet.ts";
export { type CommunityMemories, communityMemories } from "./community/community-memory.ts";
export { isImportToGoOn } from "./community/observations/exchange.ts";
export { sharedAnswerKind, transcriptKind } from "./community/pages/page-records.ts";
export {
  type CaseOnPage,
  type ObservationOnPage,
  type Pages,
  type PinOnPage,
  pagesOf,
} from "./community/pages/pages.ts";
export type { DoorKind } from "./community/privacy/door-kind.ts";
export { eraseAllDue } from "./community/privacy/erase-due.ts";
export { forgetOld } from "./community/privacy/forget-old.ts";
export { noSettings } from "./community/settings-record.ts";
export {
  Guest,
  newSignInLink,
  SignInLink,
  signInLinkId,
  signInLinkKind,
  signInPath,
} from "./community/sign-in/sign-in-link.ts";
// Conversation
export { describedCar } from "./conversation/apply-car.ts";
export { type Conversation, emptyConversation, readConversation } from "./conversation/conversation.ts";
export { type Knowledge, knowledgeOf, preparingKnowledge } from "./conversation/knowledge.ts";
export { wordedFor } from "./conversation/named-thing.ts";
export {
  builtWords,
  commonDateWords,
  dayWords,
  gradeSigns,
  gradesTooHopeful,
  gradeWords,
  groupsLean,
  groupWords,
  leastOfBoth,
  monthWords,
  notAsBuiltWords,
  notOneChange,
  oneVariantWords,
  pictureWords,
  runnerUpWords,
  shapeWords,
  sightingsCounted,
  speedWords,
  statedOutside,
  throughoutWords,
} from "./conversation/phrases/changeovers.ts";
export { changeInWords, moreChanges, nothingChanged } from "./conversation/phrases/editions.ts";
export { effortWords } from "./conversation/phrases/effort.ts";

export { type PhotographRefusal, photographRefusals } from "./conversation/phrases/photograph-refusals.ts";
export { pinnedLead } from "./conversation/phrases/pinned.ts";
export { type AnswerCard, answerCard } from "./conversation/saying/answer-card.ts";
// Charts, and the tables that say the same
export type { ChainChart } from "./conversation/saying/chain-chart.ts";
export type { ChangeoverChart } from "./conversation/saying/changeover-chart.ts";
export { type EvidenceChart, evidenceChart, evidenceTable } from "./conversation/saying/evidence-chart.ts";
export { type FittedChart, fittedChart, fittedTable } from "./conversation/saying/fitted-chart.ts";
export { sayClaim, whereItComesFrom } from "./conversation/saying/say-variant.ts";
export { step } from "./conversation/step.ts";
export { isWorthSaying } from "./conversation/worth-saying.ts";
// Editions of the handbooks
export { EditionRecord, editionKind } from "./editions/edition-record.ts";
export { keptHandbook } from "./editions/keep-edition.ts";
export { type EditionWatch, editionWatch } from "./editions/watch-editions.ts";
// Messages and replies
export { IncomingMessage, PressedAnswer, type Standing, standings } from "./message.ts";
export { openBot } from "./open-bot.ts";
export { plainText } from "./plain-text.ts";
// Ports
export type {
  Advance,
  Advanced,
  Alongside,
  Change,
  Clock,
  Current,
  ErasedToo,
  Log,
  Store,
  Version,
} from "./ports.ts";
export { conversationKind, type Receive, receiver } from "./receive.ts";
export type { Block, CaseSummary, Choice, QuestionBlock, Reply } from "./reply.ts";
