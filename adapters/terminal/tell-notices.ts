/**
 * What is to be told here although nobody has just spoken: a keeper's answer to whoever asked at this terminal, and what is for the keepers
 * of home, since whoever sits at the machine is its owner.
 */
import type { Block, Bot, Choice, Reply } from "../../bot/index.ts";

const MOST_AT_ONCE = 20;

/** Tells what waits, the oldest first, until `tell` says that it cannot be told now; each is settled once it was told. */
export async function tellNotices(
  { notices, noticeSettled }: Pick<Bot, "notices" | "noticeSettled">,
  tell: (reply: Reply) => boolean,
): Promise<void> {
  for (const { id, reply } of await notices(MOST_AT_ONCE)) {
    if (!tell({ ...reply, blocks: reply.blocks.map(sayable) })) return;
    await noticeSettled(id, "told");
  }
}

/**
 * A notice's choices are typed as words: numbers belong to the reply that the person has before them. What has words still to come
 * ("answer 7k3f-2m9q: …") is said in the notice itself.
 */
function sayable(block: Block): Block {
  if (block.kind !== "choices") return block;
  const whole = block.choices.filter(({ say }) => !say.endsWith("…"));
  return { ...block, choices: whole.map((choice): Choice => ({ ...choice, label: choice.say })) };
}
