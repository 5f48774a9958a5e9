// What keeping a message for good costs beyond the commit itself, and what messages that come together save by sharing one. On a disk
// whose commits are so quick that the work on a message is more than a quarter of one, the budgets are missed: its share is shown.
import { type DurableMessages, durableMessages } from "../durable-messages.ts";
import type { Figure, Row } from "../row.ts";

export const durableMessagesRow: Row = {
  name: "durable-messages",
  about: "messages kept for good a second, beside the engine's own commits a second",
  starts: [],
  measure: async () => Object.entries(await durableMessages()).flatMap(figuresOf),
};

function figuresOf([engine, measured]: readonly [string, DurableMessages]): readonly Figure[] {
  const rate = (what: string, value: number): Figure => ({ what: `${engine}: ${what}`, value, unit: "" });
  const ratio = (what: string, value: number, atLeast: number): Figure => ({
    what: `${engine}: ${what}`,
    value,
    unit: "x",
    budget: { atLeast },
  });
  return [
    rate("bare commits a second", measured.rawCommits),
    { what: `${engine}: a bare commit`, value: 1000 / measured.rawCommits, unit: "ms" },
    rate("messages a second, one conversation", measured.oneConversation),
    rate("messages a second, 64 conversations", measured.manyConversations),
    rate("messages of three records a second, one conversation", measured.threeRecords),
    rate("messages of three records a second, 64 conversations", measured.manyThreeRecords),
    ratio("one conversation against bare commits", measured.sequentialRatio, 0.8),
    ratio("64 conversations against one", measured.concurrentRatio, 5),
    ratio("one conversation, three records, against bare commits", measured.threeRecordsRatio, 0.8),
    ratio("64 conversations, three records, against one", measured.threeRecordsConcurrentRatio, 5),
    {
      what: `${engine}: our processor's work beside the commit, in bare commits`,
      value: measured.processorShare,
      unit: "x",
      remark: "above 0.25 no ratio of 0.8 can be had",
    },
  ];
}
