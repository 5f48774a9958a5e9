/** What every part of this door holds: the platform, the bot behind it, what is remembered, and one queue a chat. */
import type { Api } from "grammy";
import type { UserFromGetMe } from "grammy/types";
import type { Bot, Log, Store } from "../../bot/index.ts";
import type { Delivering } from "./deliver.ts";
import type { FollowMove } from "./follow-move.ts";
import type { OneAtATime } from "./one-at-a-time.ts";
import type { Post } from "./post.ts";
import type { Records } from "./records.ts";
import type { Standings } from "./standings.ts";

export interface Door {
  readonly api: Api;
  readonly me: UserFromGetMe;
  readonly bot: Bot;
  readonly store: Store;
  readonly log: Log;
  readonly records: Records;
  readonly standings: Standings;
  readonly post: Post;
  readonly followMove: FollowMove;
  readonly delivering: Delivering;
  readonly inOrder: OneAtATime;
  /** Takes in a photograph by the platform's id of its file; `by` is the sender's id for the bot. */
  readonly takePhotograph: (file: string, by: string) => Promise<PhotographTaken>;
}

export type PhotographTaken =
  | { readonly ok: true; readonly id: string }
  | { readonly ok: false; readonly problem: string };
