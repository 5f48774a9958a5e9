/**
 * What privacy asks for without anybody asking at that moment: erasing that a crash interrupted is finished, and cases older than their
 * community keeps them are forgotten, at the start and once a day.
 */
import {
  type Clock,
  type CommunityMemories,
  type DoorKind,
  eraseAllDue,
  forgetOld,
  type Log,
  type Store,
} from "../bot/index.ts";

const DAY = 86_400_000;

interface Kept {
  readonly store: Store;
  readonly memories: CommunityMemories;
  readonly clock: Clock;
  readonly log: Log;
  readonly doorKinds: readonly DoorKind[];
}

/** Rejects when what is due at the start cannot be done; later trouble is logged, and tried again the day after. */
export async function keepPrivate(kept: Kept): Promise<{ close(): Promise<void> }> {
  await sweep(kept);
  let sweeping: Promise<void> = Promise.resolve();
  const daily = setInterval(() => {
    sweeping = sweep(kept).catch((err: unknown) =>
      kept.log.error({ err }, "what is due was not erased, or old cases were not forgotten"),
    );
  }, DAY);
  daily.unref();
  return {
    async close() {
      clearInterval(daily);
      await sweeping;
    },
  };
}

async function sweep({ store, memories, clock, log, doorKinds }: Kept): Promise<void> {
  await eraseAllDue(store, clock.milliseconds(), doorKinds);
  const forgotten = await forgetOld(store, memories, clock.milliseconds());
  if (forgotten > 0) log.info({ forgotten }, "old cases forgotten");
}
