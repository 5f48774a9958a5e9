/** The community's memory for as long as the process lives: for the chat in a terminal, for pipes without --store, and for tests. */
import type { Store } from "../../bot/index.ts";
import { type Head, headAfter, noHead, rowAfter } from "./head.ts";
import type { VersionRow } from "./tables.ts";
import { versionsFrom } from "./versions-from.ts";

interface MemoryRecord {
  head: Head;
  readonly rows: VersionRow[];
  readonly outcomes: Map<string, string>;
}

/** An empty store. Its changes are synchronous, so each is alone by itself; states are text, so none can be changed from outside. */
export function memoryStore(): Store {
  const kinds = new Map<string, Map<string, MemoryRecord>>();

  function recordOf(kind: string, id: string): MemoryRecord {
    return kinds.get(kind)?.get(id) ?? { head: noHead, rows: [], outcomes: new Map() };
  }

  return {
    async advance(change, advance) {
      const record = recordOf(change.kind, change.id);
      const earlier = change.message === undefined ? undefined : record.outcomes.get(change.message);
      if (earlier !== undefined) return JSON.parse(earlier);
      const { state, outcome } = advance(stateOf(record.head));
      const row = rowAfter(record.head, change, JSON.stringify(state) ?? "null", null, 1);
      record.head = headAfter(record.head, row) ?? record.head;
      record.rows.push(row);
      if (change.message !== undefined)
        record.outcomes.set(change.message, JSON.stringify(outcome) ?? "null");
      const records = kinds.get(change.kind) ?? new Map<string, MemoryRecord>();
      kinds.set(change.kind, records.set(change.id, record));
      return outcome;
    },
    async current(kind, id) {
      return stateOf(recordOf(kind, id).head);
    },
    async history(kind, id) {
      return versionsFrom(recordOf(kind, id).rows, "memory");
    },
    async ids(kind) {
      return [...(kinds.get(kind)?.keys() ?? [])].sort();
    },
  };
}

function stateOf({ text }: Head): unknown {
  return text === undefined ? undefined : JSON.parse(text);
}
