/**
 * The tables, the same in both engines. There is one table of versions and none of current states: a version is only ever added,
 * its number is its key, and so two processes that want to write the same next version cannot both succeed.
 */

export interface VersionRow {
  readonly kind: string;
  readonly id: string;
  /** 1, 2, 3 … without a gap. */
  readonly version: number;
  readonly era: number;
  /** Milliseconds since 1970, universal time. */
  readonly at: number;
  readonly by: string;
  readonly why: string;
  /** The platform's id of the message that asked for it, if there was one; at most once in a record. */
  readonly message: string | null;
  /** null: `state` is the whole state. Else it is what stands between the kept ends of the state before. */
  readonly kept_start: number | null;
  readonly kept_end: number | null;
  /** Of a version that was erased the whole state is empty, which is no JSON. */
  readonly state: string;
  /** What was answered, as JSON, so that the same message again gets the same answer; null without a message, and when erased. */
  readonly outcome: string | null;
  /** Of this row and the digest before it: damage and gaps anywhere in a history show at its end. */
  readonly digest: string;
}

/** One row: it is replaced when a backup is put back, which stops everybody who still goes by what stood before. */
export interface EraRow {
  readonly number: number;
  readonly begun: number;
}

export interface Tables {
  readonly era: EraRow;
  readonly version: VersionRow;
}
