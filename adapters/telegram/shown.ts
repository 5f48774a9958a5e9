/**
 * What the door remembers of one place, in the store: which message shows which case, what its buttons stand for, and which
 * messages have been answered. With it a button carries a short name only, a redelivered message changes nothing, and another
 * process can go on where this one fell.
 */
import { createHash } from "node:crypto";
import { z } from "zod";
import { PressedAnswer, type Store } from "../../bot/index.ts";
import { StandingSaid } from "./carried-standing.ts";

const Pressed = z.union([z.strictObject({ answer: PressedAnswer }), z.strictObject({ say: z.string() })]);

const Board = z
  .strictObject({
    /** Names the board in its buttons; made of what it answers, so that the same answer has the same name. */
    key: z.string(),
    case: z.string(),
    /** Whom it answers; null for what is told to all. */
    person: z.number().nullable(),
    /** The messages that show it, the buttons under the last; empty while it is being sent. */
    messages: z.array(z.number()).readonly(),
    /** The feature that is asked for. */
    question: z.string().nullable(),
    /** What it is about: a case, a flow of questions, or nothing that goes on. */
    subject: z.string().nullable(),
    buttons: z.array(Pressed).readonly(),
    /** The newest message known in the chat when sending began: what is sent comes after it. */
    after: z.number(),
    isSent: z.boolean(),
    /** Where its case stands, as the messages show it. */
    standing: StandingSaid.optional(),
    /** Where its buttons are said, when that is another place than the one that shows it: a private answer to a group. */
    saidIn: z.strictObject({ conversation: z.string(), community: z.string() }).readonly().optional(),
  })
  .readonly();
export type Board = z.output<typeof Board>;

const Shown = z
  .strictObject({
    /** The newest last. */
    boards: z.array(Board).readonly(),
    /** Keys of what has been answered, the newest last. */
    answered: z.array(z.string()).readonly(),
  })
  .readonly();
export type Shown = z.output<typeof Shown>;

const kind = "telegram-place";
const nothingShown: Shown = { boards: [], answered: [] };
/** In a club's group a dozen people may be asked something at once, and come back from the garage after the others. */
const mostBoards = 40;
/** Updates wait a day at most on the platform; a place hears fewer than this of them at once. */
const mostAnswered = 60;

/** A short name for what is answered, 11 characters fit for button data. */
export function keyOf(conversation: string, message: string): string {
  return createHash("sha256").update(`${conversation}\n${message}`).digest("base64url").slice(0, 11);
}

export async function shownIn(store: Store, conversation: string): Promise<Shown> {
  return readShown(await store.current(kind, conversation));
}

/** Changes what is shown in a place, and gives it as it is afterwards. `change` may run twice. */
export async function changeShown(
  store: Store,
  conversation: string,
  why: string,
  change: (shown: Shown) => Shown,
): Promise<Shown> {
  const by = { kind, id: conversation, by: "telegram", at: Date.now(), why };
  return store.advance(by, (state) => {
    const next = change(readShown(state));
    const kept: Shown = {
      boards: next.boards.slice(-mostBoards),
      answered: next.answered.slice(-mostAnswered),
    };
    return { state: kept, outcome: kept };
  });
}

export function withBoard(shown: Shown, board: Board): Shown {
  const others = shown.boards.filter(({ key }) => key !== board.key);
  return { ...shown, boards: [...others, board] };
}

export function withAnswered(shown: Shown, key: string): Shown {
  return shown.answered.includes(key) ? shown : { ...shown, answered: [...shown.answered, key] };
}

/** What is shown in a place without what answers somebody, by the bot's name for them ("telegram:7"). */
export function shownWithout(person: string, state: unknown): unknown {
  const parsed = Shown.safeParse(state);
  if (!parsed.success) return undefined;
  const boards = parsed.data.boards.filter((board) => person !== `telegram:${board.person}`);
  return { ...parsed.data, boards };
}

/** A record that does not parse is one of another time: what it showed can no longer be pressed, and no more is lost. */
function readShown(state: unknown): Shown {
  const parsed = Shown.safeParse(state);
  return parsed.success ? parsed.data : nothingShown;
}
