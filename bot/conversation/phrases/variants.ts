/** Words about variants: where they come from, when, and how two of them are laid side by side. */
import { capitalised, listed, numberInWords, sentence, withThe } from "./grammar.ts";

const origins: Readonly<Record<string, string>> = {
  production: "fitted at the works",
  service: "service part, sold over the counter",
  reproduction: "reproduction",
  "other-maker": "another maker's",
};
export function originWords(origin: string): string {
  return origins[origin] ?? origin;
}

export const notRecorded = "not recorded";
export const neverFitted = "no date recorded";
export const aboutTime = (times: string) => `about ${times}`;
export const fittedWords = (times: string) => `on cars built ${times}`;
export const soldWords = (times: string) => `sold ${times}`;

export const compareCaption = (names: string) => `${names}, side by side`;
export const originRow = "comes from";
export const materialRow = "material";
export const toldApartLead = "What tells them apart, best first for the effort:";
export const toldApartLine = (
  feature: string,
  differences: readonly string[],
  effort: string,
  check: string,
  sources: string,
) => {
  const apart = differences.length === 0 ? feature : `${feature}: ${differences.join(" / ")}`;
  return [`${apart} (${effort}). ${check}`, sources].filter((piece) => piece !== "").join(" ");
};
export const byItsDate = "by its date";
export const nothingTellsApart = "Nothing in the handbook tells these apart.";
export const compareWhich = "Name the two that I shall compare:";
export const compareNeedsPart = "Name the part, and I lay its kinds side by side.";
export const oneOnlyNamed = (name: string) => `Name the other one to lay beside ${withThe(name)}:`;

export const kindsCaption = (part: string, count: number) =>
  count === 1
    ? `${capitalised(part)}: the one kind in the handbook`
    : `${capitalised(part)}: the ${numberInWords(count)} kinds in the handbook`;
export const kindsHead = ["kind", "comes from", "what it is"] as const;

// What fits
export const fitsForLid = (mounting: string, probability: string) =>
  `Mounting of your car: ${mounting}, ${probability}.`;
export const fitsForSeveral = (mountings: string) => `Look first which mounting your car has: ${mountings}.`;
export const mountingShare = (mounting: string, probability: string) => `${mounting}, ${probability}`;
export const fitsUnknown = "The handbook does not say how this part is mounted.";
export const withoutDrilling = (mounting: string) => `On a car with ${named(mounting)}, without drilling:`;
export const withWork = (mounting: string) => `On a car with ${named(mounting)}, with work:`;
export const nothingGoesOn = (mounting: string) =>
  `On a car with ${named(mounting)} nothing goes on without work.`;
export const doesNotGo = (mounting: string) => `Not on a car with ${named(mounting)}:`;
/** A bolt circle is called by its figures: "4 × 108 mm" takes no article. */
const named = (mounting: string) => (/^\d/.test(mounting) ? mounting : withThe(mounting));
export const fitLine = (names: string, how: string) => (how === "" ? names : `${names}: ${how}`);
export const needsLine = (name: string, needs: string) => sentence(`${withThe(name)} also needs ${needs}`);

// Genuine or a copy
export const copiesLead = (part: string) =>
  `What gives copies of the ${part} away, best first for the effort:`;
export const copyLine = (copy: string, tells: readonly string[], sources: string) =>
  `${copy} – ${tells.join("; ")} ${sources}`.trim();
/** "gasket groove: rounded bottom (genuine: square-cut)". */
export const tellOfCopy = (feature: string, shown: string, genuine: readonly string[]) =>
  `${feature}: ${shown}${genuine.length === 0 ? "" : ` (genuine: ${listed(genuine, "or")})`}`;
export const noCopiesKnown = (part: string) =>
  `The handbook names nothing that tells a genuine ${part} from a copy.`;

export const anyCar = "any car";
