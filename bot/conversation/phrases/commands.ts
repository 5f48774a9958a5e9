/** Answers to plain wishes: help, prices, small talk, undo, cases, photographs, handing over. */
import { capitalised, counted, listed, quoted } from "./grammar.ts";

export const helpLead = (handbook: string) =>
  `Describe a part of your ${handbook} in your own words, and I say which kind it is and how sure that is. For example:`;
export const helpExamples = (part: string, otherPart: string, year: number): readonly string[] => [
  `which ${part} is this? then what you see: finish, fixings, marks, sizes`,
  `is this ${otherPart} right for a car built in May ${year}?`,
  `what photographs should I ask the seller of a ${part} for?`,
];
export const helpParts = (parts: readonly string[]) => `I know these parts: ${listed(parts)}.`;
export const helpWords =
  "At any time: why this? · how do I check? · cannot tell · undo · start over · what do you know so far? · compare two kinds · where do I go from here?";

export const noPrices =
  "I keep no prices. I can tell you what it is and what would prove it; for a value ask the club or a licensed appraiser, with the notes of this case in hand.";
export const smallTalk = "Good day. Tell me what you see on the part.";
export const smallTalkInCase = "All right.";

export const takenBack = (gone: readonly string[], back: readonly string[]) =>
  [
    gone.length === 0 ? undefined : `Taken back: ${listed(gone)}.`,
    back.length === 0 ? undefined : `Back again: ${listed(back)}.`,
    gone.length + back.length === 0 ? "Taken back." : undefined,
  ]
    .filter((line) => line !== undefined)
    .join(" ");
/** In the list of what an undo took back or brought back. */
export const wantingToKnow = (goal: string) => `that you want to know ${goal}`;
export const nothingToTakeBack = "There is nothing to take back.";
export const othersSaidThat =
  "That is for whoever's case it is. What you said yourself you can withdraw, by “withdraw the …” and its name.";
export const startedOver = "Everything said in this case is put aside. “Undo” brings it back.";
export const nothingToStartOver = "Nothing has been said in this case yet.";
export const withdrawn = (fact: string) => `Withdrawn: ${fact}.`;
export const nothingToWithdraw = "You have told me nothing that could be withdrawn.";
export const notToldThat = (feature: string) => `You have not told me the ${feature}.`;
export const withdrawWhich = "Say which one to withdraw:";
export const withdrawSay = (feature: string) => `withdraw the ${feature}`;
export const takenAsCannotTell = (feature: string, isFirst: boolean) =>
  `${capitalised(feature)}: cannot tell.${isFirst ? " I will not ask again." : ""}`;
export const cannotTellPart =
  "Then say where on the car it sits and what it is for; a photograph lets somebody else name it.";
export const cannotTellWhat = "All right; tell me when you have looked.";
export const yesOrNoToWhat = "I asked nothing that yes or no would answer.";

// What do you know so far?
export const knownLead = (number: number, part: string) => `Case ${number}, ${part}. So far:`;
export const knownNothing = "You have told me nothing yet.";
export const knownLine = (label: string, value: string, by: string) => `${label}: ${value}${by}`;
/** Words that wait until the part is known. */
export const knownWaiting = (words: string) => `${quoted(words)}, kept until I know the part`;
export const knownByAnother = ", by another member";
export const knownWords = (words: string) => ` – “${words}”`;

// Cases
export const casesLead = "Your cases:";
export const caseLine = (number: number, part: string, goal: string, facts: number, isInHand: boolean) =>
  `case ${number}: ${part}, ${goal}; ${facts === 0 ? "nothing told yet" : counted(facts, "fact")}${isInHand ? " (in hand)" : ""}`;
export const noCases = "There is no case yet.";
export const noPartYet = "part not named yet";
export const caseInHandNow = (number: number, part: string, isForSameCar: boolean) =>
  `Case ${number}, ${part}${isForSameCar ? ", for the same car" : ""}.`;
export const newCaseOpened = (number: number, hasCar: boolean) =>
  hasCar ? `Case ${number} is open, for the same car.` : `Case ${number} is open.`;
export const noSuchCase = (named: string) => `There is no case ${named} here.`;
export const alsoOpened = (cases: string) => `I keep these apart: ${cases} waits its turn.`;
export const alsoOpenedSeveral = (cases: string) => `I keep these apart: ${cases} wait their turn.`;
export const waitingCase = (number: number, part: string) => `case ${number} (${part})`;
export const goToCase = (number: number) => `case ${number}`;

// Photographs to ask a seller for
export const photographsLead = (part: string) =>
  `Ask for these photographs of the ${part}, the most telling first; daylight, sharp, nothing wet:`;
export const photographOfStates = (feature: string, states: string) =>
  `${feature}, so near that you can tell: ${states}`;
export const photographOfSize = (feature: string) => `${feature}, with a rule laid beside it, seen square on`;
export const photographOfMass = (feature: string) => `${feature}, on a scale with its reading in the picture`;
export const photographOfDate = (feature: string) =>
  `${feature}, every figure, dot and arrow readable, light from the side`;
export const photographWhen = (line: string, condition: string) => `${line} (if ${condition})`;
export const photographsWhole = "the whole part from both sides, and one of where it sits";
export const noPhotographs = (part: string) =>
  `Nothing that is still open about the ${part} shows in a photograph.`;
export const photographsNeedPart = "Name the part, and I list the photographs to ask for.";

// Where do I go from here
export const whereLead = "What would tell most for its effort:";
export const whereNothing =
  "Nothing more in the handbook would settle it; only somebody who knows such parts can.";
export const whereLine = (question: string, effort: string) => `${question} (${effort})`;
export const handOverLead = "Ready to hand to a keeper:";
export const noSourcesNamed = "The handbook names no source for this.";
export const sourcesOfHandbook = "The sources behind what I said:";
export const needsPart = "Tell me first which part it is.";
