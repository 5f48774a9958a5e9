/**
 * Work that gives way between its pieces. A large handbook takes seconds to be read and compiled; whoever has something else to do
 * drives the work and stops where it yields. A generator rather than a promise: the core knows no clock and no turn to wait for.
 */

export type InPieces<T> = Generator<undefined, T, undefined>;

/** All pieces one after another. */
export function atOnce<T>(work: InPieces<T>): T {
  for (;;) {
    const { done, value } = work.next();
    if (done === true) return value;
  }
}
