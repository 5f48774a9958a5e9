// Reading a message into facts, beside what a general fuzzy search over the whole message takes to name the handbook's
// terms in it: fuse.js 7.5.0, the same names, threshold .3 anywhere in the text.

import Fuse from "fuse.js";
import { type Handbook, readMessage } from "../../../knowledge/index.ts";
import { annotatedMessages } from "../../support/corpus-folder.ts";
import { demoKnowledge, demoToday } from "../../support/demo-knowledge.ts";
import { figuresOfTimes } from "../figures-of-times.ts";
import { mean, percentile, timed } from "../percentiles.ts";
import type { Row } from "../row.ts";

const ROUNDS = 20;
/** One message in so many, and of these again one in so many for the search that is held against ours: it takes a third of a second. */
const EVERY = 16;
const EVERY_SEARCH = 8;

export const readingMessages: Row = {
  name: "reading-messages",
  about: `one in ${EVERY} messages of the development half, each read ${ROUNDS} times, beside fuse.js over one in ${EVERY_SEARCH} of them`,
  starts: [],
  measure: () => {
    const { handbook, lexicon } = demoKnowledge();
    const messages = annotatedMessages("development").filter((_, at) => at % EVERY === 0);
    const times = messages.map(({ text, context }) => {
      const read = () => readMessage(text, lexicon, { today: demoToday, ...context });
      return percentile(
        Array.from({ length: ROUNDS }, () => timed(read).milliseconds),
        0.5,
      );
    });
    const fuse = new Fuse(namesOf(handbook), { ignoreLocation: true, threshold: 0.3, includeScore: true });
    const searches = messages
      .filter((_, at) => at % EVERY_SEARCH === 0)
      .map(({ text }) => timed(() => fuse.search(text)).milliseconds);
    const own = mean(times);
    return [
      ...figuresOfTimes(times, 5),
      { what: "mean", value: own, unit: "ms", remark: `${messages.length} messages` },
      { what: "fuse.js over the whole message, mean", value: mean(searches), unit: "ms" },
      { what: "times faster", value: mean(searches) / own, unit: "x", budget: { atLeast: 10 } },
    ];
  },
};

function namesOf(handbook: Handbook): readonly string[] {
  const names = handbook.parts.flatMap((part) => [
    part.name,
    ...part.also,
    ...part.variants.flatMap((variant) => [variant.name, ...variant.also]),
    ...part.features.flatMap((feature) => [
      feature.name,
      ...feature.also,
      ...(feature.kind === "states" ? feature.states.flatMap((state) => [state.name, ...state.also]) : []),
    ]),
  ]);
  return [...new Set(names)];
}
