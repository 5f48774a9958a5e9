/**
 * The conversation in a terminal or a pipe: node:readline, because it serves both and writes no cursor codes into a pipe.
 * It prints a prompt only where somebody sits, and ends with its input.
 */
import { createInterface } from "node:readline";
import type { ReadStream, WriteStream } from "node:tty";
import type { Bot, Log, Reply } from "../../bot/index.ts";
import type { PhotographKeeper } from "../photographs/index.ts";
import { type Between, betweenMessages } from "./between-messages.ts";
import type { Greeting } from "./greeting.ts";
import { pageOf, write } from "./paper.ts";
import { typedMessages } from "./typed-messages.ts";
import { wrapped } from "./wrap.ts";

export interface TerminalOptions {
  readonly input: NodeJS.ReadStream | ReadStream;
  readonly output: NodeJS.WriteStream | WriteStream;
  readonly greeting: Greeting;
  /** Called once the greeting stands and typing can begin: the moment for work that the greeting did not need. */
  readonly greeted?: () => void;
  readonly bot: Pick<Bot, "receive" | "notices" | "noticeSettled">;
  readonly takePhotograph: PhotographKeeper["take"];
  readonly log: Pick<Log, "error">;
  /** Where the person stands: paths begin there. */
  readonly folder: string;
  /** Where files that a reply brings are saved. */
  readonly exports: string;
  /** Where a drawing of the handbook lies for this person. */
  readonly locate: (path: string) => string;
  /** Ends the conversation from outside. */
  readonly signal?: AbortSignal;
}

const PROMPT = "> ";
const FAREWELLS = new Set(["quit", "bye", "exit"]);

/** Talks until the input ends, somebody says bye or presses Ctrl-C; what the bot throws in a pipe comes out here. */
export async function startTerminal(options: TerminalOptions): Promise<void> {
  const { input, output } = options;
  const isTerminal = input.isTTY === true && output.isTTY === true;
  const lines = createInterface({
    input,
    ...(isTerminal ? { output, prompt: PROMPT } : {}),
    terminal: isTerminal,
    crlfDelay: Number.POSITIVE_INFINITY,
  });
  const messages = typedMessages(lines, isTerminal);
  const between = betweenMessages(options, isTerminal ? lines : undefined);
  let isOpen = true;
  lines.once("close", () => {
    isOpen = false;
    between.atPrompt(false);
  });
  lines.on("SIGINT", () => lines.close());
  options.signal?.addEventListener("abort", () => lines.close(), { once: true });
  const prompt = () => {
    if (!isTerminal || !isOpen) return;
    lines.prompt();
    between.atPrompt(true);
  };
  try {
    await converse(options, messages, between, prompt);
  } finally {
    // An input left open would keep the process alive.
    lines.close();
    await between.end();
  }
  if (isTerminal) output.write("\n");
}

async function converse(
  options: TerminalOptions,
  messages: AsyncIterable<string>,
  between: Between,
  prompt: () => void,
): Promise<void> {
  const { output, greeting } = options;
  write(output, greetingLines(greeting, pageOf(output).width));
  prompt();
  options.greeted?.();
  let last: Reply | undefined;
  for await (const message of messages) {
    between.atPrompt(false);
    if (FAREWELLS.has(message.trim().toLowerCase())) break;
    if (message.trim() !== "") {
      // What renders replies brings the whole bot with it, which the greeting does not wait for.
      const { answerTyped } = await import("./answer-typed.ts");
      const { lines, reply } = await answerTyped(options, message, last);
      last = reply ?? last;
      write(output, ["", ...lines, ...(output.isTTY === true ? [""] : [])]);
      await between.now();
    }
    prompt();
  }
}

function greetingLines({ lines, examples }: Greeting, width: number): readonly string[] {
  return [
    ...lines.flatMap((line) => wrapped(line, width)),
    ...examples.flatMap((example) => wrapped(example, width, "  - ")),
  ];
}
