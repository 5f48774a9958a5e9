/** One line of a script: JSON in, checked against the bot's own message schema; a reply as one line of JSON out. */
import type { z } from "zod";
import { IncomingMessage, plainText, type Reply } from "../../bot/index.ts";
import { OutsideError } from "../errors.ts";

const ScriptLine = IncomingMessage.omit({ conversation: true }).refine(
  ({ text, answer, goal }) => text !== undefined || answer !== undefined || goal !== undefined,
  { error: "text, answer or goal is needed" },
);
export type ScriptLine = z.output<typeof ScriptLine>;

/** What line `number` says. Throws OutsideError with one line of words when it is no JSON or not a message. */
export function parseScriptLine(line: string, number: number): ScriptLine {
  const parsed = ScriptLine.safeParse(jsonAt(line, number));
  if (parsed.success) return parsed.data;
  throw new OutsideError(`line ${number}: ${problemOf(parsed.error)}`);
}

function jsonAt(line: string, number: number): unknown {
  try {
    return JSON.parse(line);
  } catch (cause) {
    throw new OutsideError(`line ${number}: not JSON; one object a line is needed`, cause);
  }
}

function problemOf(error: z.ZodError): string {
  const [issue] = error.issues;
  if (issue === undefined) return "not a message";
  const place = issue.path.join(".");
  if (issue.code === "invalid_union" && place === "answer") {
    return 'answer: {"feature","state"}, {"feature","reading"} or {"feature","cannotTell":true} is needed';
  }
  const words = issue.message.charAt(0).toLowerCase() + issue.message.slice(1);
  return place === "" ? words : `${place}: ${words}`;
}

/** The reply as scripts read it, in the documented order of keys, under the name the script has for the case. */
export function scriptReply(reply: Reply, caseName: string): string {
  const { summary } = reply;
  return JSON.stringify({
    case: caseName,
    part: summary.part,
    goal: summary.goal,
    car: summary.car,
    understood: summary.understood,
    ranking: summary.ranking,
    verdict: summary.verdict,
    question: summary.question,
    done: summary.done,
    uncertainty: summary.uncertainty,
    pinned: summary.pinned,
    cautions: summary.cautions,
    sources: summary.sources,
    text: plainText(reply),
  });
}
