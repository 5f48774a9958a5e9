/**
 * What a form said, as the bot hears it: words, an answer pressed, a reading with its unit. The same form sent twice is the same message;
 * another answer on an old page is another one.
 */
import { createHash } from "node:crypto";
import { z } from "zod";
import type { PressedAnswer } from "../../bot/index.ts";
import type { Turn } from "./transcript.ts";

/** Longer words are cut by the reader of messages; this only bounds what is carried about. */
const LONGEST = 8000;

const SaidForm = z.object({
  /** Of the page the form stood on. */
  turn: z.string().max(60).default(""),
  text: z.string().default(""),
  /** A button that says words. */
  words: z.string().max(4200).default(""),
  feature: z.string().max(80).default(""),
  state: z.string().max(80).default(""),
  reading: z.string().max(180).default(""),
  unit: z.string().max(10).default(""),
});

export interface Said {
  readonly id: string;
  readonly text?: string;
  readonly answer?: PressedAnswer;
  /** As the page shows it. */
  readonly shown: string;
}

/** What was said; undefined when the form says nothing. `turns`: those before, whose labels name what was pressed. */
export function saidIn(
  fields: Readonly<Record<string, unknown>>,
  turns: readonly Turn[],
  photographs: readonly string[] = [],
): Said | undefined {
  const parsed = SaidForm.safeParse(fields);
  if (!parsed.success) return undefined;
  const form = parsed.data;
  const id = messageId(form, photographs);
  if (form.feature !== "" && form.state !== "") {
    const answer = { feature: form.feature, state: form.state };
    return { id, answer, shown: labelOf(turns, answer) };
  }
  if (form.feature !== "" && form.reading.trim() !== "") {
    const reading = withUnit(form.reading.trim(), form.unit);
    return { id, answer: { feature: form.feature, reading }, shown: reading };
  }
  const text = (form.words || form.text).trim().slice(0, LONGEST);
  if (text !== "") return { id, text, shown: text };
  return photographs.length > 0 ? { id, text: "", shown: "" } : undefined;
}

/** A unit that was written beats the one that was chosen. */
function withUnit(reading: string, unit: string): string {
  return unit === "" || /[a-z"'″′]\s*$/iu.test(reading) ? reading : `${reading} ${unit}`;
}

function labelOf(turns: readonly Turn[], { feature, state }: { feature: string; state: string }): string {
  // A keeper's answer may have come in between.
  for (const block of turns.toReversed().flatMap(({ blocks }) => blocks)) {
    if (block.kind !== "question" || block.feature !== feature) continue;
    const pressed = block.answers.find(({ id }) => id === state);
    if (pressed !== undefined) return pressed.label;
  }
  return state;
}

function messageId(form: z.output<typeof SaidForm>, photographs: readonly string[]): string {
  return createHash("sha256")
    .update(JSON.stringify([form, photographs]))
    .digest("base64url")
    .slice(0, 27);
}
