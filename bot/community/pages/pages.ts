/**
 * What the pages of a community are made from: its records as they stand, read and never changed. Whatever a page lets somebody do is said
 * in words through `receive`, which asks who may.
 */
import { emptyConversation } from "../../conversation/conversation.ts";
import { type AnswerCard, answerCard } from "../../conversation/saying/answer-card.ts";
import type { IncomingMessage, Standing } from "../../message.ts";
import { recordsFor, type Surroundings } from "../../receive.ts";
import type { Block, Reply } from "../../reply.ts";
import type { CarSheet } from "../car-sheet/car-sheet.ts";
import { readSharedSheet } from "../car-sheet/read-shared-sheet.ts";
import type { AuditEntry, CommunityMemory } from "../community-memory.ts";
import { isOpen } from "../hand-over/handed-over.ts";
import { keepersIn, type Role } from "../keepers/keepers-record.ts";
import { standingOf } from "../keepers/standing.ts";
import { ledgerKind } from "../ledger.ts";
import { learntKnowledge } from "../observations/learnt-knowledge.ts";
import { oldestFirst } from "../oldest-first.ts";
import { nameOf } from "../person/name-of.ts";
import { standingPins } from "../pins/pin.ts";
import { disputedByPeriods } from "../pins/pin-dispute.ts";
import { pinnedBlock } from "../pins/pinned-block.ts";
import { servingIn, settingsIn } from "../settings-record.ts";
import { homeCommunity, takeTurn } from "../take-turn.ts";
import { type ExportedObservation, exportedObservations } from "./exported.ts";
import { nothingOfPart, type SeenOfPart, seenOfPart } from "./seen-of-part.ts";

export type PinnedBlock = Extract<Block, { kind: "pinned" }>;

/** A pinned answer with the part it is about; null: no single part. */
export interface PinOnPage {
  readonly block: PinnedBlock;
  readonly handbook: string;
  readonly part: string | null;
  /** The question in plain words that it answers. */
  readonly question: string | null;
}

/** A case that was put to the keepers and waits. */
export interface CaseOnPage {
  readonly id: string;
  readonly askerName: string;
  readonly part: string | null;
  /** Milliseconds since 1970, universal time. */
  readonly at: number;
  readonly notes: string;
  readonly sayings: readonly { readonly name: string; readonly words: string }[];
}

/** An observation that waits for a keeper. */
export interface ObservationOnPage {
  readonly id: string;
  /** What was seen, what it comes to, what accepting it would change in the numbers, photographs, what was said about it. */
  readonly blocks: readonly Block[];
}

export interface Pages {
  /** What the answer to a message would be, in a conversation of its own; nothing is kept. */
  look(message: IncomingMessage): Promise<Reply>;
  /** What somebody may do; `vouched` is what their platform says. */
  standing(community: string, person: string, vouched?: Standing): Promise<Standing>;
  /** The pinned answers that stand, the newest first, each with what speaks against it. */
  pins(community: string): Promise<readonly PinOnPage[]>;
  /** Open cases, the oldest first. */
  cases(community: string): Promise<readonly CaseOnPage[]>;
  /** The car sheet behind a link that its owner shares; undefined: there is none, or it was taken back. */
  sheet(community: string, id: string): Promise<CarSheet | undefined>;
  /** Those that wait, the oldest first, at most `limit`; seen as `keeper` sees them. */
  observations(keeper: IncomingMessage, limit: number): Promise<readonly ObservationOnPage[]>;
  /** What accepted observations show of a part kind. */
  seen(community: string, handbook: string, part: string): Promise<SeenOfPart>;
  /** The card of a case in a kept conversation, by what the community knows today; undefined as `answerCard`. */
  card(
    community: string,
    conversation: unknown,
    asked: { readonly person: string },
  ): Promise<AnswerCard | undefined>;
  /** The accepted observations as data. */
  exported(community: string): Promise<readonly ExportedObservation[]>;
  /** Those of which anything is kept, by code point. */
  communities(): Promise<readonly string[]>;
  people(community: string): Promise<readonly Role[]>;
  /** What was done, the newest first, at most 200; `by`: as people here are called. */
  audit(community: string): Promise<readonly AuditEntry[]>;
}

export function pagesOf(surroundings: Surroundings): Pages {
  const { memories, store, clock, secretKey } = surroundings;
  return {
    async look(message) {
      const memory = await memories.upToDate(message.community ?? homeCommunity);
      const found = await recordsFor(store, message);
      const served = surroundings.knowledge();
      const at = clock.milliseconds();
      const circumstances = { served, memory, today: clock.today(), at, secretKey, found };
      return takeTurn(circumstances, emptyConversation, message).reply;
    },
    async sheet(community, id) {
      const memory = await memories.upToDate(community);
      return readSharedSheet(store, surroundings.knowledge(), memory, community, id, clock.today());
    },
    async standing(community, person, vouched = "asker") {
      const { keepers } = await memories.upToDate(community);
      return standingOf(keepersIn(keepers), person, vouched);
    },
    async pins(community) {
      return pinsOn(surroundings, await memories.upToDate(community));
    },
    async cases(community) {
      const { handedOver } = await memories.upToDate(community);
      return oldestFirst([...handedOver].filter(([, record]) => isOpen(record))).map(
        ([id, { askerName, part, at, notes, sayings }]) => ({
          id,
          askerName,
          part,
          at,
          notes,
          sayings,
        }),
      );
    },
    async observations(keeper, limit) {
      const memory = await memories.upToDate(keeper.community ?? homeCommunity);
      const at = clock.milliseconds();
      const served = surroundings.knowledge();
      const circumstances = { served, memory, today: clock.today(), at, secretKey, found: new Map() };
      return oldestFirst([...memory.observations.byId].filter(([, { stands }]) => stands === "waiting"))
        .slice(0, limit)
        .map(([id]) => {
          const message = { ...keeper, text: `observation ${id}` };
          const { blocks } = takeTurn(circumstances, emptyConversation, message).reply;
          return { id, blocks: blocks.filter(({ kind }) => kind !== "choices") };
        });
    },
    async seen(community, handbook, part) {
      const { observations } = await memories.upToDate(community);
      const known = surroundings.knowledge().find((one) => one.handbook.cover.id === handbook);
      return known === undefined ? nothingOfPart : seenOfPart(known, observations, part);
    },
    async card(community, conversation, asked) {
      const { observations } = await memories.upToDate(community);
      const learnt = surroundings.knowledge().map((plain) => learntKnowledge(plain, observations));
      return answerCard(learnt, conversation, asked);
    },
    async exported(community) {
      return exportedObservations((await memories.upToDate(community)).observations);
    },
    async communities() {
      const ids: string[] = [];
      for await (const { id } of store.currents(ledgerKind, "")) ids.push(id);
      return ids;
    },
    async people(community) {
      return keepersIn((await memories.upToDate(community)).keepers).roles;
    },
    async audit(community) {
      const memory = await memories.upToDate(community);
      return memory.audit.toReversed().map((entry) => ({ ...entry, by: nameOf(memory, entry.by) }));
    },
  };
}

function pinsOn({ knowledge }: Surroundings, memory: CommunityMemory): readonly PinOnPage[] {
  const served = servingIn(settingsIn(memory.settings), knowledge());
  return standingPins(memory.pins)
    .toReversed()
    .map(([id, pin]) => {
      const { handbook, part, question } = pin.scope;
      const known = served.find((one) => one.handbook.cover.id === handbook);
      const learnt = known && learntKnowledge(known, memory.observations);
      const dispute = known && learnt && disputedByPeriods(known, learnt, pin);
      const block = pinnedBlock(id, pin, dispute);
      // A pinned answer is always of this kind; the type of blocks is wider.
      return { block: block as PinnedBlock, handbook, part, question };
    });
}
