// The front door of the knowledge room: explicit names under headings; nothing else is imported from outside.

// Calendar
export { civilDayAt } from "./calendar/civil-day.ts";
export { formatInterval, parseDateText } from "./calendar/date-text.ts";
export { dayOfMilliseconds } from "./calendar/day-of-milliseconds.ts";
export type { Interval } from "./calendar/interval.ts";
export { midpoint, monthInterval } from "./calendar/interval.ts";
export { monthAndYear, monthNumber } from "./calendar/month-name.ts";
export type { CarWanted } from "./dating/cars-wanted.ts";
export { carsWanted } from "./dating/cars-wanted.ts";
export type { ChainChange, ChainReport } from "./dating/chain-report.ts";
export { chainReport } from "./dating/chain-report.ts";
export { chainsOf } from "./dating/chains-of.ts";
export type { Changeover } from "./dating/changeover.ts";
export { changeover } from "./dating/changeover.ts";
export type { MarketChangeover } from "./dating/changeover-by-market.ts";
export { changeoverByMarket } from "./dating/changeover-by-market.ts";
export type { ScopedChangeover } from "./dating/changeover-by-trim-and-market.ts";
export { changeoverByTrimAndMarket } from "./dating/changeover-by-trim-and-market.ts";
export type { ChainSetting } from "./dating/changeover-chain.ts";
// Dating
export { readCommaSeparated, unescapedCell, writeCommaSeparated } from "./dating/comma-separated.ts";
export type { ChangeSeen, CountedChanges } from "./dating/counted-changes.ts";
export {
  changesSeen,
  countedChanges,
  countSightings,
  learntChanges,
  posteriorSeen,
} from "./dating/counted-changes.ts";
export type { ChangeoverSetting } from "./dating/dated-change.ts";
export { EVEN_REPLACEMENTS } from "./dating/dated-change.ts";
export type { EndSighting, EndsOfUse } from "./dating/ends-of-use.ts";
export {
  type GroupedChangeovers,
  groupedChangeovers,
} from "./dating/grouped-changeovers.ts";
export type { UseEnd, UseLimit } from "./dating/last-sighting.ts";
export { firstSighting, lastSighting } from "./dating/last-sighting.ts";
export type { DocumentedPair } from "./dating/lead-learning.ts";
export { learnLead } from "./dating/lead-learning.ts";
export { type LeadPlausibility, leadPlausibility } from "./dating/lead-plausibility.ts";
export type { LikelyMonth } from "./dating/likely-month.ts";
export { likelyMonth } from "./dating/likely-month.ts";
export { swapByGrade } from "./dating/provenance-swap.ts";
export { replacementsSold } from "./dating/replacements-sold.ts";
export type { ChangeoverSighting } from "./dating/report-groups.ts";
export type { Refusal, Result } from "./dating/result.ts";
export type { NumbersBuilt } from "./dating/serial-numbers.ts";
export { numbersBuilt } from "./dating/serial-numbers.ts";
export type { ShapeOfChange, ShapesOfChange } from "./dating/shape-of-change.ts";
export { shapeOfChange } from "./dating/shape-of-change.ts";
export { shareOfVariant } from "./dating/share-of-variant.ts";
export type { Sighting } from "./dating/sighting.ts";
export { sightingsOfChain, sightingsOfChange } from "./dating/sighting.ts";
export { parseSightings } from "./dating/sightings.ts";
export { statedChange } from "./dating/stated-change.ts";
export type { Succession } from "./dating/successions.ts";
export { successionsOf, successionWindow } from "./dating/successions.ts";
// Digests
export { keyedDigest } from "./digest/keyed-digest.ts";
export { textDigest } from "./digest/text-digest.ts";
// Editions: what changed between two
export { changesBetween, findingChanges } from "./editions/changes-between.ts";
export { type HandbookChange, touchedBy } from "./editions/handbook-change.ts";

// Evidence: what is said of a part and of its car
export type { CarDescription, ProvenanceGrade } from "./evidence/car-description.ts";
export { provenanceGrades } from "./evidence/car-description.ts";
export type { Goal } from "./evidence/goal.ts";
export { goals, lambdaOfGoal, notInHandbook } from "./evidence/goal.ts";
export type { MeasurementUnit, Report, ReportValue } from "./evidence/report.ts";
export { notThere } from "./evidence/report.ts";

// Handbook
export { shortEdition } from "./handbook/edition.ts";
export { fileNotText, fileTooLarge, folderTooLarge, tooManyFiles } from "./handbook/file-check.ts";
export type { HandbookFile, HandbookLimits } from "./handbook/handbook-file.ts";
export {
  fileProblem,
  fileRole,
  handbookLimits,
  learntWordsPath,
  pathProblem,
} from "./handbook/handbook-file.ts";
export { atOnce, type InPieces } from "./handbook/in-pieces.ts";
export { handbookJsonSchemas } from "./handbook/json-schemas.ts";
export type { LoadedHandbook } from "./handbook/load-handbook.ts";
export { loadHandbook, loadingHandbook } from "./handbook/load-handbook.ts";
export { citation, featureById, partById, sourceById, stateName, variantById } from "./handbook/look-up.ts";
export { usualLead } from "./handbook/part-schema.ts";
export type { Problem } from "./handbook/problem.ts";
export { problemText, sortedProblems } from "./handbook/problem.ts";
export type {
  Cars,
  Claim,
  DateFeature,
  Feature,
  Handbook,
  LearntWords,
  PartKind,
  Source,
  Variant,
} from "./handbook/schema.ts";

// Identification
export { endDeviationMonths } from "./identification/as-built-mix.ts";
export type { CompiledPart } from "./identification/compiled-part.ts";
export { compilePart } from "./identification/compiled-part.ts";
export { nextMark } from "./identification/date-chain.ts";
export { duelOfVariants } from "./identification/duel.ts";
export type {
  BrokenDateLink,
  ClassProbability,
  Duel,
  Identification,
  ObservedState,
} from "./identification/identification.ts";
export type { Doubts } from "./identification/identify.ts";
export { doubtsAbout, identify } from "./identification/identify.ts";
export type { LeadTime, LearntLead } from "./identification/lead-time.ts";
export type { LearntChange } from "./identification/learnt-change.ts";
export type { ModelTables } from "./identification/model-tables.ts";
export { modelTables } from "./identification/model-tables.ts";
export { planQuestions } from "./identification/plan-questions.ts";
export type { QuietFact } from "./identification/quiet-facts.ts";
export { quietFacts } from "./identification/quiet-facts.ts";
export { shareOfState } from "./identification/share-of-state.ts";

// Information
export { mutualInformationBits } from "./information/mutual-information.ts";
export { dateAgo } from "./language/date-ago.ts";
export { findDates } from "./language/date-phrases.ts";
export { boundedEditDistance } from "./language/edit-distance.ts";
export {
  type AnnotationProblem,
  readAnnotatedMessages,
} from "./language/hearing/annotated-messages.ts";
export { learnWords, type TaughtMessage } from "./language/hearing/learn-words.ts";
export { isOftenTold, leastTimes, ofOftenTold, stateKey, timesTold } from "./language/hearing/often-told.ts";
export type { Lexicon } from "./language/lexicon.ts";
export { compileLexicon, compilingLexicon } from "./language/lexicon.ts";
export { findingsOfMaterial } from "./language/material-findings.ts";
export type {
  CarFinding,
  FeatureFinding,
  Intent,
  MessageReading,
  ReadingContext,
} from "./language/message-reading.ts";
export { readMessage } from "./language/read-message.ts";
export type { SerialFound } from "./language/serials.ts";
export { maskSerials } from "./language/serials.ts";
// Reading messages
export type { FoundText, TextIndex } from "./language/similar-texts.ts";
export { textIndex } from "./language/similar-texts.ts";
// Observers
export { groupedBy } from "./observers/grouped-by.ts";
export { type Label, observerReliability } from "./observers/observer-reliability.ts";
// Questions
export { nextQuestion } from "./questions/next-question.ts";
export type { Question, QuestionTable } from "./questions/question-table.ts";

// Review of a handbook
export { bestTell, cheapestTell, unsaidTell } from "./review/alike-variants.ts";
export { coverageByYear, type YearCoverage } from "./review/coverage-by-year.ts";
export { type Remark, reviewRules, type Severity, severities } from "./review/remark.ts";
export { type Review, reviewHandbook } from "./review/review-handbook.ts";

// Spreadsheets: a part kind's claims as a table, and back
export { applyTables } from "./spreadsheet/apply-tables.ts";
export { readHead } from "./spreadsheet/columns.ts";
export { type ReadTable, readTable, type TableQuestion } from "./spreadsheet/read-table.ts";
export { type Cell, type CellRemark, cellText, type Sheet } from "./spreadsheet/sheet.ts";
export { tableOfPart } from "./spreadsheet/table-of-part.ts";

// Trade knowledge
export { answerTradeQuestion } from "./trade/answer-trade-question.ts";
export { CAUTION_TAIL, cautionById } from "./trade/cautions.ts";
export { sayProbability } from "./trade/probability-words.ts";
export { readTradeEvidence } from "./trade/read-trade-evidence.ts";
export type { TradeAnswer, TradeEvidence } from "./trade/trade-reading.ts";
export { convertUnits } from "./trade/units.ts";
