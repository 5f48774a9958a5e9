// Questions about what a part is made of: moulded marks, weighings, traces of the process.
import {
  APPARENT_DENSITY_REMARK,
  densityInWater,
  type MeasuredDensity,
  relativeDensity,
  relativeDensityWithSinker,
} from "../density.ts";
import { materialsOfDensity } from "../material-candidates.ts";
import { findAskedMaterialCode, findMaterialMarks } from "../material-mark.ts";
import { NUMBER, parsePlainNumber, parseSignedNumber, sayNumber } from "../plain-numbers.ts";
import { processesOfTraces } from "../process-traces.ts";
import type { TradeReading } from "../trade-reading.ts";
import { convertUnits, findUnit } from "../units.ts";
import { type TopicReader, topicAnswer } from "./trade-question.ts";

const ROOM_TEMPERATURE = 20;

/** >PP-TD20< and its kin; a bare code is read only after "what does … mean". */
export const materialMarkTopic: TopicReader = (question) => {
  if (!question.mayBeAnswered) return undefined;
  const marks = findMaterialMarks(question.text);
  const bare = marks.length === 0 ? findAskedMaterialCode(question.text) : undefined;
  const dated: TradeReading = {
    reading: "a mark of this form is seldom older than December 1987",
    why: "ISO 1043-1 was first issued on 15 December 1987, ISO 11469 in 1993 (from memory)",
    basis: "ISO 1043-1:1987",
  };
  return topicAnswer(
    "material mark",
    bare === undefined ? (marks.length === 0 ? [] : [...marks, dated]) : [bare],
    {
      cannotSay:
        "The mark names the plastic, not the maker; a bare word without the points can be older, and a service part from later tooling carries the mark on an old design.",
      lookNext:
        "Look for a date clock or a part number near the mark, and photograph them together in raking light.",
    },
  );
};

const MASS = String.raw`(${NUMBER})\s?(g|gr|grams?|kg|kilos?|lbs?|oz|ounces?)\b`;

function grams(value: string | undefined, unit: string | undefined): number | undefined {
  const amount = parsePlainNumber(value ?? "");
  const found = findUnit(unit ?? "");
  return amount === undefined || found === undefined ? undefined : convertUnits(amount, found.id, "g");
}

function massNear(lower: string, words: string): number | undefined {
  const after = new RegExp(`${MASS},? (?:when |hung |hanging |weighed |suspended )?(?:${words})`).exec(lower);
  if (after !== null) return grams(after[1], after[2]);
  const before = new RegExp(String.raw`\b(?:${words}):?(?: it| weight)?(?: weighs| is| was)?,? ${MASS}`).exec(
    lower,
  );
  return before === null ? undefined : grams(before[1], before[2]);
}

function waterCelsius(lower: string): number {
  const match = /(-?\d{1,3}(?:[.,]\d)?)\s?(?:°|deg(?:rees)?)?\s?(c|f|celsius|fahrenheit)\b/.exec(lower);
  const value = parseSignedNumber(match?.[1] ?? "");
  if (match === null || value === undefined) return ROOM_TEMPERATURE;
  return match[2]?.startsWith("f") ? (convertUnits(value, "°F", "°C") ?? ROOM_TEMPERATURE) : value;
}

/** The density in a message that tells both weighings ("412 g dry and 180 g in water at 18 C"); undefined otherwise. */
export function readWeighing(lower: string): MeasuredDensity | undefined {
  const dry = massNear(lower, "dry|in (?:the )?air");
  const wet = massNear(lower, "in (?:the )?water|under ?water|submerged|immersed|wet");
  const sinker = massNear(lower, "(?:for )?(?:the )?sinker(?: alone| in water)?");
  const both = massNear(lower, "with (?:the |a )?sinker");
  if (dry === undefined) return undefined;
  const celsius = waterCelsius(lower);
  if (sinker !== undefined && both !== undefined)
    return densityInWater(relativeDensityWithSinker(dry, both, sinker), celsius);
  return wet === undefined ? undefined : densityInWater(relativeDensity(dry, wet), celsius);
}

/** "it weighs 412 g dry and 180 g in water at 18 C, what is it made of". */
export const densityTopic: TopicReader = (question) => {
  if (!question.mayBeAnswered) return undefined;
  const measured = readWeighing(question.lower);
  if (measured === undefined) return undefined;
  const figure: TradeReading = {
    reading: `density ${sayNumber(measured.density, 2)} g/cm³, give or take 0.03`,
    why: `dry mass over the loss in water, times the water's ${sayNumber(measured.waterDensity, 4)} g/cm³`,
    basis: "Tanaka et al. 2001, Metrologia 38:301; ASTM D792",
  };
  return topicAnswer("density", [figure, ...materialsOfDensity(measured.band)], {
    cannotSay: APPARENT_DENSITY_REMARK,
    lookNext:
      "Soak the air off and weigh twice; then look at the inner face and the edge, which tell the process.",
  });
};

/** "rough inside, strands of mat, ground edge: how was it made". */
export const processTopic: TopicReader = (question) => {
  const asks =
    /how (?:was|is|were|are|would) (?:it|this|they|these|that) (?:been )?made|what process|which process|(?:hand[- ]?laid|moulded|molded|cast|pressed|injection) or\b|how .{0,30} made/;
  if (!question.isAsking || !question.mayBeAnswered || !asks.test(question.lower)) return undefined;
  return topicAnswer("process", processesOfTraces(question.text).slice(0, 5), {
    cannotSay: "One trace seldom decides, and a later copy can be made by the same process.",
    lookNext:
      "Look first whether the inner face is rough or smooth, then whether the edge is moulded or cut. Do not burn, scratch or dissolve a sliver to see.",
    cautions: ["grp-dust"],
  });
};
