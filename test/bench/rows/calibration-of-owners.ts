// Whether the bot's probabilities mean what they say, on owners invented by a program that knows the truth: once in the
// world the model assumes, once in one where nearly everything is a little wrong (identification method, section 9).

import { scoresOf } from "../../../adapters/command-line/simulation/scores.ts";
import type { PlayedCase } from "../../../adapters/command-line/simulation/ways-of-asking.ts";
import {
  type CompiledPart,
  compilePart,
  type Goal,
  identify,
  lambdaOfGoal,
} from "../../../knowledge/index.ts";
import { classOfPart } from "../../support/class-of-part.ts";
import { inventedMarque } from "../../support/invented-marque.ts";
import { drawOwnedPart } from "../../support/invented-parts.ts";
import { drawReports, natureOf } from "../../support/invented-reports.ts";
import {
  doubtfulWorld,
  misspecifiedWorld,
  type World,
  wellSpecifiedWorld,
} from "../../support/invented-world.ts";
import { chanceFrom } from "../../support/random-tables.ts";
import type { Figure, Row } from "../row.ts";

const HANDBOOKS = 30;
const OWNERS = 200;
const START = 1977;
const FACTS = [3, 7, 12];
const WORLDS = [
  { world: wellSpecifiedWorld, most: 0.03 },
  { world: doubtfulWorld, most: 0.03 },
  { world: misspecifiedWorld, most: 0.06 },
];

export const calibrationOfOwners: Row = {
  name: "calibration-of-owners",
  about: `${HANDBOOKS} random handbooks, ${HANDBOOKS * OWNERS} owners a line`,
  starts: [START],
  measure: () => WORLDS.flatMap(({ world, most }) => FACTS.flatMap((facts) => figuresOf(world, facts, most))),
};

function figuresOf(world: World, facts: number, most: number): readonly Figure[] {
  const variants = scoresOf(casesOf(world, facts, "which-variant"), lambdaOfGoal["which-variant"]);
  const cars = scoresOf(casesOf(world, facts, "right-for-car"), lambdaOfGoal["right-for-car"]);
  const what = `${world.name}, ${facts} facts`;
  return [
    { what: `${what}: right`, value: 100 * variants.topOneAccuracy, unit: "%" },
    {
      what: `${what}: calibration error, which variant`,
      value: variants.expectedCalibrationError,
      unit: "",
      budget: { atMost: most },
    },
    {
      what: `${what}: calibration error, right for car`,
      value: cars.expectedCalibrationError,
      unit: "",
      budget: { atMost: most },
    },
    { what: `${what}: Brier score`, value: variants.brier, unit: "" },
  ];
}

function casesOf(world: World, facts: number, goal: Goal): readonly PlayedCase[] {
  const chance = chanceFrom(START);
  return Array.from({ length: HANDBOOKS }, () => compiled(inventedMarque(chance))).flatMap((part, index) => {
    const own = chanceFrom(START + 1000 * facts + index);
    const nature = natureOf(part, world, own);
    return Array.from({ length: OWNERS }, (): PlayedCase => {
      const owned = drawOwnedPart(part, world, own);
      const reports = drawReports(nature, owned.part, facts, own);
      const { classes } = identify(part, { car: owned.car, goal, reports });
      return {
        effort: 0,
        questions: facts,
        classes: new Map(classes.map(({ class: name, probability }) => [name, probability])),
        trueClass: classOfPart(part, owned, goal),
      };
    });
  });
}

function compiled(handbook: Parameters<typeof compilePart>[0]): CompiledPart {
  const part = compilePart(handbook, "foot");
  if (part === undefined) throw new Error("the random handbook has a part kind named foot");
  return part;
}
