/**
 * The conversation in a terminal or a pipe: node:readline, because it serves both and writes no cursor codes into a pipe.
 * It prints a prompt only where somebody sits, and ends with its input.
 */
import { createInterface } from "node:readline";
import type { ReadStream, WriteStream } from "node:tty";
import type { IncomingMessage, Log, Receive, Reply } from "../../bot/index.ts";
import { messageLost } from "../errors.ts";
import type { Greeting } from "./greeting.ts";
import { renderReply } from "./render.ts";
import { typedAgainst } from "./typed-choice.ts";
import { typedMessages } from "./typed-messages.ts";
import { wrapped } from "./wrap.ts";

export interface TerminalOptions {
  readonly input: NodeJS.ReadStream | ReadStream;
  readonly output: NodeJS.WriteStream | WriteStream;
  readonly greeting: Greeting;
  /** Called once the greeting stands and typing can begin: the moment for work that the greeting did not need. */
  readonly greeted?: () => void;
  readonly receive: Receive;
  readonly log: Pick<Log, "error">;
  /** Where a drawing of the handbook lies for this person. */
  readonly locate: (path: string) => string;
  /** Ends the conversation from outside. */
  readonly signal?: AbortSignal;
}

const WIDEST = 100;
const PIPE_WIDTH = 80;
const PROMPT = "> ";
const FAREWELLS = new Set(["quit", "bye", "exit"]);

/** Whoever sits at the machine that runs the program owns what it keeps. */
const atThisTerminal = {
  conversation: "terminal",
  from: "you",
  standing: "owner",
  isPrivate: true,
} as const;

/** Talks until the input ends, somebody says bye or presses Ctrl-C; what `receive` throws comes out here. */
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
  let isOpen = true;
  lines.once("close", () => {
    isOpen = false;
  });
  lines.on("SIGINT", () => lines.close());
  options.signal?.addEventListener("abort", () => lines.close(), { once: true });
  try {
    await converse(options, messages, () => (isTerminal && isOpen ? lines.prompt() : undefined));
  } finally {
    // An input left open would keep the process alive.
    lines.close();
  }
  if (isTerminal) output.write("\n");
}

async function converse(
  options: TerminalOptions,
  messages: AsyncIterable<string>,
  prompt: () => void,
): Promise<void> {
  const { output, greeting, locate } = options;
  write(output, greetingLines(greeting, pageOf(output).width));
  prompt();
  options.greeted?.();
  let last: Reply | undefined;
  for await (const message of messages) {
    if (FAREWELLS.has(message.trim().toLowerCase())) break;
    if (message.trim() !== "") {
      const said = { ...atThisTerminal, ...typedAgainst(message, last) };
      const reply = await replyOrLoss(options, said);
      if (typeof reply !== "string") last = reply;
      const page = { ...pageOf(output), locate };
      const lines = typeof reply === "string" ? wrapped(reply, page.width) : renderReply(reply, page);
      write(output, ["", ...lines, ...(output.isTTY === true ? [""] : [])]);
    }
    prompt();
  }
}

/**
 * Somebody who sits here keeps the conversation when one message fails, and is told; a pipe has nobody to tell, and ends with
 * the failure.
 */
async function replyOrLoss(
  { output, receive, log }: TerminalOptions,
  said: IncomingMessage,
): Promise<Reply | string> {
  if (output.isTTY !== true) return receive(said);
  try {
    return await receive(said);
  } catch (failure) {
    log.error({ err: failure }, "message lost");
    return messageLost(failure);
  }
}

function greetingLines({ lines, examples }: Greeting, width: number): readonly string[] {
  return [
    ...lines.flatMap((line) => wrapped(line, width)),
    ...examples.flatMap((example) => wrapped(example, width, "  - ")),
  ];
}

function write(output: NodeJS.WritableStream, lines: readonly string[]): void {
  output.write(`${lines.join("\n")}\n`);
}

/** Asked before every reply: a window may have been resized. hasColors honours NO_COLOR and TERM=dumb. */
function pageOf(output: TerminalOptions["output"]): { readonly width: number; readonly colour: boolean } {
  if (output.isTTY !== true) return { width: PIPE_WIDTH, colour: false };
  return { width: Math.min(output.columns, WIDEST), colour: output.hasColors() };
}
