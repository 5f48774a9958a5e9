/** What can go wrong outside, as one error a caller can tell apart from a bug of ours: it is shown in one line, without a trace. */

/** Something outside refused or is unsound: a file, a folder, a port, an input line. `message` is fit to be shown. */
export class OutsideError extends Error {
  constructor(message: string, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause });
    this.name = "OutsideError";
  }
}

/** The one line a person sees for any failure; a bug of ours says that it is one. */
export function failureLine(failure: unknown): string {
  if (failure instanceof OutsideError) return failure.message;
  return `witness-mark: a fault of the program, please report it: ${failure instanceof Error ? (failure.stack ?? failure.message) : String(failure)}`;
}
