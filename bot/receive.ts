/**
 * The one path from an adapter to a reply: a turn within the store's change of the conversation, with everything it changes beside
 * in the same commit, then log. It is asynchronous only because the store is, which takes the messages of one conversation one
 * after another.
 */
import type { FoundRecord, RecordQuery } from "./community/affair.ts";
import type { CommunityMemories } from "./community/community-memory.ts";
import { ledgerStep } from "./community/ledger.ts";
import { noticeChanges } from "./community/notices/notices.ts";
import { fileNotKept, toldOnce, whyMore } from "./community/phrases/keepers.ts";
import type { DoorKind } from "./community/privacy/door-kind.ts";
import { eraseDue } from "./community/privacy/erase-due.ts";
import { alongside, BehindError, type RecordChange } from "./community/record-change.ts";
import { settingsIn } from "./community/settings-record.ts";
import { homeCommunity, queriesFor, type TurnTaken, takeTurn } from "./community/take-turn.ts";
import { type Conversation, emptyConversation, readConversation } from "./conversation/conversation.ts";
import type { Knowledge } from "./conversation/knowledge.ts";
import type { IncomingMessage } from "./message.ts";
import type { Alongside, Change, Clock, Log, Store } from "./ports.ts";
import type { Reply } from "./reply.ts";
import { text } from "./text-blocks.ts";

export interface Surroundings {
  /** The handbooks that serve now, at least one; asked anew for every message, so that an edition can change. */
  readonly knowledge: () => readonly Knowledge[];
  readonly store: Store;
  /** What this process knows of its communities; every door of one process shares it. */
  readonly memories: CommunityMemories;
  readonly clock: Clock;
  readonly log: Log;
  /** The server's own secret, the same in every process and over restarts: serials are recognised by it, invitations made from it. */
  readonly secretKey: string;
  /** Kinds under which doors keep records of their own that name people: erased with them. */
  readonly doorKinds?: readonly DoorKind[];
  /** Named in the log, and in front of its conversations' ids: "terminal", "web" … */
  readonly platform: string;
}

export type Receive = (message: IncomingMessage) => Promise<Reply>;

/** The kind under which conversations are kept. */
export const conversationKind = "conversation";

/** How often a turn is decided again because a record it changes was changed by somebody else meanwhile. */
const mostDecisions = 5;

/** A function that answers messages. It rejects only when the store does; the conversation is then as it was. */
export function receiver(surroundings: Surroundings): Receive {
  return async (message) => {
    for (let decision = 1; ; decision += 1) {
      try {
        return await receive(surroundings, message);
      } catch (failure) {
        if (!(failure instanceof BehindError) || decision === mostDecisions) throw failure;
      }
    }
  };
}

async function receive(surroundings: Surroundings, message: IncomingMessage): Promise<Reply> {
  const { store, clock, log, platform, memories } = surroundings;
  const begun = clock.milliseconds();
  const today = clock.today();
  const memory = await memories.upToDate(message.community ?? homeCommunity);
  const found = await recordsFor(store, message);
  const turn: { erases: boolean; reply?: Reply; kept?: KeptReply } = { erases: false };
  const takenOn = (state: unknown): TurnTaken => {
    const served = surroundings.knowledge();
    const { secretKey } = surroundings;
    const circumstances = { served, memory, today, at: begun, secretKey, found };
    return takeTurn(circumstances, kept(state, log), message);
  };
  const given = await store.advance(changeBy(message, begun), (state) => {
    const taken = takenOn(state);
    const outcome = asKept(taken);
    Object.assign(turn, { erases: taken.erases, reply: taken.reply, kept: outcome });
    const notices = noticeChanges(
      message.community ?? homeCommunity,
      taken.tellings,
      settingsIn(memory.settings),
      `${message.conversation} ${message.id ?? begun}`,
    );
    return {
      state: taken.conversation,
      outcome,
      alongside: besides(message, begun, [...taken.changes, ...notices]),
    };
  });
  // An answer that is not the one just made is that of a message that came before; what it asked for a crash may have left to be done.
  const isOfThisTurn = given === turn.kept;
  if (turn.erases || !isOfThisTurn)
    await eraseDue(store, message.community ?? homeCommunity, begun, surroundings.doorKinds ?? []);
  const reply = isOfThisTurn ? (turn.reply ?? given) : await again();
  async function again(): Promise<Reply> {
    if (given.isMadeAnew !== true) return given;
    const taken = takenOn(await store.current(conversationKind, message.conversation));
    return taken.isMadeAnew ? taken.reply : given;
  }
  log.info(
    {
      platform,
      outcome: outcomeOf(reply),
      variantsLeft: reply.summary.uncertainty.remaining.length,
      milliseconds: clock.milliseconds() - begun,
    },
    "question answered",
  );
  return reply;
}

/** What a message that comes again is given. */
type KeptReply = Reply & { readonly isMadeAnew?: true };

/** In place of a secret there is none: whoever reads the store shall not find it. A file of what is kept is not kept again. */
function asKept({ reply, isToldOnce, isMadeAnew }: TurnTaken): KeptReply {
  if (isToldOnce) return { ...reply, blocks: [text(toldOnce)] };
  return isMadeAnew ? { ...reply, blocks: [text(fileNotKept)], isMadeAnew } : reply;
}

/** A look may ask for what the one before found; more looks than this are a ring. */
const mostLooks = 4;

/** What the affairs need read for this message, by kind; most messages need nothing. */
export async function recordsFor(
  store: Store,
  message: IncomingMessage,
): Promise<ReadonlyMap<string, readonly FoundRecord[]>> {
  const community = message.community ?? homeCommunity;
  const found = new Map<string, readonly FoundRecord[]>();
  const read = new Set<string>();
  for (let look = 0; look < mostLooks; look += 1) {
    const queries = queriesFor(message, found).filter((query) => !read.has(JSON.stringify(query)));
    if (queries.length === 0) break;
    for (const query of queries) {
      read.add(JSON.stringify(query));
      found.set(query.kind, [
        ...(found.get(query.kind) ?? []),
        ...(await recordsOf(store, community, query)),
      ]);
    }
  }
  return found;
}

async function recordsOf(
  store: Store,
  community: string,
  query: RecordQuery,
): Promise<readonly FoundRecord[]> {
  if ("id" in query) {
    const { kind, id, isOfAll = false } = query;
    return [{ id, state: await store.current(kind, isOfAll ? id : `${community}/${id}`) }];
  }
  const records: FoundRecord[] = [];
  for await (const { id, state } of store.currents(query.kind, `${community}/${query.prefix}`)) {
    records.push({ id: id.slice(community.length + 1), state });
  }
  return records;
}

/** The changes as the store takes them, and the ledger's step when answers go by any of them. */
function besides(message: IncomingMessage, at: number, changes: TurnTaken["changes"]): readonly Alongside[] {
  const community = message.community ?? homeCommunity;
  const told = changes.filter(({ isAside = false }) => !isAside);
  const rows = changes.map((change) => alongside(community, change, message.from, at));
  if (told.length === 0) return rows;
  const changed = told.map(({ kind, id }) => ({ kind, id }));
  return [...rows, ledgerStep(community, changed, message.from, at, saidOf(told))];
}

/** Of a long import the first few stand for all. */
const mostSaid = 5;

function saidOf(changes: readonly RecordChange[]): string {
  const said = changes.slice(0, mostSaid).map(({ why }) => why);
  const left = changes.length - said.length;
  return [...said, ...(left === 0 ? [] : [whyMore(left)])].join("; ");
}

function changeBy(message: IncomingMessage, at: number): Change {
  return {
    kind: conversationKind,
    id: message.conversation,
    by: message.from,
    at,
    why: message.answer === undefined ? "said" : "answered",
    ...(message.id === undefined ? {} : { message: message.id }),
  };
}

/** A state that does not parse is not thrown away in silence: the log says so before a new conversation begins. */
function kept(state: unknown, log: Log): Conversation {
  if (state === undefined || state === null) return emptyConversation;
  const conversation = readConversation(state);
  if (conversation !== undefined) return conversation;
  log.warn({}, "kept conversation is not readable, begun anew");
  return emptyConversation;
}

function outcomeOf({ summary }: Reply): string {
  if (summary.part === null) return "part unknown";
  if (!summary.done) return "asked";
  return summary.verdict === null ? "left open" : summary.verdict.class;
}
