/**
 * What waits to be told to people of these pages: a keeper's answer becomes a turn of its asker's conversation, seen at once where the page
 * is open and the next time where it is not.
 */
import { createHash } from "node:crypto";
import type { Notice } from "../../bot/index.ts";
import { chatFields } from "./render/rendering.ts";
import { renderTurn } from "./render/turns.ts";
import type { Site } from "./site.ts";
import { addTurn, lightened, type Turn } from "./transcript.ts";

const MOST_AT_ONCE = 20;

/** Tells what waits, every `milliseconds`, until what it returns is called. */
export function tellNotices(site: Site, milliseconds: number): () => void {
  let timer: NodeJS.Timeout | undefined;
  let isStopped = false;
  const next = () => {
    if (isStopped) return;
    timer = setTimeout(() => {
      tellAll(site)
        .catch((failure) => site.log.warn({ err: failure }, "notices could not be told"))
        .finally(next);
    }, milliseconds);
  };
  next();
  return () => {
    isStopped = true;
    clearTimeout(timer);
  };
}

/** Tells all that waits now. */
export async function tellAll(site: Site): Promise<void> {
  for (const notice of await site.bot.notices(MOST_AT_ONCE)) {
    await tell(site, notice);
    await site.bot.noticeSettled(notice.id, "told");
  }
}

async function tell(site: Site, { id, to, reply }: Notice): Promise<void> {
  // Keepers have the desk, which shows everything that waits.
  if (to.audience === "keepers") return;
  const turn: Turn = {
    id: createHash("sha256").update(id).digest("base64url").slice(0, 27),
    at: site.clock.milliseconds(),
    said: "",
    photographs: [],
    part: reply.summary.part,
    blocks: lightened(reply.blocks, site.drawings),
  };
  await addTurn(site.store, to.conversation, "web", turn);
  // Whose page it arrives on puts its own token in.
  const controls = { action: "/said", hidden: chatFields("", turn.id) };
  const rendering = { drawings: site.drawings, units: "metric", part: null, controls } as const;
  site.live.tell(to.conversation, renderTurn(turn, rendering).markup);
}
