/**
 * `witness-mark converse`: messages in, replies out, for scripts. A line is answered before the next is read, and the first line that
 * cannot be used ends the program: what was answered before it stands, and nothing of it is kept.
 */
import { once } from "node:events";
import { createInterface } from "node:readline";
import { conversationKind, type Reply, readConversation } from "../../bot/index.ts";
import { OutsideError } from "../errors.ts";
import { renderReply } from "../terminal/render.ts";
import { typedAgainst } from "../terminal/typed-choice.ts";
import { addressOf, type CaseAddress } from "./case-names.ts";
import { type OpenConversation, openConversation } from "./conversation.ts";
import { unknownId } from "./known-ids.ts";
import { readOptions } from "./options.ts";
import { parseScriptLine, type ScriptLine, scriptReply } from "./script-line.ts";

/** Far more than anybody types; a script that sends more has lost its line ends. */
const LONGEST_LINE = 100_000;
const PLAIN_WIDTH = 80;

export async function run(written: readonly string[]): Promise<void> {
  const options = readOptions("converse", written, { handbook: "text", store: "text", json: "flag" });
  const open = await openConversation({
    platform: "script",
    handbook: options.handbook,
    store: options.store,
  });
  try {
    const answer = options.json ? jsonAnswerer(open) : plainAnswerer(open);
    let number = 0;
    for await (const line of createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY })) {
      number += 1;
      if (line.trim() === "") continue;
      if (line.length > LONGEST_LINE)
        throw new OutsideError(`line ${number}: longer than ${LONGEST_LINE} characters`);
      await print(await answer(line, number));
    }
  } finally {
    await open.close();
  }
}

type Answerer = (line: string, number: number) => Promise<string>;

/** The page shows numbers before the answers, as the terminal does, so a number is understood as there. */
function plainAnswerer({ bot }: OpenConversation): Answerer {
  let last: Reply | undefined;
  return async (line) => {
    last = await bot.receive({ conversation: "converse", from: "you", ...typedAgainst(line, last) });
    return `${renderReply(last, { width: PLAIN_WIDTH, colour: false }).join("\n")}\n`;
  };
}

function jsonAnswerer({ handbook, store, bot }: OpenConversation): Answerer {
  /** The part kind each speaker was last answered about, by conversation and case. */
  const parts = new Map<string, string | null>();
  return async (line, number) => {
    const said = parseScriptLine(number === 1 ? line.replace(/^\ufeff/u, "") : line, number);
    const address = addressOf(said.case);
    await refuseUnknownCase(store, address, number);
    const speaker = JSON.stringify([address.conversation, address.case ?? said.from]);
    const problem = said.answer && unknownId(handbook.handbook, parts.get(speaker) ?? null, said.answer);
    if (problem !== undefined) throw new OutsideError(`line ${number}: ${problem}`);
    const reply = await bot.receive(messageFor(said, address));
    parts.set(speaker, reply.summary.part);
    return scriptReply(reply, address.ownName ?? reply.summary.case);
  };
}

function messageFor(said: ScriptLine, address: CaseAddress) {
  const { case: _, ...rest } = said;
  const { conversation } = address;
  return { ...rest, conversation, ...(address.case === undefined ? {} : { case: address.case }) };
}

async function refuseUnknownCase(
  store: OpenConversation["store"],
  address: CaseAddress,
  number: number,
): Promise<void> {
  if (address.case === undefined) return;
  const cases = readConversation(await store.current(conversationKind, address.conversation))?.cases ?? [];
  if (cases.some(({ id }) => id === address.case)) return;
  throw new OutsideError(`line ${number}: unknown case: ${JSON.stringify(address.case)}`);
}

/** Waits while whoever reads is slower than we are. */
async function print(text: string): Promise<void> {
  if (!process.stdout.write(`${text}\n`)) await once(process.stdout, "drain");
}
