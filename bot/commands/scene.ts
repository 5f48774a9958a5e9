/** What a command may look at to answer; it changes nothing. */
import type { Assessed, NextQuestion } from "../conversation/assessed.ts";
import type { Case } from "../conversation/case.ts";
import type { Conversation } from "../conversation/conversation.ts";
import type { Knowledge } from "../conversation/knowledge.ts";

export interface Scene {
  readonly knowledge: Knowledge;
  readonly conversation: Conversation;
  readonly kept: Case;
  /** Undefined while the part is not known. */
  readonly assessed: Assessed | undefined;
  /** The question that is open after this message. */
  readonly question: NextQuestion | null;
  readonly person: string;
}
