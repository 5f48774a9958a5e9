/** Every sentence of the report, so that the text and the page say the same. */
import type { YearCoverage } from "../../../knowledge/index.ts";
import type { Confusion, PartReport } from "./part-report.ts";

/** From this share on a year counts as covered; months of overlap and gap between periods are ordinary. */
const COVERED = 0.95;

export function percent(share: number): string {
  const value = share * 100;
  return value > 0 && value < 1 ? "under 1 %" : `${Math.round(value)} %`;
}

/** Label and value, in the order in which they are read. */
export function figures({ scores, cases }: PartReport): readonly (readonly [string, string])[] {
  return [
    ["questions to an answer", scores.meanQuestions.toFixed(1)],
    ["effort to an answer, in looks from outside", scores.meanEffort.toFixed(1)],
    ["first answer right", percent(scores.topOneAccuracy)],
    ["an answer given, and wrong", percent(scores.wrongVerdictRate)],
    ["cases played", String(cases)],
  ];
}

export const headings = {
  figures: "What asking costs, and how often it errs",
  asked: "Asked most",
  confusions: "Taken for each other",
  next: "What would help most",
  coverage: "Years covered by a fitted period",
} as const;

export const noConfusion = "Nothing was taken for anything else.";

export function pairWords({ pair }: Confusion): string {
  const [first, second] = pair;
  return `${first.name} and ${second === undefined ? "something that is not in the handbook" : second.name}`;
}

/** The new fact and the new observation worth most; then the years without a variant. */
export function nextSteps({ fact, observation, coverage, outside }: PartReport): readonly string[] {
  const holes = coverage.filter(({ covered }) => covered < COVERED);
  return [
    ...(fact === undefined
      ? []
      : [
          `Telling the ${fact.pair[0].name} from the ${fact.pair[1].name} would set right ${percent(fact.gain)} of all cases. ${sentence(fact.advice)}`,
        ]),
    ...(observation === undefined
      ? []
      : [
          `A count in place of a word: ${observation.feature} on the ${observation.variant}, leant on in ${percent(observation.use)} of all cases. Look at ten or more, and write how many of them show it.`,
        ]),
    ...(holes.length === 0 ? [] : [`A sighting or a paper for ${holes.map(({ year }) => year).join(", ")}.`]),
    ...(outside > (fact?.gain ?? 0)
      ? [
          `Describing copies and other makers’ parts: in ${percent(outside)} of all cases something is taken for what is not in the handbook, or the other way round.`,
        ]
      : []),
  ];
}

export function yearWords({ made, variants, covered }: YearCoverage): string {
  const versions = variants === 1 ? "1 version" : `${variants} versions`;
  return [percent(covered), versions, ...(made === undefined ? [] : [`${made} made`])].join(", ");
}

function sentence(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}.`;
}
