/** When facts pull apart, a reading looks wrong, a date cannot be, or nothing fits. */
import type { BrokenDateLink } from "../../../knowledge/index.ts";
import { listed, numberInWords } from "./grammar.ts";

export const pullApart = (one: string, other: string) =>
  `These two do not go together: ${one}, and ${other}. Most likely one was misread.`;
export const pullsAlone = (fact: string) =>
  `One thing does not go with the rest: ${fact}. It may have been misread.`;
export const sameTwice = (fact: string) => `You have looked twice, so I take it as it is: ${fact}.`;

export const stillApart = (facts: readonly string[]) =>
  `Does not go with the rest, though you looked twice: ${listed(facts)}.`;

const otherwise = (isMass: boolean) =>
  isMass ? "something else may have been weighed with it" : "it may have been measured somewhere else";
export const farFromAll = (reading: string, from: string, to: string, isMass: boolean) =>
  `${reading} lies far from every kind in the handbook (${from} to ${to}); ${otherwise(isMass)}.`;
export const farFromEverything = (reading: string, isMass: boolean) =>
  `${reading} lies far from every kind in the handbook; ${otherwise(isMass)}.`;

/** What is wrong with two dates of which the one has to come before the other. */
export const brokenDates: Readonly<
  Record<BrokenDateLink["problem"], (earlier: string, later: string) => string>
> = {
  after: (earlier, later) =>
    `${earlier} comes after ${later}; it has to come before. One of the two is misread, or the part came later than the car.`,
  "hardly-time": (earlier, later) =>
    `${earlier} leaves hardly time before ${later}. One of the two may be misread, or the part came later than the car.`,
  "too-long-before": (earlier, later) =>
    `${earlier} comes unusually long before ${later}. Old stock is possible, so is a misread mark.`,
};
export const builtDate = (date: string) => `the car's build date (${date})`;
export const datedMark = (feature: string, date: string) => `the ${feature} (${date})`;

export const nothingFits = (part: string, variants: number, best: string) =>
  variants === 1
    ? `What you describe does not fit the one kind of ${part} in the handbook well (${best}).`
    : `What you describe fits none of the ${numberInWords(variants)} kinds of ${part} in the handbook well (best: ${best}).`;
export const oddOnesOut = (facts: readonly string[]) =>
  facts.length === 1
    ? `The odd one out is ${facts[0]}. Please photograph it and any mark.`
    : `The odd ones out are ${listed(facts)}. Please photograph them and any mark.`;
export const writtenUp = "“Ask a keeper” writes your notes up for somebody who may know it.";
