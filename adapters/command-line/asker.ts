/** Questions to somebody at a terminal, a line each. */
import { createInterface } from "node:readline";

export interface Asker {
  /** What was typed, without blanks around it; undefined when the input has ended. */
  ask(question: string): Promise<string | undefined>;
  close(): void;
}

/** Undefined where nobody sits at a terminal: then nothing is asked, and nothing waits. */
export function openAsker(): Asker | undefined {
  if (process.stdin.isTTY !== true || process.stdout.isTTY !== true) return undefined;
  return askerOver(process.stdin, process.stdout);
}

/** Lines that came early wait for their questions, so that answers may be piped in as well as typed. */
export function askerOver(input: NodeJS.ReadableStream, output: NodeJS.WritableStream): Asker {
  const lines = createInterface({ input });
  const early: string[] = [];
  let waiting: ((line: string | undefined) => void) | undefined;
  let hasEnded = false;
  lines.on("line", (line) => {
    if (waiting === undefined) early.push(line);
    else waiting(line);
    waiting = undefined;
  });
  lines.once("close", () => {
    hasEnded = true;
    waiting?.(undefined);
  });
  return {
    async ask(question) {
      output.write(question);
      const next = () =>
        new Promise<string | undefined>((resolve) => {
          waiting = resolve;
        });
      const line = early.shift() ?? (hasEnded ? undefined : await next());
      return line?.trim();
    },
    close: () => lines.close(),
  };
}
