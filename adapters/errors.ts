/** What can go wrong outside, as one error a caller can tell apart from a bug of ours: it is shown in one line, without a trace. */

/** Something outside refused or is unsound: a file, a folder, a port, an input line. `message` is fit to be shown. */
export class OutsideError extends Error {
  constructor(message: string, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause });
    this.name = "OutsideError";
  }
}

/** What is outside cannot be had now, and will be again by itself or by somebody's hand: it is worth trying again. */
export class UnavailableError extends OutsideError {
  constructor(message: string, cause?: unknown) {
    super(message, cause);
    this.name = "UnavailableError";
  }
}

/** What a person sees of a failure that ends the program; a bug of ours says that it is one, with where it happened. */
export function failureLine(failure: unknown): string {
  if (failure instanceof OutsideError) return failure.message;
  return `witness-mark: a fault of the program, please report it: ${stackOf(failure)}`;
}

/** What a person in a conversation sees of a failure that costs one message; where it happened goes to the log. */
export function messageLost(failure: unknown): string {
  const reason =
    failure instanceof OutsideError ? failure.message : "a fault of the program, please report it";
  return `That message was lost, and nothing of it kept (${reason}). What was said before still stands.`;
}

function stackOf(failure: unknown): string {
  return failure instanceof Error ? (failure.stack ?? failure.message) : String(failure);
}
