/** What is said while somebody records what they saw, and of what was recorded. */
import type { ProvenanceGrade } from "../../../knowledge/index.ts";
import { counted, ended, quoted, withThe } from "../../conversation/phrases/grammar.ts";
import { toldByKeeper } from "./keepers.ts";

export const whichPart = "Which part did you see?";
export const whichKind = (part: string) => `Which kind of ${part} was it? Or say what you saw on it.`;
export const asTold = "what I told decides";
export const whichCar =
  "Which car was it on? Its build date to the month is best, with trim and market; the chassis number does too, and is not kept in clear.";
export const howKnown = "How well is this car’s history known?";
export const gradeChoices: Readonly<Record<ProvenanceGrade, string>> = {
  "documented-from-new": "documented from new",
  "one-owner": "one owner from new",
  "history-unknown": "not known",
  "known-replaced": "this part was replaced",
};
export const whenSeen = "When did you see it?";
export const today = "today";
export const notSure = "not sure";
export const anyPhotographs = "Have you photographs of it, or a link? Send them now.";
export const noneOfIt = "none";
export const mayCredit = "May your name stand with it?";
export const yes = "yes";
export const no = "no";
export const isThisRight = "Shall I record it so?";
export const recordIt = "record it";
export const back = "back";
export const leaveIt = "leave it";
export const cannotTell = "cannot tell";

export const draftLead = "To be recorded";
export const labelPart = "part";
export const labelKind = "kind";
export const labelSeen = "seen";
export const labelCar = "car";
export const labelGrade = "history";
export const labelDate = "seen on";
export const labelPhotographs = "photographs and links";
export const labelCredit = "your name stands with it";
export const carUnknown = "not told";
export const kindFromFacts = "what was told decides";
export const told = (feature: string, value: string) => `${feature}: ${value}`;

export const notRead = (words: string) => `I could not read ${quoted(words)} as an answer to that.`;
export const photographsKept = (count: number) => `${counted(count, "photograph")} kept with it so far.`;
export const nothingRecorded = "Nothing is recorded.";
export const recorded = (id: string) =>
  `Recorded as ${id}; it counts once a keeper has accepted it, and you hear of that here.`;
export const editedAgain = (id: string) => `${id} is changed and waits for a keeper again.`;
export const newObservation = (name: string, id: string) => `${name} has recorded an observation (${id})`;

export const whyRecorded = (id: string) => `recorded observation ${id}`;
export const whyEdited = (id: string) => `changed observation ${id}`;

export const stands = {
  waiting: "waiting for a keeper",
  accepted: "accepted",
  declined: "declined",
  withdrawn: "withdrawn",
} as const;
export const ownLead = "What you have recorded:";
export const waitingLead = (count: number) =>
  count === 1 ? "One observation waits for a keeper:" : `${count} observations wait for a keeper:`;
export const noneRecorded = "You have recorded nothing yet. “record an observation” begins.";
export const noneWaiting = "No observation waits for a keeper.";
export const line = (id: string, part: string, car: string, name: string, stand: string) =>
  `${id}: ${part}${car === "" ? "" : `, car ${car}`}, by ${name}; ${stand}`;
export const observationLead = (id: string, name: string, stand: string) =>
  `Observation ${id} by ${name}, ${stand}`;
export const byMember = "a member";
export const noSuchObservation = (id: string) => `There is no observation ${id} that you may see here.`;
export const factsSay = (ranking: string) => `By what was told it is: ${ranking}.`;
export const photograph = (number: number, name: string) => `photograph ${number}, sent by ${name}`;
export const wouldChange = "If it is accepted";
export const wouldChangeHead = ["", "now", "then"] as const;
export const wouldTeachNothing =
  "If it is accepted no number changes: the kind is not sure enough, or the car has no build date.";
export const shareOfKind = (kind: string) => `such a car was built with ${withThe(kind)}`;
export const shareOfState = (kind: string, feature: string, state: string) =>
  `${withThe(kind)} shows ${feature}: ${state}`;
export const leadOf = (mark: string) => `from ${withThe(mark)} to the car, usually`;
export const inMonths = (months: number) => `${months.toFixed(1)} months`;
export const changeBetween = (old: string, fresh: string) =>
  `${withThe(old)} gave way to ${withThe(fresh)} (90 %)`;
export const declinedBecause = (reason: string) => `Declined because ${reason}`;
export const dialogue = (name: string, words: string) => `${name}: ${quoted(words, 300)}`;
export const dialogueLead = "Said about it:";

export const accepted = (id: string) => `Accepted ${id}. It counts from the next answer on.`;
export const declined = (id: string) => `Declined ${id}; its author is told why.`;
export const withdrawn = (id: string) => `Withdrawn: ${id}. It counts no longer; its history stays.`;
export const asked = (name: string) => `${name} has your question.`;
export const replied = "The keepers have your reply.";
export const whyDecline = (id: string) => `Why is ${id} declined? Its author is told in your words.`;
export const whatToAsk = (name: string) => `What do you want to know from ${name}?`;
export const whatToReply = "What shall the keepers be told?";
export const authorHasLeft = (id: string) => `Whoever recorded ${id} has left; nobody can be asked.`;
export const nothingSaid = "Nothing is changed.";
export const already = (id: string, stand: string) => `${id} is ${stand} already.`;
export const onlyAuthor = "Only who recorded it can do that.";

export const toldAccepted = (keeper: string, id: string) =>
  `${toldByKeeper(keeper)} has accepted your observation ${id}. Thank you; it counts in answers from now on.`;
export const toldDeclined = (keeper: string, id: string, reason: string) =>
  `${toldByKeeper(keeper)} has declined your observation ${id} because ${ended(reason)} “edit observation ${id}” goes through it again.`;
export const toldAsked = (keeper: string, id: string) =>
  `${toldByKeeper(keeper)} asks about your observation ${id}:`;
export const howToReply = (id: string) => `“reply ${id}: your words” goes back to the keepers.`;
export const toldReplied = (name: string, id: string) => `${name} replies on observation ${id}:`;

export const whyAccepted = (id: string) => `accepted observation ${id}`;
export const whyDeclined = (id: string, reason: string) => `declined observation ${id} because ${reason}`;
export const whyWithdrawn = (id: string) => `withdrew observation ${id}`;
export const whyAsked = (id: string) => `asked about observation ${id}`;
export const whyReplied = (id: string) => `replied on observation ${id}`;

export const percent = (share: number) =>
  share > 0.999 ? "over 99.9 %" : share < 0.001 ? "under 0.1 %" : `${(100 * share).toFixed(1)} %`;

export const sameCarLead = "The same car, by its serial number, was recorded before:";
export const sameCarLine = (id: string, name: string, stand: string, isSamePart: boolean) =>
  `${id} by ${name}, ${stand}${isSamePart ? ": the same part too" : ""}`;

// Observers
export const observersLead = "How often each is right, from cars that several people saw:";
export const observerLine = (name: string, right: string, cars: number) =>
  `${name}: ${right}, on ${counted(cars, "car")} that others saw too`;
export const noObservers =
  "No part of a car has been recorded by two people yet, so nobody’s eye can be compared with another’s.";
export const observersHow =
  "Estimated after Dawid and Skene, 1979; everybody begins as right nine times in ten. For keepers only.";

// Export and import
export const exportName = (ending: string) => `observations.${ending}`;
export const exported = (count: number) => `${counted(count, "observation")} to save.`;
export const exportNote = "Cells that a spreadsheet would take for formulas begin with an apostrophe.";
export const imported = (count: number, waiting: number, known: number) =>
  `${counted(count, "observation")} taken in, ${waiting} of them waiting for a keeper${known === 0 ? "" : `; ${known} ${known === 1 ? "was" : "were"} there already`}.`;
const leftLead = "Left for the next time:";
export const leftToImport = (count: number) =>
  `${leftLead} ${counted(count, "observation")}. Send the same again.`;
export const isLeftToImport = (text: string) => text.startsWith(leftLead);
export const rowsNotRead = "These were not read:";
export const rowFault = (place: string, fault: string) => `${place}: ${fault}`;
export const moreFaults = (count: number) => `and ${count} more`;
export const howToImport =
  "Paste the rows after the words: “import observations:”, then a row of headings (part, kind, built from, built to, history …) and a row for each car; or what “export observations as json” gave.";
export const faults = {
  row: (row: number) => `row ${row}`,
  listed: (number: number) => `observation ${number}`,
  wholeText: "the text",
  noList: "begins like JSON and is no list of observations",
  field: (name: string) => `${quoted(name)} is missing, or not as it is exported`,
  handbook: (id: string) => `${quoted(id)} is no handbook that serves here`,
  noHead: (missing: string) => `the first row names no column “${missing}”`,
  part: (text: string) => `${quoted(text)} is no part of the handbook`,
  kind: (text: string) => `${quoted(text)} is no kind of that part`,
  date: (text: string) => `${quoted(text)} is no date`,
  backwards: "the last day is before the first",
  grade: (text: string) => `${quoted(text)} is no history that is known here`,
  car: (text: string) => `${quoted(text)} is not among the handbook’s cars`,
} as const;
export const whyImported = (id: string) => `imported observation ${id}`;
