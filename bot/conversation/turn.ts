/** Everything that happened in one turn, from which the reply is composed; nothing in it is said yet. */
import type { Assessed, NextQuestion } from "./assessed.ts";
import type { Case, CaseFacts } from "./case.ts";
import type { Change } from "./change.ts";
import type { CaseChosen } from "./choose-case.ts";
import type { Conversation } from "./conversation.ts";
import type { Heard } from "./hear.ts";
import type { UnderstoodItem } from "./understood.ts";

/** A case beside the one talked of, with what this message told of it. */
export interface OtherCase {
  readonly kept: Case;
  readonly items: readonly UnderstoodItem[];
}

export interface Turn {
  readonly conversation: Conversation;
  readonly person: string;
  readonly heard: Heard;
  readonly chosen: CaseChosen;
  readonly others: readonly OtherCase[];
  readonly change: Change;
  /** The case after the turn. */
  readonly kept: Case;
  /** Undefined while the part is not known. */
  readonly assessed: Assessed | undefined;
  readonly question: NextQuestion | null;
  /** What was known of the case before the turn. */
  readonly before: CaseFacts;
  /** Features told in this turn. */
  readonly justTold: readonly string[];
}
