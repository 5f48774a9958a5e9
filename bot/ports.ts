/** What the conversation needs from outside, as the few methods it calls; pino, a database or a fake fits without a wrapper. */

export interface Log {
  info(fields: object, message: string): void;
  warn(fields: object, message: string): void;
  error(fields: object, message: string): void;
}

export interface Clock {
  /** Today, as the calendar's interval of one day in months. */
  today(): { readonly from: number; readonly to: number };
  /** Milliseconds from any fixed moment, to tell how long an answer took. */
  milliseconds(): number;
}

/** Keeps the conversation's state between messages, by conversation id; a state is a plain JSON value. */
export interface Store {
  read(conversation: string): Promise<unknown | undefined>;
  write(conversation: string, state: unknown): Promise<void>;
}
