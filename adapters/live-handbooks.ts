/**
 * The handbooks that serve, as they stand on the disk now: a changed folder is taken at once if it is sound; if not, the edition before
 * goes on serving and whoever keeps the handbook is told why. Nobody who is talking meanwhile waits for it.
 */
import {
  type EditionWatch,
  type Knowledge,
  knowledgeOf,
  type Log,
  preparingKnowledge,
} from "../bot/index.ts";
import { type Handbook, type HandbookFile, loadingHandbook, problemText } from "../knowledge/index.ts";
import { failureLine } from "./errors.ts";
import { givingWay } from "./give-way.ts";
import { readHandbookFolder, usualPace, type WatchPace, watchFolder } from "./handbook-folder/index.ts";
import type { OpenHandbook } from "./handbooks.ts";

export interface HandbookEvents {
  /** Serves from now on, in place of `served`. Rejections are the receiver's to prevent. */
  onTaken(handbook: Handbook, files: readonly HandbookFile[], served?: Handbook): Promise<void>;
  /** Was not taken; `handbook` serves on. Told once for the same problems. `problems`: a line each. */
  onBroken(handbook: Handbook, problems: readonly string[]): Promise<void>;
}

/** What happens to a handbook is kept and told through `watch`; a store that refuses costs the telling, never the serving. */
export function toldThrough(watch: EditionWatch, log: Log): HandbookEvents {
  const heard = (failure: unknown) => log.error({ err: failure }, "an edition was not written down");
  return {
    onTaken: (handbook, files, served) => watch.taken(handbook, files, served).catch(heard),
    onBroken: (handbook, problems) => watch.refused(handbook, problems).catch(heard),
  };
}

export interface LiveHandbooks {
  /** In the order they were opened; what it gives changes when an edition is taken. */
  known(): readonly Knowledge[];
  /** Looks at every folder now, as if each had changed; resolves when all of it is told. */
  look(): Promise<void>;
  close(): Promise<void>;
}

interface Serving {
  open: OpenHandbook;
  knowledge: Knowledge;
  /** The files as they were looked at last; undefined when they could not be read. */
  looked: readonly HandbookFile[] | undefined;
  /** What was told to be wrong with the files that were not taken; "" when they are what serves. */
  told: string;
}

/** Watches the folders of handbooks that are open. */
export function liveHandbooks(
  handbooks: readonly OpenHandbook[],
  events: HandbookEvents,
  pace: WatchPace = usualPace,
): LiveHandbooks {
  const serving = handbooks.map(
    (open): Serving => ({ open, knowledge: knowledgeOf(open.handbook), looked: open.files, told: "" }),
  );
  let known: readonly Knowledge[] = serving.map(({ knowledge }) => knowledge);
  const ending = new AbortController();
  // One look at a time: two that overlap could put an older edition over a newer one.
  let looking: Promise<void> = Promise.resolve();
  const look = (one: Serving): Promise<void> => {
    looking = looking.then(() => lookAt(one));
    return looking;
  };

  async function lookAt(one: Serving): Promise<void> {
    if (ending.signal.aborted) return;
    const found = await foundNow(one, ending.signal);
    if (found === undefined) return;
    if ("problems" in found) return refuse(one, found.problems);
    const { open, knowledge } = found;
    const served = one.open.handbook;
    const isKnown = open.handbook.edition === served.edition;
    if (isKnown && one.told === "") return;
    one.told = "";
    if (!isKnown) {
      one.open = open;
      one.knowledge = knowledge;
      known = serving.map((each) => each.knowledge);
    }
    await events.onTaken(open.handbook, open.files, served);
  }

  async function refuse(one: Serving, problems: readonly string[]): Promise<void> {
    const told = problems.join("\n");
    if (one.told === told) return;
    one.told = told;
    await events.onBroken(one.open.handbook, problems);
  }

  const watches = serving.map((one) => watchFolder(one.open.folder, () => void look(one), pace));
  return {
    known: () => known,
    async look() {
      await Promise.all(serving.map(look));
    },
    async close() {
      for (const watch of watches) watch.close();
      ending.abort();
      await looking;
    },
  };
}

type Found = Pick<Serving, "open" | "knowledge"> | { readonly problems: readonly string[] };

/** The folder as it is now, or why it cannot be taken; undefined when it says what it said before, or the looking has ended. */
async function foundNow(one: Serving, signal: AbortSignal): Promise<Found | undefined> {
  try {
    const reading = await readHandbookFolder(one.open.folder);
    const looked = one.looked;
    one.looked = reading.ok ? reading.files : undefined;
    if (!reading.ok) return { problems: reading.problems.map(problemText) };
    const isServing = areSame(reading.files, one.open.files);
    // Not a second time in memory.
    if (isServing) one.looked = one.open.files;
    if (areSame(reading.files, looked)) return undefined;
    if (isServing) return one;
    return await takenFrom(one.open, reading.files, signal);
  } catch (failure) {
    if (signal.aborted) return undefined;
    return { problems: [failureLine(failure)] };
  }
}

/** An id is how cases know their handbook: it cannot change while they are open. */
async function takenFrom(
  { folder, handbook: { cover } }: OpenHandbook,
  files: readonly HandbookFile[],
  signal: AbortSignal,
): Promise<Found> {
  const loaded = await givingWay(loadingHandbook(files), signal);
  if (!loaded.ok) return { problems: loaded.problems.map(problemText) };
  const { handbook, warnings } = loaded;
  const { id } = handbook.cover;
  if (id !== cover.id) {
    return {
      problems: [
        `handbook.yaml: the id was ${cover.id} and is now ${id} … write the old id again, or start anew with the new one`,
      ],
    };
  }
  const open = { folder, handbook, files, warnings: warnings.map(problemText) };
  return { open, knowledge: await givingWay(preparingKnowledge(handbook), signal) };
}

/** Whether every file says the same, letter by letter: that costs next to nothing where nothing was changed. */
function areSame(now: readonly HandbookFile[], before: readonly HandbookFile[] | undefined): boolean {
  return (
    now.length === before?.length &&
    now.every(({ path, text }, index) => path === before[index]?.path && text === before[index]?.text)
  );
}
