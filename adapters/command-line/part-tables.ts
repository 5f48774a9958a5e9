/** From the options that `model` and `simulate` share to the tables of one part kind: handbook, part, goal, car in words. */
import { describedCar } from "../../bot/index.ts";
import {
  type CarDescription,
  compileLexicon,
  compilePart,
  type Goal,
  goals,
  type Handbook,
  type ModelTables,
  modelTables,
  readMessage,
} from "../../knowledge/index.ts";
import { systemClock } from "../clock.ts";
import { closestName } from "../closest-name.ts";
import { demonstrationHandbook } from "../configuration.ts";
import { OutsideError } from "../errors.ts";
import { openHandbook } from "../handbooks.ts";
import { UsageError } from "./options.ts";
import { unknownPart } from "./unknown-part.ts";

export const tableOptions = {
  handbook: "text",
  part: "text",
  goal: "text",
  car: "text",
  json: "flag",
} as const;

export interface TableOptions {
  readonly handbook: string | undefined;
  readonly part: string | undefined;
  readonly goal: string | undefined;
  readonly car: string | undefined;
}

export interface PartTables {
  readonly part: string;
  readonly goal: Goal;
  readonly car: CarDescription;
  readonly tables: ModelTables;
}

/** Throws UsageError for what is missing or no goal, OutsideError for a broken handbook, an unknown part kind, an unread car. */
export async function openPartTables(command: string, options: TableOptions): Promise<PartTables> {
  const { part } = options;
  if (part === undefined) throw new UsageError("--part: a part kind is needed", command);
  const goal = goalOf(command, options.goal);
  const { handbook } = await openHandbook(options.handbook ?? demonstrationHandbook);
  const compiled = compilePart(handbook, part);
  if (compiled === undefined) throw unknownPart(handbook, part);
  const car = options.car === undefined ? {} : carOf(handbook, options.car);
  return { part, goal, car, tables: modelTables(compiled, car, goal) };
}

function goalOf(command: string, written: string | undefined): Goal {
  if (written === undefined) return "which-variant";
  const goal = goals.find((one) => one === written);
  if (goal !== undefined) return goal;
  const meant = closestName(written, goals);
  const hint = meant === undefined ? `one of ${goals.join(", ")} is needed` : `did you mean ${meant}`;
  throw new UsageError(`--goal: ${hint}`, command);
}

/** The car as the bot would understand it from the same words; words that say nothing of a car are refused, not dropped. */
function carOf(handbook: Handbook, words: string): CarDescription {
  const reading = readMessage(words, compileLexicon(handbook), { today: systemClock().today() });
  if (reading.car.length === 0) {
    throw new OutsideError('--car: nothing of a car was understood; write it like "built 1980-05, Shrike S"');
  }
  return describedCar({}, reading.car);
}
