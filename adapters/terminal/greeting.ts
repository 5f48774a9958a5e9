/** The first lines of a conversation in a terminal: what this is for, and three questions that its handbooks can answer. */
import type { Handbook } from "../../knowledge/index.ts";

/** Two short lines and three examples made of the first handbook's own words; `handbooks` has at least one. */
export function greetingFor(handbooks: readonly Handbook[]): readonly string[] {
  const names = handbooks.map(({ cover }) => cover.name).join("; ");
  return [
    "Which version of a part have you got, and is it right for your car? Ask in your own words.",
    `I go by: ${names}. Type help for more, bye to end.`,
    ...examplesFrom(handbooks).map((example) => `  - ${example}`),
    "",
  ];
}

function examplesFrom(handbooks: readonly Handbook[]): readonly string[] {
  const [handbook] = handbooks;
  if (handbook === undefined) return [];
  const [first, second = first, third = second] = handbook.parts.map(({ name }) => name.toLowerCase());
  const model = handbook.cars.models[0];
  if (first === undefined || model === undefined) return [];
  return [
    `which ${first} is this?`,
    `is this ${second} right for a car built in ${middleYear(model.from, model.to)}?`,
    `what ${third} should my ${model.name} have?`,
  ];
}

function middleYear(from: string, to: string): number {
  return Math.round((Number(from.slice(0, 4)) + Number(to.slice(0, 4))) / 2);
}
