/** Everything known of one car: for each part kind of its handbook the answer, what it rests on, and what is still missing. */
import { formatInterval, type Interval } from "../../../knowledge/index.ts";
import { carInWords } from "../../conversation/apply-car.ts";
import type { Case } from "../../conversation/case.ts";
import type { Knowledge } from "../../conversation/knowledge.ts";
import { thingOf, wordedFor } from "../../conversation/named-thing.ts";
import { type AnswerCard, cardOfCase } from "../../conversation/saying/answer-card.ts";
import { sayEdition } from "../../conversation/saying/say-edition.ts";
import type { OwnConversation } from "../person/own-records.ts";

export interface CarSheet {
  readonly handbook: string;
  readonly handbookName: string;
  /** What the handbook is about, "car" or its cover's own word. */
  readonly thing: string;
  readonly car: readonly { readonly label: string; readonly value: string }[];
  /** In the handbook's order of part kinds. */
  readonly parts: readonly SheetPart[];
  /** In words: "1 November 2026". */
  readonly date: string;
  readonly edition: string;
}

export interface SheetPart {
  readonly part: string;
  readonly name: string;
  /** Undefined: nobody has looked at it yet. */
  readonly card: AnswerCard | undefined;
  /** Ids of the owner's photographs of it. */
  readonly photographs: readonly string[];
}

/** One car of a person, with every case about it, the latest last. */
export interface OwnCar {
  readonly handbook: string;
  readonly description: Case["facts"]["car"];
  readonly cases: readonly { readonly conversation: string; readonly kept: Case }[];
}

/**
 * The cars that a person's cases are about, in the order in which they were first spoken of. Cases belong to one car when they share its
 * chassis number, or, where one has none, when nothing they say of the car contradicts; loose parts have no car.
 */
export function ownCars(person: string, conversations: readonly OwnConversation[]): readonly OwnCar[] {
  const cases = conversations.flatMap(({ id, conversation }) =>
    conversation.cases
      .filter(
        (kept) => kept.owner === person && kept.facts.part !== null && kept.facts.car.isLoosePart !== true,
      )
      .map((kept) => ({ conversation: id, kept })),
  );
  const cars: OwnCar[] = [];
  for (const one of cases) {
    const { handbook, facts } = one.kept;
    const at = cars.findIndex((car) => isSameCar(car, { handbook, description: facts.car }));
    const known = cars[at];
    if (known === undefined) cars.push({ handbook, description: facts.car, cases: [one] });
    else
      cars[at] = {
        ...known,
        description: { ...known.description, ...facts.car },
        cases: [...known.cases, one],
      };
  }
  return cars;
}

type DescribedCar = Pick<OwnCar, "handbook" | "description">;

/** Whether both may be one car: by the chassis number where both have one, else when nothing said of them contradicts. */
export function isSameCar(
  { handbook, description }: DescribedCar,
  { handbook: other, description: car }: DescribedCar,
): boolean {
  if (handbook !== other) return false;
  if (description.serialDigest !== undefined && car.serialDigest !== undefined) {
    return description.serialDigest === car.serialDigest;
  }
  const agree = (one: string | undefined, two: string | undefined) =>
    one === undefined || two === undefined || one === two;
  return (
    agree(description.model, car.model) &&
    agree(description.trim, car.trim) &&
    agree(description.market, car.market) &&
    (description.built === undefined || car.built === undefined || meet(description.built, car.built))
  );
}

function meet(one: Interval, other: Interval): boolean {
  return one.from < other.to && other.from < one.to;
}

/** The sheet of a car as it stands; `photographs`: ids by part kind. */
export function carSheet(
  knowledge: Knowledge,
  car: OwnCar,
  photographs: ReadonlyMap<string, readonly string[]>,
  today: Interval,
): CarSheet {
  const { handbook } = knowledge;
  return {
    handbook: handbook.cover.id,
    handbookName: handbook.cover.name,
    thing: thingOf(handbook).one,
    car: Object.entries(carInWords(handbook.cars, car.description)).map(([label, value]) => ({
      label: wordedFor(handbook, label),
      value,
    })),
    parts: handbook.parts.map(({ id, name }) => {
      const latest = car.cases.findLast(({ kept }) => kept.facts.part === id);
      const card = latest && cardOfCase(knowledge, latest.kept);
      return { part: id, name, card, photographs: photographs.get(id) ?? [] };
    }),
    date: formatInterval(today),
    edition: sayEdition(knowledge),
  };
}
