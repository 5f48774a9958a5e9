// What a test file gets here instead of the test runner: `describe` and `test` only collect, `expect` is the runner's own. Starting the runner
// for every mutant takes seconds, this a fraction of one.
export { expect } from "vitest";

type Body = (...row: readonly unknown[]) => unknown;

export interface Statement {
  readonly run: () => unknown;
}

let collected: Statement[] = [];

/** The statements collected since the last call, in the order of the file. */
export function takeStatements(): readonly Statement[] {
  const taken = collected;
  collected = [];
  return taken;
}

export const describe = eachOf((body) => {
  body();
});

export const test = Object.assign(
  eachOf((run) => {
    collected.push({ run });
  }),
  {
    fails: eachOf((run) => {
      collected.push({ run: () => thatFails(run) });
    }),
  },
);

/** What is known not to hold is noticed when it does. */
async function thatFails(run: () => unknown): Promise<void> {
  try {
    await run();
  } catch {
    return;
  }
  throw new Error("mutation: holds, and was said not to");
}

function eachOf(take: (body: () => unknown) => void) {
  return Object.assign((_name: string, ...rest: readonly unknown[]) => take(bodyAmong(rest)), {
    each:
      (rows: readonly unknown[]) =>
      (_name: string, ...rest: readonly unknown[]) => {
        const body = bodyAmong(rest);
        for (const row of rows) take(() => body(...(Array.isArray(row) ? row : [row])));
      },
  });
}

function bodyAmong(rest: readonly unknown[]): Body {
  const body = rest.find((one): one is Body => typeof one === "function");
  if (body === undefined) throw new TypeError("mutation: a test without a body");
  return body;
}
