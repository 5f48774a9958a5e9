// What keeping a message for good costs beyond the commit itself, and what messages that come together save by sharing one.
import { type DurableMessages, durableMessages, QUICK_DISK } from "../durable-messages.ts";
import type { Figure, Row } from "../row.ts";

export const durableMessagesRow: Row = {
  name: "durable-messages",
  about: "messages kept for good a second, beside the engine's own commits a second",
  starts: [],
  measure: async () => Object.entries(await durableMessages()).flatMap(figuresOf),
};

function figuresOf([engine, measured]: readonly [string, DurableMessages]): readonly Figure[] {
  const isQuick = measured.rawCommits > QUICK_DISK;
  const ratio = (what: string, value: number, atLeast: number): Figure => ({
    what: `${engine}: ${what}`,
    value,
    unit: "x",
    ...(isQuick
      ? { remark: "no budget: the disk is quick, so this is the processor's time" }
      : { budget: { atLeast } }),
  });
  return [
    { what: `${engine}: bare commits a second`, value: measured.rawCommits, unit: "" },
    { what: `${engine}: messages a second, one conversation`, value: measured.oneConversation, unit: "" },
    { what: `${engine}: messages a second, 64 conversations`, value: measured.manyConversations, unit: "" },
    {
      what: `${engine}: messages of three records a second, one conversation`,
      value: measured.threeRecords,
      unit: "",
    },
    {
      what: `${engine}: messages of three records a second, 64 conversations`,
      value: measured.manyThreeRecords,
      unit: "",
    },
    ratio("one conversation against bare commits", measured.sequentialRatio, 0.8),
    ratio("64 conversations against one", measured.concurrentRatio, 5),
    ratio("one conversation, three records, against bare commits", measured.threeRecordsRatio, 0.8),
    ratio("64 conversations, three records, against one", measured.threeRecordsConcurrentRatio, 5),
  ];
}
