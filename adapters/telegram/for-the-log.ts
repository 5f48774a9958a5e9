/**
 * A failure as the log may have it. The library's errors carry the whole call with what people wrote, and under them the address with the
 * token in it; of these only the message is kept, which has neither.
 */
import { GrammyError, HttpError } from "grammy";

export function forTheLog(failure: unknown): { readonly err: unknown } {
  if (failure instanceof GrammyError || failure instanceof HttpError) {
    const { name, message, stack } = failure;
    return { err: { type: name, message, stack } };
  }
  return { err: failure };
}
