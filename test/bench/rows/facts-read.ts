// What is read from messages that no choice has seen: only counts, because what they say is for nobody's eyes.
import { annotatedMessages } from "../../support/corpus-folder.ts";
import { demoLexicon } from "../../support/demo-lexicon.ts";
import { assertsState, f1, scoreMessage } from "../../support/score-corpus.ts";
import type { Row } from "../row.ts";

export const factsRead: Row = {
  name: "facts-read",
  about: "facts and car facts of the annotated messages, beside the half the reader was made on",
  starts: [],
  measure: async () => {
    const lexicon = await demoLexicon();
    const scored = annotatedMessages("held-out").map((message) => scoreMessage(message, lexicon));
    const made = annotatedMessages("development").map((message) => scoreMessage(message, lexicon));
    const empty = scored.filter(({ message }) => message.facts.length === 0);
    return [
      {
        what: "F1 on messages never looked at",
        value: f1(scored),
        unit: "",
        budget: { atLeast: 0.93 },
        remark: `${scored.length} messages`,
      },
      {
        what: "F1 on the half for development",
        value: f1(made),
        unit: "",
        remark: `${made.length} messages`,
      },
      {
        what: "states asserted from messages without a fact",
        value: empty.filter(assertsState).length,
        unit: "",
        budget: { atMost: 0 },
        remark: `${empty.length} messages`,
      },
    ];
  },
};
