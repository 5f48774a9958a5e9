/** What the conversation needs from outside, as the few methods it calls; pino, a database or a fake fits without a wrapper. */

export interface Log {
  info(fields: object, message: string): void;
  warn(fields: object, message: string): void;
  error(fields: object, message: string): void;
}

export interface Clock {
  /** Today, as the calendar's interval of one day in months. */
  today(): { readonly from: number; readonly to: number };
  /** Milliseconds since 1970, universal time: when something was said, and how long an answer took. */
  milliseconds(): number;
}

/** A change of one record: whose, when and why. */
export interface Change {
  /** What is kept: "conversation", and whatever else the community's memory holds. */
  readonly kind: string;
  readonly id: string;
  readonly by: string;
  /** Milliseconds since 1970, universal time. */
  readonly at: number;
  readonly why: string;
  /** The platform's id of the message that asks for it; the same one again changes nothing. */
  readonly message?: string;
}

/** What becomes of a record, undefined before its first version. It may be run again when somebody else was quicker: pure. */
export type Advance<Outcome> = (state: unknown) => Advanced<Outcome>;

export interface Advanced<Outcome> {
  readonly state: unknown;
  readonly outcome: Outcome;
  /** What other records become in the same commit: all of it is kept, or none. Each record once, and not the one itself. */
  readonly alongside?: readonly Alongside[];
}

/** A change of another record together with the one that was asked for, whose message guards it too. */
export interface Alongside {
  readonly change: Omit<Change, "message">;
  /** Gives the new state; what it throws rejects the whole. Pure, as an Advance is. */
  readonly advance: (state: unknown) => unknown;
}

/** One version of a record, with the state it had then. */
export interface Version {
  readonly version: number;
  readonly by: string;
  readonly at: number;
  readonly why: string;
  readonly message?: string;
  /** undefined: it was erased. */
  readonly state: unknown;
}

/** A record as it is now. */
export interface Current {
  readonly id: string;
  readonly version: number;
  readonly state: unknown;
}

/** What of a record's versions is to go besides their states, by what takes its place. Pure; what is left out stays, but for outcomes. */
export interface ErasedToo {
  /** What a message that comes again is to be told; undefined: it is refused. Left out, every outcome is gone. */
  readonly outcome?: (outcome: unknown) => unknown;
  readonly by?: (by: string) => string;
  /** `by`: who it was, before `by` is rewritten. */
  readonly why?: (why: string, by: string) => string;
}

/** The community's memory: records with their whole history. States and outcomes are plain JSON values. */
export interface Store {
  /**
   * Makes one change of one record, with those alongside, alone and in the order asked for, and gives its outcome once no crash can
   * lose it. A message that was taken before gives its first outcome. Rejects with what `advance` throws, or when nothing can be written.
   */
  advance<Outcome>(change: Change, advance: Advance<Outcome>): Promise<Outcome>;
  /** The newest state; undefined of a record that does not exist. */
  current(kind: string, id: string): Promise<unknown>;
  /** The number of the newest version, without reading it; 0 of a record that does not exist. */
  version(kind: string, id: string): Promise<number>;
  /** All versions, the first one first; with `after` those that came after that number. */
  history(kind: string, id: string, after?: number): Promise<readonly Version[]>;
  /** The ids of all records of a kind, by code point. */
  ids(kind: string): Promise<readonly string[]>;
  /**
   * Every record of a kind whose id begins so, by code point of the id, read a little at a time: each is as it was at some
   * moment of the reading, not all at the same.
   */
  currents(kind: string, prefix: string): AsyncIterable<Current>;
  /**
   * For the law on privacy, and nothing else: every version of a record becomes what `rewrite` makes of its state, as though it had
   * always been that. undefined: nothing is left of that state; a record whose newest state is gone is no longer listed, and begins
   * anew with its next change. Numbers, moments and message ids stay, and one more version says who erased, when and why. Resolves
   * once what was erased is in none of SQLite's files, or in no row of Postgres, whose files, log and copies are its administrator's;
   * backups made before still hold it. Does nothing where there is no such record.
   */
  erase(
    change: Omit<Change, "message">,
    rewrite: (state: unknown) => unknown,
    also?: ErasedToo,
  ): Promise<void>;
}
