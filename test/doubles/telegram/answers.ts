// What the platform answers: a result, or a refusal with its code and words (the words from memory of the public service).
export interface Refusal {
  readonly ok: false;
  readonly error_code: number;
  readonly description: string;
  readonly parameters?: { readonly retry_after?: number; readonly migrate_to_chat_id?: number };
}

export type Answer = { readonly ok: true; readonly result: unknown } | Refusal;

export const done = (result: unknown): Answer => ({ ok: true, result });

export const badRequest = (words: string): Refusal => ({
  ok: false,
  error_code: 400,
  description: words.startsWith("Bad Request") ? words : `Bad Request: ${words}`,
});

export const forbidden = (words: string): Refusal => ({
  ok: false,
  error_code: 403,
  description: `Forbidden: ${words}`,
});

export const tooMany = (seconds: number): Refusal => ({
  ok: false,
  error_code: 429,
  description: `Too Many Requests: retry after ${seconds}`,
  parameters: { retry_after: seconds },
});

export const upgraded = (to: number): Refusal => ({
  ...badRequest("group chat was upgraded to a supergroup chat"),
  parameters: { migrate_to_chat_id: to },
});

/** Refusals travel up as this and are caught at the door of the double. */
export class Refused extends Error {
  readonly answer: Refusal;
  constructor(answer: Refusal) {
    super(answer.description);
    this.answer = answer;
  }
}
