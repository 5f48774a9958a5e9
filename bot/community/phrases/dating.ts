/** What is said of changes over time: when one kind gave way to the next, which cars would tell more, until when a kind was seen. */
import { counted, sentence, withThe } from "../../conversation/phrases/grammar.ts";

// Changeovers
export const changed = (old: string, fresh: string, month: string, chance: string, interval: string) =>
  `${sentence(`${withThe(fresh)} took the place of ${withThe(old)} most likely in ${month}: ${chance}`)} Nine in ten: ${interval}.`;
export const changedNoMonth = (old: string, fresh: string, interval: string) =>
  `${sentence(`when ${withThe(fresh)} took the place of ${withThe(old)} no month stands out`)} Nine in ten: ${interval}.`;
export const bySightings = (seen: number) =>
  `That is from ${counted(seen, "accepted sighting")} and the handbook’s periods together.`;
export const byHandbookAlone =
  "No dated car with either has been accepted yet: that is the handbook’s periods alone.";
export const howToAdd = "“record an observation” adds a car.";
export const onlyOneSeen = (name: string) =>
  `Only ${withThe(name)} has been seen on dated cars, so that is little more than the handbook’s periods.`;
export const howItChanged = (speed: string) => `how it changed: ${speed}`;
export const shapeOfIt = (shape: string) => `shape: ${shape}`;
export const lastOld = (kind: string, id: string, built: string, chance: string) =>
  `last with ${withThe(kind)}: ${id}, built ${built}, as built: ${chance}`;
export const firstNew = (kind: string, id: string, built: string, chance: string) =>
  `first with ${withThe(kind)}: ${id}, built ${built}, as built: ${chance}`;
export const withoutSuspects = (line: string) => `without suspects, ${line}`;
export const suspectLine = (id: string, kind: string, built: string, history: string, chance: string) =>
  `looks swapped or misread: ${id}, ${kind}, built ${built}, ${history}; not the type it was built with: ${chance}`;
export const inMarket = (trim: string, market: string) => `${trim}, ${market}`;
export const groupLine = (name: string, said: string) => `${name}: ${said}`;
export const changeAssumptions = (production: string, hasProduction: boolean) =>
  `Taken for granted: production ran ${production}, ${
    hasProduction ? "so many cars a year as the handbook says" : "as many cars in one month as in another"
  }; both kinds are reported as readily, or up to three times more so; a chance of a swap for each car by its history, which the sightings correct.`;
export const inARow = (kinds: string, part: string) =>
  `${sentence(`the ${part} came as ${kinds}, one after the other`)} All changes at once:`;
export const wantedBetween = (old: string, fresh: string, months: string) =>
  `cars wanted for ${withThe(old)} giving way to ${withThe(fresh)}: built ${months}`;
export const chainAssumptions = (production: string, hasProduction: boolean) =>
  `Taken for granted: production ran ${production}, ${
    hasProduction ? "so many cars a year as the handbook says" : "as many cars in one month as in another"
  }; each kind gave way to the next on all cars; a chance of a swap for each car by its history, which the sightings correct.`;
export const moreOfOne = (kind: string) => `“when did ${withThe(kind)} change” says more of one change.`;
export const changesLead = (part: string) => `Changes of the ${part}:`;
export const changesCaption = "When the works changed over";
export const changesHead = ["part", "from", "to", "nine in ten", "sightings"] as const;
export const noChanges = (part: string) =>
  `The handbook knows no kind of ${part} that took the place of another on the same cars.`;
export const noChangesAtAll = "The handbook knows no kind of any part that took the place of another.";
export const howToNarrow = (part: string) => `“changeovers of ${part}” says more of one.`;

// Cars wanted
export const wantedLead = (part: string, old: string, fresh: string) =>
  `Of ${withThe(part)}, when ${withThe(old)} gave way to ${withThe(fresh)} (the most telling first):`;
export const wantedCaption = "Cars wanted, built in";
export const wantedHead = ["part", "from", "to", "built"] as const;
export const wantedOnPage = (old: string, fresh: string, cars: string) =>
  `${sentence(`when ${withThe(old)} gave way to ${withThe(fresh)}`)} Look at: ${cars}; the most telling month first.`;
export const nothingWantedOfPart = "No build month would tell more of any change of this part.";
export const wantedLine = (built: string, chance: string) =>
  `built ${built}: the newer one on it is ${chance}`;
export const nothingWanted = "No build month would tell more of any change.";
export const wantedHow =
  "Have you such a car? “record an observation”; say too when it shows what you expected.";
export const offer = (old: string, fresh: string) =>
  `Yours would help to narrow when ${withThe(old)} gave way to ${withThe(fresh)}: may I note what you told as an observation?`;
export const noteIt = "note it as an observation";

// Last and first seen
export const seenOfWhich = "Of which part? “last seen rear spoiler” asks for one.";
export const useLead = (kind: string, cars: string) => `${sentence(`${withThe(kind)}, from ${cars}`)}`;
export const neverSeen = (kind: string) => `No dated car with ${withThe(kind)} has been accepted yet.`;
export const endWords = (method: string, said: string) => `end, by ${method}: ${said}`;
export const beginningWords = (method: string, said: string) => `beginning, by ${method}: ${said}`;
export const useAssumptions =
  "These go by the kind’s own sightings and nothing else; of the ends trust the latest, of the beginnings the earliest.";

// Lead times
export const leadsOf = (part: string) => `How long before the car the ${part} was dated:`;
export const ownDates = "Of yours:";
export const noDateMarks = (part: string | undefined) =>
  part === undefined ? "The handbook knows no date mark." : `The handbook knows no date mark on a ${part}.`;

// How many
export const howManyNeeds =
  "Serial numbers are not kept in clear, so say some that survive: “how many were built: 12, 45, 300”. Of a kind: “how many had the second spoiler”.";
export const numbersLead = (seen: number, highest: number) =>
  `From ${counted(seen, "serial number")} up to ${highest}:`;
export const numbersUnbiased = (estimate: string) => `about ${estimate} were built`;
export const numbersLimit = (limit: number) => `no more than ${limit}, with nineteen chances in twenty`;
export const numbersMean = (mean: string, deviation: string) =>
  `on average ${mean}, give or take ${deviation}`;
export const cannotSay = (why: string) => `cannot say: ${why}`;
export const cannotSayAnything = (why: string) => sentence(cannotSay(why));
export const numbersAssumption =
  "Taken for granted: numbers ran on without a gap from 1, and every car is as likely to survive and to be named as any other.";
export const shareLead = (kind: string, seen: number, looked: number) =>
  `${sentence(`${withThe(kind)} was on ${seen} of ${counted(looked, "car")} that members saw`)}`;
export const shareInterval = (share: string, low: string, high: string) =>
  `a share of ${share}, between ${low} and ${high} with nineteen chances in twenty`;
export const shareOfCars = (from: string, to: string, built: string) =>
  `of the ${built} cars built that would be ${from} to ${to}`;
export const shareAssumption =
  "Taken for granted: what members saw is a fair draw of all cars, and nothing was swapped.";
