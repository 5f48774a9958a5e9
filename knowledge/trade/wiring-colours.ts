// Wire colours and terminal numbers. Brown is the live battery feed in BS AU 7 but earth in DIN 72551: the country
// that made the loom decides, so both standards are always named.
import { WIRING } from "./tables/wiring.ts";
import { basisOf, type TradeReading } from "./trade-reading.ts";

const COLOURS = [
  "light green",
  "light blue",
  "brown",
  "white",
  "green",
  "purple",
  "blue",
  "red",
  "black",
  "yellow",
  "slate",
  "orange",
  "pink",
  "grey",
];

/** The colour word in a text ("gray" reads as grey, "violet" as purple); undefined when there is none. */
export function findWireColour(text: string): string | undefined {
  const lower = text
    .toLowerCase()
    .replace(/\bgray\b/, "grey")
    .replace(/\bviolet\b/, "purple");
  // Of "green/white" the first is the ground colour, the second the tracer.
  const found = COLOURS.map((colour) => ({ colour, at: lower.search(new RegExp(`\\b${colour}\\b`)) })).filter(
    (place) => place.at >= 0,
  );
  return found.toSorted((one, other) => one.at - other.at)[0]?.colour;
}

/** Every colour of one standard: "BS AU 7" or "DIN 72551". */
export function readWireStandard(standard: string): readonly TradeReading[] {
  return WIRING.filter((row) => row.standard === standard).map((row) => ({
    reading: `${row.standard}: ${row.colour} is ${row.use === "EARTH" ? "earth" : row.use}`,
    why: "the ground colour; a tracer names the branch",
    basis: basisOf(row),
  }));
}

/** What a wire colour is for, by every standard that has it. */
export function readWireColour(colour: string): readonly TradeReading[] {
  return WIRING.filter((row) => row.colour === colour && !row.standard.includes("terminal")).map((row) => ({
    reading: `${row.standard}: ${row.colour} is ${row.use === "EARTH" ? "earth" : row.use}`,
    why: "colours follow the standard of the country that made the loom",
    basis: basisOf(row),
  }));
}

/** The colours that each standard gives to earth. */
export function readEarthColours(): readonly TradeReading[] {
  const earth = WIRING.filter(
    (row) => !row.standard.includes("terminal") && row.use.toLowerCase() === "earth",
  );
  return earth.map((row) => ({
    reading: `${row.standard}: earth is ${row.colour}`,
    why: "colours follow the standard of the country that made the loom",
    basis: basisOf(row),
  }));
}

/** What a terminal number of DIN 72552 means ("15", "49a", "D+"); empty for unknown numbers. */
export function readTerminal(terminal: string): readonly TradeReading[] {
  return WIRING.filter(
    (row) => row.standard.includes("terminal") && row.colour.split(" / ").includes(terminal),
  ).map((row) => ({
    reading: `terminal ${row.colour}: ${row.use}`,
    why: "terminal numbers of DIN 72552 (sheet of March 1971)",
    basis: basisOf(row),
  }));
}

/** The trap that can burn a loom. */
export const BROWN_TRAP =
  "Brown is the live battery feed in a British loom (BS AU 7) and earth in a German one (DIN 72551): ask where the loom was made before you trust a colour.";
