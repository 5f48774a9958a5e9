/** A program at a pseudo terminal, by script of util-linux: a real TTY on both sides, and keys pressed at each prompt. */
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { stripVTControlCharacters } from "node:util";
import { newFolder } from "./program.ts";

const script = "/usr/bin/script";
const CTRL_D = "\u0004";

export const hasPseudoTerminal: boolean = existsSync(script);

export interface Screen {
  readonly text: string;
  readonly status: number | null;
}

export interface ScreenOptions {
  readonly environment?: Readonly<Record<string, string>>;
  readonly folder?: string;
}

/** Runs Node with `words`; at every prompt the next of `keys` is pressed, and Ctrl-D when there are no more. */
export function screenOf(
  words: readonly string[],
  keys: readonly string[],
  options: ScreenOptions = {},
): Promise<Screen> {
  const command = [process.execPath, ...words].join(" ");
  const child = spawn(script, ["-q", "-e", "-c", command, "/dev/null"], {
    cwd: options.folder ?? newFolder(),
    env: { PATH: process.env.PATH ?? "", TERM: "xterm-256color", ...options.environment },
  });
  let text = "";
  let pressed = 0;
  const press = () => {
    const prompts = stripVTControlCharacters(text).split(/(?:^|\n)\r?> /u).length - 1;
    if (prompts <= pressed) return;
    child.stdin.write(keys[pressed] ?? CTRL_D);
    pressed += 1;
  };
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.stdout.setEncoding("utf8").on("data", (piece: string) => {
      text += piece;
      press();
    });
    child.on("close", (status) => resolve({ text, status }));
  });
}
