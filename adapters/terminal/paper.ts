/** What the terminal or the pipe offers to write on. */
import type { WriteStream } from "node:tty";

type Output = NodeJS.WriteStream | WriteStream;

const WIDEST = 100;
const PIPE_WIDTH = 80;

export function write(output: NodeJS.WritableStream, lines: readonly string[]): void {
  output.write(`${lines.join("\n")}\n`);
}

/** Asked before every reply: a window may have been resized. hasColors honours NO_COLOR and TERM=dumb. */
export function pageOf(output: Output): { readonly width: number; readonly colour: boolean } {
  if (output.isTTY !== true) return { width: PIPE_WIDTH, colour: false };
  return { width: Math.min(output.columns, WIDEST), colour: output.hasColors() };
}
