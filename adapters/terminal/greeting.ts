/** The first lines of a conversation in a terminal: what this is for, and three questions that its handbooks can answer. */
import type { Handbook } from "../../knowledge/index.ts";

export interface Greeting {
  readonly lines: readonly string[];
  readonly examples: readonly string[];
}

/** Two short lines and three examples made of the first handbook's own words; `handbooks` has at least one. */
export async function greetingFor(handbooks: readonly Handbook[]): Promise<Greeting> {
  const names = handbooks.map(({ cover }) => cover.name).join("; ");
  const worded = await rewordingFor(handbooks[0]);
  return {
    lines: [
      worded("Ask which version of a part you have, or whether it is right for your car."),
      `I go by: ${names}. Type help for more, bye to end. For example:`,
    ],
    examples: examplesFrom(handbooks).map(worded),
  };
}

/** What puts the handbook's word in for "car". Where it says "car" itself nobody waits for the bot to be loaded. */
async function rewordingFor(handbook: Handbook | undefined): Promise<(text: string) => string> {
  if (handbook?.cover.thing === undefined) return (text) => text;
  const { wordedFor } = await import("../../bot/index.ts");
  return (text) => wordedFor(handbook, text);
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
