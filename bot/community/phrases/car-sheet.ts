/** What is said of a car's sheet. */
import { counted } from "../../conversation/phrases/grammar.ts";

export const noCar = "There is nothing to put on a sheet yet: ask about a part of your car first.";
export const severalCars = (count: number) => `You have told me of ${counted(count, "car")}. Which sheet?`;
export const sheetOf = (number: number) => `car sheet ${number}`;
export const shareSheet = (number: number) => `share car sheet ${number}`;
export const title = (handbook: string) => `Car sheet, ${handbook}`;
export const carLine = (label: string, value: string) => `${label}: ${value}`;
export const notLooked = "not looked at yet";
export const wanted = (goal: string) => `asked: ${goal}`;
export const stands = (ranking: string) => `where it stands: ${ranking}`;
export const seen = (facts: string) => `seen: ${facts}`;
export const photographs = (count: number) => counted(count, "photograph");
export const onDate = (date: string, edition: string) => `As of ${date}. ${edition}.`;
export const privateUntilShared = (shareIt: string) =>
  `Only you see this. “${shareIt}” makes a link that you can hand to somebody.`;
export const shared =
  "Whoever has this link sees the sheet as it stands, until you say “stop sharing car sheet”.";
export const linkLabel = "car sheet";
export const unshared = "The link to your car sheet leads nowhere now.";
export const notShared = "No sheet of yours is shared.";
export const shareIt = "share car sheet";
export const stopSharing = "stop sharing car sheet";

export const whyShared = "shared a car sheet";
export const whyUnshared = "took a car sheet back";
