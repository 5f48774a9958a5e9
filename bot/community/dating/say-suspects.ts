/** Cars that look swapped or misread, a line each, the surest first: of one change or of a chain. */
import { formatInterval, midpoint, type PartKind, sayProbability } from "../../../knowledge/index.ts";
import * as words from "../../conversation/phrases/changeovers.ts";
import * as phrases from "../phrases/dating.ts";
import { nameOf } from "./changeover-chart.ts";
import { isSuspect, type JudgedSighting } from "./changeover-findings.ts";

const mostSuspects = 10;

export function saySuspects(part: PartKind, judged: readonly JudgedSighting[]): readonly string[] {
  return judged
    .filter(isSuspect)
    .sort((one, other) => other.notAsBuilt - one.notAsBuilt || midpoint(one.built) - midpoint(other.built))
    .slice(0, mostSuspects)
    .map(({ id, variant, built, grade, count, notAsBuilt }) =>
      phrases.suspectLine(
        count === 1 ? id : words.sightingsCounted(count),
        nameOf(part, variant),
        formatInterval(built),
        words.gradeWords[grade],
        sayProbability(notAsBuilt),
      ),
    );
}
