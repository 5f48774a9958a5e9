/** Questions to somebody at a terminal, a line each. */
import { createInterface } from "node:readline/promises";

export interface Asker {
  /** What was typed, without blanks around it; "" when the input has ended. */
  ask(question: string): Promise<string>;
  close(): void;
}

/** Undefined where nobody sits at a terminal: then nothing is asked, and nothing waits. */
export function openAsker(): Asker | undefined {
  if (process.stdin.isTTY !== true || process.stdout.isTTY !== true) return undefined;
  return askerOver(process.stdin, process.stdout);
}

export function askerOver(input: NodeJS.ReadableStream, output: NodeJS.WritableStream): Asker {
  const lines = createInterface({ input, output });
  let isOver = false;
  const over = new Promise<string>((resolve) => {
    lines.once("close", () => {
      isOver = true;
      resolve("");
    });
  });
  return {
    async ask(question) {
      if (isOver) return "";
      const answer = await Promise.race([lines.question(question), over]);
      return answer.trim();
    },
    close: () => lines.close(),
  };
}
