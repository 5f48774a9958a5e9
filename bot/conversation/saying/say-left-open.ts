/** What an answer leaves open: its rival, how likely that is, and what would tell the two apart, true to the last word. */
import { featureById, notInHandbook, sayProbability } from "../../../knowledge/index.ts";
import type { Assessed } from "../assessed.ts";
import { featuresNamed } from "../features-named.ts";
import * as words from "../phrases/answer.ts";
import { effortWords } from "../phrases/effort.ts";
import { writtenUp } from "../phrases/trouble.ts";
import { byInformation } from "../question-worth.ts";
import { isAboutVariants, nameInSentence, rankedAnswers } from "./say-standing.ts";

/** Above this the rest is little. */
const settled = 0.95;
/** A rival below this is not worth its name. */
const worthNaming = 0.005;
const mostNamed = 3;

/** One line; undefined without a verdict or a rival. */
export function sayLeftOpen(assessed: Assessed): string | undefined {
  if (assessed.identification.verdict === null) return undefined;
  const [first, rival] = rankedAnswers(assessed).toSorted(
    (one, other) => other.probability - one.probability,
  );
  if (first === undefined || rival === undefined) return undefined;
  const name = nameInSentence(assessed, rival.class);
  const would = whatWouldSettle(assessed, first.class, rival.class);
  if (first.probability < settled) {
    const open = words.leftOpenRival(name, sayProbability(rival.probability));
    return `${open} ${would ?? words.wouldSettleNothing}`;
  }
  const little = sayProbability(1 - first.probability);
  if (rival.probability < worthNaming || rival.class === notInHandbook) return words.leftOpenLittle(little);
  return [words.leftOpenLittleBut(little, name), would].filter((line) => line !== undefined).join(" ");
}

/** Undefined when the handbook knows nothing more that tells the two apart. */
function whatWouldSettle(assessed: Assessed, first: string, rival: string): string | undefined {
  if (rival === notInHandbook) return writtenUp;
  const ids = isAboutVariants(assessed.goal)
    ? tellingApart(assessed, first, rival)
    : byInformation(assessed.table).map(({ question }) => question.id);
  const open = ids.filter((id) => !isUntellable(assessed, id)).flatMap((id) => looked(assessed, id) ?? []);
  if (open.length > 0) return words.wouldSettle(open.slice(0, mostNamed));
  const untold = featuresNamed(assessed.part, ids)
    .map(({ name }) => name)
    .slice(0, mostNamed);
  return untold.length === 0 ? undefined : words.wouldSettleUntold(untold);
}

// The rival's own tells first: they are what speaks between these two.
function tellingApart({ identification }: Assessed, first: string, rival: string): readonly string[] {
  const by = (id: string) => identification.toldApartBy.find(({ variant }) => variant === id)?.features ?? [];
  return [...new Set([...by(rival), ...by(first)])];
}

/** A look with its effort; a question about the car by its name. */
function looked({ part }: Assessed, id: string): string | undefined {
  const feature = featureById(part, id);
  return feature === undefined ? words.carNames[id] : words.dearer(feature.name, effortWords(feature.effort));
}

function isUntellable({ facts }: Assessed, id: string): boolean {
  return facts.reports.some((report) => report.feature === id);
}
