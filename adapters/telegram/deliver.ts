/**
 * A reply brought to its place: into the message that shows the case, where it moves that case on, else as messages of its own. What is
 * about to be sent is written down before, and that it was sent after, so that whoever is interrupted knows to look first.
 */
import type { Log, Reply, Store } from "../../bot/index.ts";
import { attachments } from "./attachments.ts";
import { keyboardOf } from "./buttons.ts";
import { standingSaid, withStanding } from "./carried-standing.ts";
import { forTheLog } from "./for-the-log.ts";
import { answerHint } from "./phrases.ts";
import type { Place } from "./places.ts";
import type { Post, Posted } from "./post.ts";
import { type Page, type Rendered, renderReply } from "./render.ts";
import { type Said, showingOf } from "./showing.ts";
import { type Board, changeShown, keyOf, type Shown, withAnswered, withBoard } from "./shown.ts";
import type { Photographs } from "./take-photograph.ts";
import { isRefused } from "./trouble.ts";

export interface Delivering {
  readonly store: Store;
  readonly post: Post;
  readonly pictureOf: (svg: string) => Promise<Uint8Array>;
  readonly photographs: Pick<Photographs, "read">;
  readonly publicAddress: string | undefined;
  readonly log: Log;
}

export interface Delivery {
  readonly place: Place;
  /** The platform's name of what is answered. */
  readonly message: string;
  readonly reply: Reply;
  /** Who is answered; null when all are told. */
  readonly person: number | null;
  /** How it came to be said; decides whether the message that shows the case is edited. */
  readonly said: Said;
  /** The newest message known in the chat. */
  readonly after: number;
  /** Where it was said, when it is shown elsewhere. */
  readonly saidIn?: Board["saidIn"];
}

/** Shows the reply in its place, once. Rejects with the platform's refusal when nothing can be said there. */
export async function deliver(delivering: Delivering, delivery: Delivery): Promise<void> {
  const { store } = delivering;
  const { place, message, reply } = delivery;
  const key = keyOf(place.conversation, message);
  const page = pageFor(delivering, place);
  const renderings = { whole: renderReply(reply, page), beside: renderReply(withoutQuestion(reply), page) };
  const plan = await planned(store, delivery, key, renderings);
  if (plan === undefined) return;
  const rendered = plan.isBeside
    ? renderings.beside
    : renderReply(withStanding(reply, plan.board.standing), page);
  const messages = await carriedOut(delivering, delivery, plan, rendered);
  await changeShown(store, place.conversation, "shown", (shown) =>
    withAnswered(
      rendered.buttons.length === 0 && rendered.question === null
        ? { ...shown, boards: shown.boards.filter((board) => board.key !== key) }
        : withBoard(shown, { ...plan.board, messages, isSent: true }),
      key,
    ),
  );
  for (const old of plan.outdated) await delivering.post.retire(place, old, "buttons");
}

interface Renderings {
  readonly whole: Rendered;
  /** Without the question, which stays open where it is. */
  readonly beside: Rendered;
}

function withoutQuestion(reply: Reply): Reply {
  return { ...reply, blocks: reply.blocks.filter(({ kind }) => kind !== "question") };
}

/** In groups only answers to the bot's own messages reach it, so a question for words says so. */
function pageFor({ publicAddress }: Delivering, { isPrivate }: Place): Page {
  return {
    ...(publicAddress === undefined ? {} : { publicAddress }),
    ...(isPrivate ? {} : { answerHint }),
  };
}

interface Plan {
  readonly board: Board;
  /** An earlier try began and did not end. */
  readonly isSuspect: boolean;
  readonly known: ReadonlySet<number>;
  /** The message that is shown as answered. */
  readonly replyTo: number | undefined;
  /** What is said stands by itself; the question stays open where it is. */
  readonly isBeside: boolean;
  /** Messages whose buttons are now shown elsewhere. */
  readonly outdated: readonly number[];
}

/** What is going to be done, written down; undefined when it has been done before. */
async function planned(
  store: Store,
  delivery: Delivery,
  key: string,
  { whole, beside }: Renderings,
): Promise<Plan | undefined> {
  const { place, reply } = delivery;
  let plan: Plan | undefined;
  await changeShown(store, place.conversation, "showing", (shown) => {
    plan = undefined;
    if (shown.answered.includes(key)) return shown;
    const begun = shown.boards.find((board) => board.key === key);
    const known = new Set(shown.boards.flatMap(({ messages }) => messages));
    const showing = showingOf(shown, reply, whole, delivery);
    const replyTo = answeredBy(shown, delivery);
    const isBeside = showing.where === "beside" && beside.pages.length > 0;
    const rendered = isBeside ? beside : whole;
    if (begun !== undefined) {
      plan = {
        board: begun,
        isSuspect: true,
        known,
        replyTo,
        isBeside: begun.question === null && isBeside,
        outdated: [],
      };
      return shown;
    }
    const edited = showing.where === "in" ? showing.board : undefined;
    const board = newBoard(delivery, key, { rendered, edited, isBeside, known });
    plan = { board, isSuspect: false, known, replyTo, isBeside, outdated: outdatedBy(shown, board, edited) };
    const others = shown.boards.filter((one) => one.key !== edited?.key);
    return withBoard({ ...shown, boards: others }, board);
  });
  return plan;
}

interface Showing {
  readonly rendered: Rendered;
  readonly edited: Board | undefined;
  readonly isBeside: boolean;
  readonly known: ReadonlySet<number>;
}

function newBoard(
  { reply, person, after, saidIn }: Delivery,
  key: string,
  { rendered, edited, isBeside, known }: Showing,
): Board {
  const standing = isBeside ? undefined : standingSaid(reply, edited?.standing);
  return {
    key,
    case: reply.summary.case,
    person,
    messages: edited?.messages ?? [],
    question: rendered.question,
    subject: rendered.subject,
    buttons: rendered.buttons.flat().map(({ pressed }) => pressed),
    after: Math.max(after, ...known),
    isSent: false,
    ...(standing === undefined ? {} : { standing }),
    ...(saidIn === undefined ? {} : { saidIn }),
  };
}

/** Where several people talk: what was written or pressed, or, when nobody spoke, what the person was told last. */
function answeredBy({ boards }: Shown, { place, said, person }: Delivery): number | undefined {
  if (place.isPrivate) return undefined;
  if (said.by === "pressing") return said.board.messages.at(-1);
  if (said.by === "writing") return said.message;
  return person === null ? undefined : boards.findLast((board) => board.person === person)?.messages.at(-1);
}

/** A question is open in one message only. */
function outdatedBy(shown: Shown, board: Board, edited: Board | undefined): readonly number[] {
  if (board.question === null) return [];
  return shown.boards
    .filter((one) => one.question !== null && one.case === board.case && one.key !== edited?.key)
    .flatMap(({ messages }) => messages.slice(-1));
}

async function carriedOut(
  delivering: Delivering,
  delivery: Delivery,
  plan: Plan,
  rendered: Rendered,
): Promise<readonly number[]> {
  const { board } = plan;
  const send = sender(delivering.post, delivery, plan);
  const attached = await attachments(delivering, rendered);
  const isEdit = board.messages.length > 0;
  if (!isEdit) await sendAttached(delivering.log, attached, send);
  const messages = await showPages(delivering.post, delivery.place, board, rendered, send);
  if (isEdit) await sendAttached(delivering.log, attached, send);
  return messages;
}

/** A picture that the platform does not take is left out: the words stand without it. */
async function sendAttached(log: Log, attached: readonly Posted[], send: Send): Promise<void> {
  for (const posted of attached) {
    try {
      await send(posted);
    } catch (failure) {
      if (!isRefused(failure)) throw failure;
      log.error(forTheLog(failure), "picture or file refused, left out");
    }
  }
}

type Send = (posted: Posted) => Promise<number>;

/** Sends one thing after another; the first of them is shown as the answer to what was written, where several people talk. */
function sender(post: Post, { place }: Delivery, { board, isSuspect, known, ...plan }: Plan): Send {
  const ours = new Set(known);
  let after = board.after;
  let { replyTo } = plan;
  return async (posted) => {
    const answered = replyTo === undefined ? {} : { replyTo };
    const message = await post.send(place, posted, { after, known: ours, isSuspect, ...answered });
    replyTo = undefined;
    ours.add(message);
    after = Math.max(after, message);
    return message;
  };
}

/** Each page into the message that stands there, or a new one; the buttons under the last. */
async function showPages(
  post: Post,
  place: Place,
  board: Board,
  { pages, buttons }: Rendered,
  send: Send,
): Promise<readonly number[]> {
  const messages: number[] = [];
  for (const [index, html] of pages.entries()) {
    const keyboard = index === pages.length - 1 ? keyboardOf(board.key, buttons) : undefined;
    const old = board.messages[index];
    const isEdited = old !== undefined && (await post.edit(place, old, html, keyboard));
    messages.push(
      isEdited ? old : await send({ kind: "text", html, ...(keyboard === undefined ? {} : { keyboard }) }),
    );
  }
  for (const surplus of board.messages.slice(pages.length)) await post.retire(place, surplus, "message");
  return messages;
}
