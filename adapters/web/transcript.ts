/**
 * The last turns of a conversation as the page shows them: what was said, what was answered. The case itself is the bot's; this is what
 * a page that is opened again, or lives without script, has to show.
 */
import { z } from "zod";
import { type Block, type Store, transcriptKind } from "../../bot/index.ts";
import type { Drawings } from "./drawings.ts";

const Turn = z.strictObject({
  id: z.string(),
  /** Milliseconds since 1970. */
  at: z.number(),
  /** What the person said, in words or as the label of what was pressed; empty for what came unasked. */
  said: z.string(),
  photographs: z.array(z.string()),
  part: z.string().nullable(),
  /** Our own replies, kept as they were. */
  blocks: z.array(z.custom<Block>((value) => typeof value === "object" && value !== null && "kind" in value)),
});
export type Turn = z.output<typeof Turn>;

const Transcript = z.strictObject({ turns: z.array(Turn) });

const MOST_TURNS = 12;

/** The turns of a conversation, the oldest first; none when nothing was said or what is kept cannot be read. */
export async function turnsOf(store: Store, conversation: string): Promise<readonly Turn[]> {
  return readTurns(await store.current(transcriptKind, conversation));
}

/** Adds a turn. One with the id of a turn that is there changes nothing. */
export async function addTurn(store: Store, conversation: string, by: string, turn: Turn): Promise<void> {
  const change = { kind: transcriptKind, id: conversation, by, at: turn.at, why: "said", message: turn.id };
  await store.advance(change, (state) => ({
    state: { turns: [...readTurns(state), turn].slice(-MOST_TURNS) },
    outcome: null,
  }));
}

function readTurns(state: unknown): readonly Turn[] {
  const parsed = Transcript.safeParse(state);
  return parsed.success ? parsed.data.turns : [];
}

/** The blocks with the handbook's drawings by name: a drawing said twenty times is not kept twenty times. */
export function lightened(blocks: readonly Block[], drawings: Drawings): Block[] {
  return blocks.map((block) =>
    block.kind === "picture" ? { ...block, svg: drawings.shortened(block.svg) } : block,
  );
}
