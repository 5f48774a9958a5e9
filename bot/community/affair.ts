/**
 * An affair is one thing a community does beside asking: pinning, recording what was seen, keeping its people. It hears the words that
 * ask for it, resumes an errand it has begun with somebody, and may add to an ordinary answer. Pure: what shall be kept comes out as changes.
 */
import type { Interval, SerialFound } from "../../knowledge/index.ts";
import type { Settings } from "../bot.ts";
import type { Conversation } from "../conversation/conversation.ts";
import type { Errand } from "../conversation/errand.ts";
import type { Knowledge } from "../conversation/knowledge.ts";
import type { StepTaken } from "../conversation/step.ts";
import type { IncomingMessage, Standing } from "../message.ts";
import type { Block } from "../reply.ts";
import type { CommunityMemory } from "./community-memory.ts";
import type { RecordChange } from "./record-change.ts";

export interface Member {
  readonly id: string;
  /** What others call them here. */
  readonly name: string;
  readonly standing: Standing;
}

/** A message with every chassis number in it masked, and what the numbers say of their cars. */
export interface MaskedMessage extends IncomingMessage {
  readonly serials: readonly SerialFound[];
}

export interface CommunityScene {
  readonly community: string;
  readonly memory: CommunityMemory;
  readonly settings: Settings;
  /** Of the handbook that the message is read against, sharpened by the community's observations. */
  readonly knowledge: Knowledge;
  /** The same handbook without the observations. */
  readonly plain: Knowledge;
  /** All that serve this community. */
  readonly loaded: readonly Knowledge[];
  /** All that are served anywhere. */
  readonly served: readonly Knowledge[];
  readonly conversation: Conversation;
  /** Without any chassis number in clear. */
  readonly message: MaskedMessage;
  /** Makes of a chassis number what tells the car from others in this community, and gives the number away to nobody. */
  readonly serialDigest: (serial: string) => string;
  readonly speaker: Member;
  readonly today: Interval;
  /** Milliseconds since 1970, universal time. */
  readonly at: number;
  /** What the affairs asked to be read for this message, by kind. */
  readonly found: ReadonlyMap<string, readonly FoundRecord[]>;
  /** The server's own secret: for what must not be guessed. */
  readonly secretKey: string;
  /** An id for something this message makes; the purpose tells apart what one message makes. */
  readonly newId: (purpose: string) => string;
}

/** Something to be told where nobody has just spoken. */
export type Telling =
  | { readonly audience: "keepers"; readonly blocks: readonly Block[] }
  | {
      readonly audience: "person";
      readonly conversation: string;
      readonly person: string;
      readonly blocks: readonly Block[];
    };

export interface Handled {
  readonly blocks: readonly Block[];
  /** Only for the speaker's eyes. */
  readonly isPrivate?: boolean;
  readonly changes?: readonly RecordChange[];
  readonly tellings?: readonly Telling[];
  /** The speaker's errand from now on; null: none; left out: as it was. */
  readonly errand?: Errand | null;
  /** Where the conversation itself changes too. */
  readonly conversation?: Conversation;
  /** The reply holds a secret: it goes out, and is not kept to be given again to a message that comes again. */
  readonly isToldOnce?: true;
  /** Made of what is kept, and changes nothing: a file is not kept a second time, and made anew when its message comes again. */
  readonly isMadeAnew?: true;
  /** Something was put down that is to be erased: done before anybody hears the reply. */
  readonly erases?: true;
}

/** What an affair adds to an ordinary answer. */
export interface Beside {
  /** Before and after the blocks of the answer. */
  readonly first?: readonly Block[];
  readonly last?: readonly Block[];
  readonly changes?: readonly RecordChange[];
  readonly tellings?: readonly Telling[];
  /** Ids of the pinned answers that hold. */
  readonly pinned?: readonly string[];
  /** It answers the very words of the message: where those said nothing else, nothing else is to be said. */
  readonly answersWords?: boolean;
  /** Pinned answers shown now, so that they are not shown with every message. */
  readonly shown?: { readonly case: string; readonly marks: readonly string[] };
}

export interface Affair {
  readonly name: string;
  /** Undefined when the message asks for nothing of this. */
  readonly hear?: (scene: CommunityScene) => Handled | undefined;
  /** Takes the message as the next step of the speaker's errand; undefined when it is not about it. */
  readonly resume?: (scene: CommunityScene, state: unknown) => Handled | undefined;
  /** `scene.conversation` is the one before, `taken` what the message made of it. */
  readonly beside?: (scene: CommunityScene, taken: StepTaken) => Beside | undefined;
  /**
   * Records that a process does not hold and that the affair needs for this message; they stand in `scene.found`. Asked again with what
   * was found, until there is nothing more to ask for: what is to be read may depend on what was read.
   */
  readonly reads?: (message: IncomingMessage, found: CommunityScene["found"]) => readonly RecordQuery[];
}

/** All records of a kind in the community whose id begins so, or the one that has this id. */
export type RecordQuery =
  | { readonly kind: string; readonly prefix: string }
  | {
      readonly kind: string;
      readonly id: string;
      /** A kind that is not kept by community: its ids stand as they are. */
      readonly isOfAll?: true;
    };

export interface FoundRecord {
  /** Within the community. */
  readonly id: string;
  readonly state: unknown;
}
