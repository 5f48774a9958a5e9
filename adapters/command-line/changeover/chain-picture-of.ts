/** The findings of a chain as a drawing: a lane a variant. */
import type { ChainChart } from "../../../bot/index.ts";
import { formatInterval } from "../../../knowledge/index.ts";
import type { ChainFindings } from "./chain-findings.ts";
import { isSuspect } from "./findings.ts";
import { nameOf } from "./names.ts";
import { headings, pictureWords } from "./phrases.ts";
import { legendOf, spanOf, suspectsOf, wordsOf } from "./picture-of.ts";
import type { ChangeoverQuestion } from "./question.ts";

export function chainPictureOf(question: ChangeoverQuestion, findings: ChainFindings): ChainChart {
  const { judged, changes } = findings;
  const title = headings.chain(question.part?.name);
  const words = changes.map(({ interval }) => pictureWords.intervalLine(formatInterval(interval)));
  const said = changes.map(
    ({ old, new: fresh }, at) =>
      `${headings.changeOfChain(nameOf(question, old), nameOf(question, fresh))}, ${words[at] ?? ""}`,
  );
  const band = changes[0]?.interval;
  return {
    title,
    description: [title, ...said, pictureWords.sightings(judged.length), ...suspectsOf(judged)].join("; "),
    heading: [title],
    lanes: question.chain.map((variant) => ({
      name: nameOf(question, variant),
      marks: judged
        .filter(({ sighting }) => sighting.variant === variant)
        .map((one) => ({
          built: one.sighting.built,
          grade: one.sighting.grade,
          isSuspect: isSuspect(one),
          words: wordsOf(question, one),
        })),
    })),
    changes: changes.map(({ interval }, at) => ({ interval, words: words[at] ?? "" })),
    span: changes.reduce(
      (whole, { interval }) => ({
        from: Math.min(whole.from, interval.from),
        to: Math.max(whole.to, interval.to),
      }),
      spanOf(judged, undefined),
    ),
    legend: legendOf(judged, { band, month: undefined }),
  };
}
