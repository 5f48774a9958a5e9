// What keeping a message for good costs beyond the commit itself, and what messages that come together save by sharing one.
import { type DurableMessages, durableMessages } from "../durable-messages.ts";
import type { Figure, Row } from "../row.ts";

export const durableMessagesRow: Row = {
  name: "durable-messages",
  about: "messages kept for good a second, beside the engine's own commits a second",
  starts: [],
  measure: async () => Object.entries(await durableMessages()).flatMap(figuresOf),
};

function figuresOf([engine, measured]: readonly [string, DurableMessages]): readonly Figure[] {
  return [
    { what: `${engine}: bare commits a second`, value: measured.rawCommits, unit: "" },
    { what: `${engine}: messages a second, one conversation`, value: measured.oneConversation, unit: "" },
    { what: `${engine}: messages a second, 64 conversations`, value: measured.manyConversations, unit: "" },
    {
      what: `${engine}: one conversation against bare commits`,
      value: measured.sequentialRatio,
      unit: "x",
      budget: { atLeast: 0.8 },
    },
    {
      what: `${engine}: 64 conversations against one`,
      value: measured.concurrentRatio,
      unit: "x",
      budget: { atLeast: 5 },
    },
  ];
}
