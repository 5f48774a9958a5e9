// Questions that look a material or a process up by its name: "what is the density of ABS", "density 1.05, what
// plastic", "how can I tell hand lay-up from SMC".
import { APPARENT_DENSITY_REMARK } from "../density.ts";
import { materialsOfDensity } from "../material-candidates.ts";
import { parsePlainNumber, sayNumber } from "../plain-numbers.ts";
import { METAL_PROCESSES } from "../tables/metal-processes.ts";
import { MOULDING_PROCESSES } from "../tables/moulding-processes.ts";
import { OTHER_MATERIALS } from "../tables/other-materials.ts";
import { PLASTICS } from "../tables/plastics.ts";
import { basisOf, type TradeReading } from "../trade-reading.ts";
import { type TopicReader, topicAnswer } from "./trade-question.ts";

const TABLE_SPREAD = 0.02;

function densityOfNamed(lower: string): readonly TradeReading[] {
  const match =
    /\b(?:density of|how dense is|how heavy is|^(?:does|will|do)) (?:an? |the )?([a-z0-9+()-]{2,24}(?: [a-z]{3,16})?)|\b(?!the |its |is |what |of )([a-z]{3,24}) density/.exec(
      lower.replace(/alumin?um\b/g, "aluminium").replace(/\b(?:grp|fib(?:re|er)glass)\b/g, "polyester"),
    );
  const name = match?.[1] ?? match?.[2] ?? "";
  const words = name.split(" ");
  return [...PLASTICS, ...OTHER_MATERIALS]
    .filter((row) => {
      const isSymbol = words.includes(row.symbol.toLowerCase());
      const text = row.material.toLowerCase();
      return (
        isSymbol ||
        (name.length > 2 &&
          new RegExp(`(?:^|[ (])${words[0]?.replace(/[+()-]/g, ".") ?? ""}(?:[ ,:)]|$)`).test(text))
      );
    })
    .map((row) => ({
      reading: `${row.symbol}, ${row.material}: ${sayNumber(row.density.from, 3)} to ${sayNumber(row.density.to, 3)} g/cm³`,
      why: row.use,
      basis: basisOf(row),
    }));
}

/** Plastics lighter than water throughout their range. */
function floatingPlastics(): readonly TradeReading[] {
  return PLASTICS.filter((row) => row.density.to < 1).map((row) => ({
    reading: `${row.symbol}, ${row.material}, floats: ${sayNumber(row.density.from, 3)} to ${sayNumber(row.density.to, 3)} g/cm³`,
    why: "lighter than water; plastics not named here sink, foam apart",
    basis: basisOf(row),
  }));
}

/** Densities by name, and names by density. */
export const densityLookupTopic: TopicReader = (question) => {
  if (
    !question.isAsking ||
    !question.mayBeAnswered ||
    !/densit|\bdense\b|\bfloats?\b(?! (?:needle|chamber|bowl|height|valve))|(?:lighter|denser|heavier) than water/.test(
      question.lower,
    )
  )
    return undefined;
  const isFloating =
    /\bfloats?\b(?! (?:needle|chamber|bowl|height|valve))|(?:lighter|denser|heavier) than water/.test(
      question.lower,
    ) && !/\b(?:mine|my|it|this)\b/.test(question.lower);
  const figure = parsePlainNumber(
    /densit\w*(?: of| is|:)? (\d{1,2}[.,]\d{1,3})/.exec(question.lower)?.[1] ?? "",
  );
  const readings =
    figure === undefined
      ? [...densityOfNamed(question.lower), ...(isFloating ? floatingPlastics() : [])]
      : materialsOfDensity({ from: figure - TABLE_SPREAD, to: figure + TABLE_SPREAD });
  return topicAnswer("density", readings, {
    cannotSay: APPARENT_DENSITY_REMARK,
    lookNext: "Weigh the part dry and hung in water, and tell me both with the water's temperature.",
  });
};

const NAMES: readonly (readonly [RegExp, string])[] = [
  [/hand[- ]?(?:lay(?:[- ]?up)?|laid)/i, "hand lay-up"],
  [/spray[- ]?up|chopper gun/i, "spray-up"],
  [/cold press/i, "cold press (matched mould, low pressure)"],
  [/\bRTM\b|resin injection/, "RTM (resin injection)"],
  [/\bSMC\b|\bsmc\b/, "hot-press SMC"],
  [/\bR?RIM\b(?! ?\d)/, "RIM / RRIM polyurethane"],
  [/vacuum[- ]?form/i, "vacuum forming"],
  [/injection mou?ld/i, "injection moulding"],
  [/sand[- ]?cast|\bcasting (?:and|vs|or|from)\b/i, "sand casting"],
  [/pressure[- ]die|\bdie[- ]?cast|\bcasting (?:and|vs|or|from)\b/i, "pressure die"],
  [/gravity[- ]die/i, "gravity die (permanent mould)"],
  [/investment cast|lost wax/i, "investment casting"],
  [/forg(?:ing|ed)/i, "forging"],
  [/blow mou?ld|rotational/i, "blow or rotational moulding"],
  [/pre-?preg/i, "filament or woven pre-preg"],
  [/splash(?:ed)?[- ](?:copy|mou?ld)/i, "splash copy (mould off an original)"],
];

/** "what does 3 mm hand laid weigh per square metre": thickness in mm × density in g/cm³ is kg/m². */
export const areaWeightTopic: TopicReader = (question) => {
  const isAbout = /square met(?:re|er)|\bm²|\bm2\b|sq\.? ?m\b|area weight/.test(question.lower);
  const thickness = parsePlainNumber(/(\d{1,2}(?:[.,]\d)?) ?mm\b/.exec(question.lower)?.[1] ?? "");
  if (!question.isAsking || !question.mayBeAnswered || !isAbout || thickness === undefined) return undefined;
  const wanted = NAMES.filter(([pattern]) => pattern.test(question.text)).map(([, process]) => process);
  const readings = MOULDING_PROCESSES.filter((row) => wanted.includes(row.process)).map((row) => ({
    reading: `${row.process}, ${sayNumber(thickness, 1)} mm: ${sayNumber(thickness * row.density.from, 1)} to ${sayNumber(thickness * row.density.to, 1)} kg/m²`,
    why: "thickness in millimetres × density in g/cm³",
    basis: basisOf(row),
  }));
  return topicAnswer("area weight", readings, {
    cannotSay:
      "Bonded-in wood, metal or foam and uneven thickness shift it; a hand-laid part varies by 30 to 50 percent within itself.",
    lookNext: "Measure the thickness at several edges, and weigh the whole part.",
  });
};

/** "what is SMC", "how can I tell hand lay-up from SMC". */
export const namedProcessTopic: TopicReader = (question) => {
  const asks =
    /how (?:can|do|would|to) (?:(?:i|you|one) )?(?:tell|see|know|recogni[sz]e|spot)|\bvs\b|what(?:'s|s| is| does) (?:an? )?(?:hand|spray|splash|gravity|sand|cold|rtm|smc|r?rim|vacuum|injection|blow|rotational|pre|splash)|difference between|\btell .{1,30} (?:from|apart)/;
  if (!question.mayBeAnswered || !question.isAsking || !asks.test(question.lower)) return undefined;
  if (/\bmine\b|\bmy\b|\b(?:if|is|was) it\b|\bthis\b/.test(question.lower)) return undefined;
  const wanted = NAMES.filter(([pattern]) => pattern.test(question.text)).map(([, process]) => process);
  const rows = MOULDING_PROCESSES.filter((row) => wanted.includes(row.process));
  const metal = METAL_PROCESSES.filter((row) => wanted.includes(row.process)).map((row) => ({
    reading: `${row.process}: ${row.traces}${row.wallMillimetres === "" ? "" : `; wall ${row.wallMillimetres} mm`}`,
    why: `finish: ${row.finish}; ${row.use}`,
    basis: basisOf(row),
  }));
  const moulded = rows.map((row) => ({
    reading: `${row.process}: outside ${row.outerFace}; inside ${row.innerFace}; edge ${row.edge}; ${sayNumber(row.density.from, 2)} to ${sayNumber(row.density.to, 2)} g/cm³`,
    why: `${row.traces}; ${row.period}`,
    basis: basisOf(row),
  }));
  return topicAnswer("process", [...moulded, ...metal], {
    cannotSay: "One trace seldom decides; a later copy can be made by the same process.",
    lookNext:
      "Look first whether the inner face is rough or smooth, then whether the edge is moulded or cut.",
    cautions: ["grp-dust"],
  });
};
