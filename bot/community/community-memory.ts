/**
 * What a process knows of its communities: every record answers go by, read once and then kept up with the ledger. Reading the whole
 * store for every message would not do for a hundred thousand observations, and a process that only trusted its own changes
 * would miss those of the others.
 */
import type { Store, Version } from "../ports.ts";
import { handedOverKind } from "./hand-over/handed-over.ts";
import { keepersKind } from "./keepers/keepers-record.ts";
import { LedgerEntry, ledgerKind } from "./ledger.ts";
import { observationKind } from "./observations/observations-view.ts";
import { nobody } from "./person/person-record.ts";
import { pinKind } from "./pins/pin.ts";
import { type Shelf, shelf } from "./record-kind.ts";
import { settingsKind } from "./settings-record.ts";

function emptyShelves() {
  return {
    settings: shelf(settingsKind),
    keepers: shelf(keepersKind),
    handedOver: shelf(handedOverKind),
    pins: shelf(pinKind),
    observations: shelf(observationKind),
  };
}

type Shelves = ReturnType<typeof emptyShelves>;

/** Views are read only outside this file; they stand still while a message is being answered, for that does not wait. */
export type CommunityMemory = {
  readonly [Name in keyof Shelves]: Shelves[Name]["view"];
} & {
  /** The ledger's number up to which everything is in. */
  readonly version: number;
  /** The last things done, the oldest first. */
  readonly audit: readonly AuditEntry[];
};

export interface AuditEntry {
  readonly by: string;
  /** Milliseconds since 1970, universal time. */
  readonly at: number;
  readonly why: string;
}

/** More is read from the ledger itself. */
const mostAudited = 200;

export interface CommunityMemories {
  /** The memory of a community with everything in it that was durable when this was asked for. */
  upToDate(community: string): Promise<CommunityMemory>;
}

interface Held {
  readonly shelves: Shelves;
  memory: CommunityMemory;
}

export function communityMemories(store: Store): CommunityMemories {
  const held = new Map<string, Promise<Held>>();

  async function load(community: string): Promise<Held> {
    // The ledger first: what changes while we read is read again afterwards.
    const version = await store.version(ledgerKind, community);
    const shelves = emptyShelves();
    for (const one of Object.values(shelves)) await fill(one, community);
    const lately = await store.history(ledgerKind, community, Math.max(0, version - mostAudited));
    const known = lately.filter((entry) => entry.version <= version);
    return { shelves, memory: memoryOf(shelves, version, known) };
  }

  async function fill(one: Shelf<unknown>, community: string): Promise<void> {
    const prefix = `${community}/`;
    for await (const { id, state } of store.currents(one.kind, prefix))
      one.put(id.slice(prefix.length), state);
  }

  async function advanced(known: Held, community: string): Promise<Held> {
    const { memory } = known;
    const newest = await store.version(ledgerKind, community);
    if (newest === memory.version) return known;
    const since = await store.history(ledgerKind, community, Math.max(0, memory.version - 1));
    if (!goesOn(memory, since)) return load(community);
    const entries = since.filter(({ version }) => version > memory.version);
    const changed = new Map(
      entries
        .flatMap(({ state }) => LedgerEntry.parse(state).changed)
        .map((record) => [`${record.kind}/${record.id}`, record]),
    );
    const states = await Promise.all(
      [...changed.values()].map(async (record) => ({
        ...record,
        state: await store.current(record.kind, `${community}/${record.id}`),
      })),
    );
    for (const { kind, id, state } of states) {
      Object.values(known.shelves)
        .find((one) => one.kind === kind)
        ?.put(id, state);
    }
    const version = Math.max(memory.version, ...entries.map((entry) => entry.version));
    // Whoever was erased is erased from what was done before, too.
    const before = entries.some(({ by }) => by === nobody)
      ? await store.history(ledgerKind, community, Math.max(0, version - mostAudited))
      : [...memory.audit, ...entries];
    known.memory = memoryOf(known.shelves, version, before);
    return known;
  }

  return {
    async upToDate(community) {
      const before = held.get(community);
      // One reader at a time for each community; whoever comes meanwhile reads on after it.
      const reading =
        before === undefined ? load(community) : before.then((known) => advanced(known, community));
      held.set(community, reading);
      try {
        return (await reading).memory;
      } catch (failure) {
        // What was half read is forgotten; the next message reads anew.
        if (held.get(community) === reading) held.delete(community);
        throw failure;
      }
    },
  };
}

/** Whether the ledger begins with what is known of it: it does not once a backup was put in its place. */
function goesOn({ version, audit }: CommunityMemory, since: readonly Version[]): boolean {
  const last = since.find((entry) => entry.version === version);
  return version === 0 || (last !== undefined && last.at === audit.at(-1)?.at);
}

function memoryOf(shelves: Shelves, version: number, lately: readonly AuditEntry[]): CommunityMemory {
  const { settings, keepers, handedOver, pins, observations } = shelves;
  const audit = lately.slice(-mostAudited).map(({ by, at, why }) => ({ by, at, why }));
  return {
    settings: settings.view,
    keepers: keepers.view,
    handedOver: handedOver.view,
    pins: pins.view,
    observations: observations.view,
    version,
    audit,
  };
}
