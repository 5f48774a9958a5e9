/**
 * How a script names cases. It may use an id the bot gave ("case-2"), or a name of its own, which then is a conversation of
 * its own: a script that writes all its lines at once cannot wait to be told an id.
 */

const CONVERSATION = "converse";
const GIVEN_BY_BOT = /^case-\d+$/u;

export interface CaseAddress {
  readonly conversation: string;
  /** The bot's id, when the script used one. */
  readonly case?: string;
  /** The script's own name, under which replies go out. */
  readonly ownName?: string;
}

/** Where a message belongs that names `name`, or no case at all. */
export function addressOf(name: string | undefined): CaseAddress {
  if (name === undefined) return { conversation: CONVERSATION };
  if (GIVEN_BY_BOT.test(name)) return { conversation: CONVERSATION, case: name };
  return { conversation: `${CONVERSATION}:${name}`, ownName: name };
}
