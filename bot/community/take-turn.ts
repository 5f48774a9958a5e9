/**
 * One message in a community: what asks for an affair is handled by it, what continues an errand goes on with it, and everything else
 * is a question about a part, to whose answer the affairs may add. Pure like `step`, which it stands before.
 */
import {
  type Handbook,
  type Interval,
  keyedDigest,
  maskSerials,
  type SerialFound,
} from "../../knowledge/index.ts";
import { chooseKnowledge } from "../conversation/choose-knowledge.ts";
import {
  type Conversation,
  caseInHand,
  errandOf,
  withErrand,
  withPinsShown,
} from "../conversation/conversation.ts";
import type { Knowledge } from "../conversation/knowledge.ts";
import { blocksInWordsOf, inWordsOf } from "../conversation/named-thing.ts";
import { blocksInUnits, inUnits } from "../conversation/saying/in-units.ts";
import type { Units } from "../conversation/saying/said-size.ts";
import type { StepTaken } from "../conversation/step.ts";
import type { IncomingMessage } from "../message.ts";
import type { Block, Reply } from "../reply.ts";
import type {
  Affair,
  Beside,
  CommunityScene,
  Handled,
  MaskedMessage,
  RecordQuery,
  Telling,
} from "./affair.ts";
import { affairs } from "./affairs.ts";
import type { CommunityMemory } from "./community-memory.ts";
import { keepersIn } from "./keepers/keepers-record.ts";
import { standingOf } from "./keepers/standing.ts";
import { learntKnowledge } from "./observations/learnt-knowledge.ts";
import { isForNextWords } from "./observations/words-wanted.ts";
import { withPeopleHere } from "./person/people-here.ts";
import { stepOfMessage, wordsOfAll } from "./quoted-post.ts";
import type { RecordChange } from "./record-change.ts";
import { recordId } from "./record-id.ts";
import { servingIn, settingsIn } from "./settings-record.ts";
import { summaryBeside } from "./summary-beside.ts";

/** Said in no community by name, it is said at home. */
export const homeCommunity = "home";

export interface TurnTaken {
  readonly conversation: Conversation;
  readonly reply: Reply;
  readonly changes: readonly RecordChange[];
  readonly tellings: readonly Telling[];
  /** The reply must not be kept. */
  readonly isToldOnce: boolean;
  /** As of what an affair handled. */
  readonly isMadeAnew: boolean;
  /** Something is to be erased before the reply is heard. */
  readonly erases: boolean;
}

/** When and with what knowledge a message is taken. */
export interface Circumstances {
  /** The handbooks that are served, at least one. */
  readonly served: readonly Knowledge[];
  readonly memory: CommunityMemory;
  /** The day that `at` is in. */
  readonly today: Interval;
  /** Milliseconds since 1970, universal time. */
  readonly at: number;
  /** The server's own secret. */
  readonly secretKey: string;
  /** What `queriesFor` this message found. */
  readonly found: CommunityScene["found"];
}

/** What must be read before the message can be taken, beside what the memory holds. */
export function queriesFor(message: IncomingMessage, found: CommunityScene["found"]): readonly RecordQuery[] {
  return affairs.flatMap(({ reads }) => reads?.(message, found) ?? []);
}

export function takeTurn(
  circumstances: Circumstances,
  conversation: Conversation,
  message: IncomingMessage,
): TurnTaken {
  const here = withPeopleHere(conversation, message);
  const scene = sceneOf(circumstances, here.conversation, message);
  const handled = handledBy(scene);
  const turn = handled === undefined ? asked(scene, message) : handledTurn(scene, handled);
  const taken = inUnitsOfTurn(scene.settings.units, inWordsOfTurn(scene.knowledge.handbook, turn));
  return { ...taken, changes: [...here.changes, ...taken.changes] };
}

/** What is said, here and elsewhere, in the handbook's word for what it is about. */
function inWordsOfTurn(handbook: Handbook, turn: TurnTaken): TurnTaken {
  const tellings = turn.tellings.map((telling) => ({
    ...telling,
    blocks: blocksInWordsOf(handbook, telling.blocks),
  }));
  return { ...turn, reply: inWordsOf(handbook, turn.reply), tellings };
}

/** Sizes are said in the units the community has chosen. */
function inUnitsOfTurn(units: Units, turn: TurnTaken): TurnTaken {
  if (units === "metric") return turn;
  const tellings = turn.tellings.map((telling) => ({
    ...telling,
    blocks: blocksInUnits(units, telling.blocks),
  }));
  return { ...turn, reply: inUnits(units, turn.reply), tellings };
}

function sceneOf(
  { served, memory, today, at, secretKey, found }: Circumstances,
  conversation: Conversation,
  message: IncomingMessage,
): CommunityScene {
  const { from, name = from, standing } = message;
  const settings = settingsIn(memory.settings);
  const community = message.community ?? homeCommunity;
  const known = servingIn(settings, served);
  const words = wordsOfAll(message);
  const plain = chooseKnowledge(
    known,
    conversation,
    { ...message, ...(words === undefined ? {} : { text: words }) },
    today,
  );
  // The key of one community makes digests that say nothing in another.
  const digest = (serial: string) => keyedDigest(secretKey, `serial ${community} ${serial}`).slice(0, 32);
  const source = message.id ?? `${at} ${message.text ?? ""}`;
  return {
    community,
    memory,
    settings,
    knowledge: measuredIn(settings.units, learntKnowledge(plain, memory.observations)),
    plain,
    loaded: known.map((one) => learntKnowledge(one, memory.observations)),
    served,
    secretKey,
    found,
    conversation,
    message: maskedMessage(message, known, digest),
    serialDigest: digest,
    speaker: { id: from, name, standing: standingOf(keepersIn(memory.keepers), from, standing) },
    today,
    at,
    newId: (purpose) => recordId(community, message.conversation, from, source, purpose),
  };
}

function measuredIn(units: Units, knowledge: Knowledge): Knowledge {
  return units === "metric" ? knowledge : { ...knowledge, units };
}

/** As the affairs see it and may keep it: without any chassis number in clear. The case reads the words itself, and masks them at once. */
function maskedMessage(
  message: IncomingMessage,
  known: readonly Knowledge[],
  digest: (serial: string) => string,
): MaskedMessage {
  const { text, answer, quoted } = message;
  const serials: SerialFound[] = [];
  const masked = (words: string): string =>
    known.reduce((shown, { handbook }) => {
      const found = maskSerials(shown, handbook.cars, digest);
      serials.push(...found.serials);
      return found.text;
    }, words);
  return {
    ...message,
    ...(text === undefined ? {} : { text: masked(text) }),
    ...(answer === undefined || !("reading" in answer)
      ? {}
      : { answer: { ...answer, reading: masked(answer.reading) } }),
    ...(quoted === undefined ? {} : { quoted: { ...quoted, text: masked(quoted.text) } }),
    serials,
  };
}

function handledBy(scene: CommunityScene): Handled | undefined {
  const errand = errandOf(scene.conversation, scene.speaker.id);
  for (const affair of affairs) {
    const handled = affair.hear?.(scene);
    if (handled === undefined) continue;
    // Whoever is asked for words and says something else gives none: their next ones are meant for something else, too.
    return isForNextWords(errand) && handled.errand === undefined ? { ...handled, errand: null } : handled;
  }
  if (errand === undefined) return undefined;
  return affairs.find(({ name }) => name === errand.affair)?.resume?.(scene, errand.state);
}

function handledTurn({ conversation, message, speaker }: CommunityScene, handled: Handled): TurnTaken {
  const { blocks, isPrivate = false, changes = [], tellings = [], errand } = handled;
  const spoken = handled.conversation ?? conversation;
  const after = errand === undefined ? spoken : withErrand(spoken, speaker.id, errand);
  const summary = summaryBeside(caseInHand(after, message.from));
  const reply: Reply = { blocks, summary, ...(isPrivate ? { isPrivate } : {}) };
  const { erases = false, isToldOnce = false, isMadeAnew = false } = handled;
  return { conversation: after, reply, changes, tellings, isToldOnce, isMadeAnew, erases };
}

/** A question about a part, with what the community knows of it beside the answer. */
function asked(scene: CommunityScene, said: IncomingMessage): TurnTaken {
  const { knowledge, today } = scene;
  const taken = stepOfMessage(knowledge, scene.conversation, said, today, scene.serialDigest);
  const besides = affairs.flatMap((affair): readonly Beside[] => besideOf(affair, scene, taken));
  const { summary } = taken.reply;
  const isAnswered = taken.hasNothing && besides.some(({ answersWords = false }) => answersWords);
  const blocks = isAnswered ? taken.reply.blocks.filter(isOwnQuestion) : taken.reply.blocks;
  const shown = besides.flatMap((beside) => beside.shown ?? []);
  return {
    conversation: shown.reduce(
      (conversation, one) => withPinsShown(conversation, one.case, one.marks),
      taken.conversation,
    ),
    reply: {
      ...taken.reply,
      blocks: [
        ...besides.flatMap(({ first = [] }) => first),
        ...blocks,
        ...besides.flatMap(({ last = [] }) => last),
      ],
      summary: { ...summary, pinned: besides.flatMap(({ pinned = [] }) => pinned) },
    },
    changes: besides.flatMap(({ changes = [] }) => changes),
    tellings: besides.flatMap(({ tellings = [] }) => tellings),
    isToldOnce: false,
    isMadeAnew: false,
    erases: false,
  };
}

/** A question that waits in a case; which part it is, nobody who asked something else needs to say. */
function isOwnQuestion(block: Block): boolean {
  return block.kind === "question" && block.feature !== "part";
}

function besideOf(affair: Affair, scene: CommunityScene, taken: StepTaken): readonly Beside[] {
  const beside = affair.beside?.(scene, taken);
  return beside === undefined ? [] : [beside];
}
