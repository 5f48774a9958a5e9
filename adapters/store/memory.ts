/** The community's memory for as long as the process lives: for the chat in a terminal, for pipes without --store, and for tests. */
import type { Change, Store } from "../../bot/index.ts";
import { problemAlongside, withoutMessage } from "./alongside.ts";
import { answerErased, erasedRows } from "./erased-rows.ts";
import { type Head, headAfter, noHead, rowAfter, stateOf } from "./head.ts";
import type { VersionRow } from "./tables.ts";
import { versionsFrom } from "./versions-from.ts";

interface MemoryRecord {
  head: Head;
  readonly rows: VersionRow[];
  /** By message; null: erased. */
  readonly outcomes: Map<string, string | null>;
}

/** An empty store. Its changes are synchronous, so each is alone by itself; states are text, so none can be changed from outside. */
export function memoryStore(): Store {
  const kinds = new Map<string, Map<string, MemoryRecord>>();

  function recordOf(kind: string, id: string): MemoryRecord {
    return kinds.get(kind)?.get(id) ?? { head: noHead, rows: [], outcomes: new Map() };
  }

  function idsOf(kind: string): readonly string[] {
    const records = [...(kinds.get(kind) ?? [])].filter(([, { head }]) => head.text !== undefined);
    return records.map(([id]) => id).sort(byCodePoint);
  }

  /** The row that would be next; nothing is kept yet. */
  function next(change: Change, stateAfter: (state: unknown) => unknown, answer: string | null): VersionRow {
    const { head } = recordOf(change.kind, change.id);
    return rowAfter(head, change, JSON.stringify(stateAfter(stateOf(head))) ?? "null", answer, 1);
  }

  function keep(row: VersionRow): void {
    const record = recordOf(row.kind, row.id);
    record.head = headAfter(record.head, row) ?? record.head;
    record.rows.push(row);
    const records = kinds.get(row.kind) ?? new Map<string, MemoryRecord>();
    kinds.set(row.kind, records.set(row.id, record));
    if (row.message !== null) record.outcomes.set(row.message, row.outcome);
  }

  return {
    async advance(change, advance) {
      const record = recordOf(change.kind, change.id);
      const earlier = change.message === undefined ? undefined : record.outcomes.get(change.message);
      if (earlier === null) throw answerErased(change);
      if (earlier !== undefined) return JSON.parse(earlier);
      const advanced = advance(stateOf(record.head));
      const { state, outcome, alongside = [] } = advanced;
      const problem = problemAlongside(change, advanced);
      if (problem !== undefined) throw problem;
      const answer = change.message === undefined ? null : (JSON.stringify(outcome) ?? "null");
      const rows = [
        next(change, () => state, answer),
        ...alongside.map((each) => next(withoutMessage(each.change), each.advance, null)),
      ];
      rows.forEach(keep);
      return outcome;
    },
    async current(kind, id) {
      return stateOf(recordOf(kind, id).head);
    },
    async version(kind, id) {
      return recordOf(kind, id).head.version;
    },
    async history(kind, id, after = 0) {
      return versionsFrom(recordOf(kind, id).rows, "memory").filter(({ version }) => version > after);
    },
    async ids(kind) {
      return idsOf(kind);
    },
    async *currents(kind, prefix) {
      for (const id of idsOf(kind).filter((each) => each.startsWith(prefix))) {
        const { head } = recordOf(kind, id);
        if (head.text !== undefined) yield { id, version: head.version, state: stateOf(head) };
      }
    },
    async erase(change, rewrite, also = {}) {
      const { rows } = recordOf(change.kind, change.id);
      const erased = erasedRows(rows, { change, rewrite, also }, "memory");
      kinds.get(change.kind)?.delete(change.id);
      erased.forEach(keep);
    },
  };
}

/** As the databases compare: by bytes of UTF-8. */
function byCodePoint(one: string, other: string): number {
  return Buffer.compare(Buffer.from(one), Buffer.from(other));
}
