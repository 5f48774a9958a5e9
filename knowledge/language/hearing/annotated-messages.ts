/**
 * Messages with what their writers tell, noted by somebody who read them: one JSON object a line. Every name in them is held
 * against the handbook, because a misspelt state would teach nothing without a word.
 */
import { z } from "zod";
import { notThere } from "../../evidence/report.ts";
import { printable } from "../../handbook/handbook-file.ts";
import { didYouMean } from "../../handbook/nearest-name.ts";
import type { Feature, Handbook, PartKind } from "../../handbook/schema.ts";
import type { TaughtMessage } from "./learn-words.ts";

/** Readings, dates and denied states are allowed, as other programs use the same files; they teach no words. */
const AnnotatedFact = z
  .strictObject({
    part: z.string(),
    feature: z.string(),
    state: z.string().optional(),
    not: z.string().optional(),
    reading: z.string().optional(),
    date: z.string().optional(),
  })
  .refine(({ state, not, reading, date }) => (state ?? not ?? reading ?? date) !== undefined, {
    error: "state, not, reading or date is needed",
  });
type AnnotatedFact = z.output<typeof AnnotatedFact>;

const AnnotatedMessage = z.strictObject({
  id: z.string().optional(),
  text: z.string().min(1).max(10_000),
  /** Which part was talked of before, and what had been asked. */
  context: z.strictObject({ part: z.string().optional(), askedFeature: z.string().optional() }).optional(),
  facts: z.array(AnnotatedFact),
  car: z.looseObject({}).optional(),
  goal: z.string().optional(),
});
type AnnotatedMessage = z.output<typeof AnnotatedMessage>;

/** What is wrong with a line: one sentence, lower case, no full stop. */
export interface AnnotationProblem {
  /** From 1. */
  readonly line: number;
  readonly message: string;
}

export interface ReadAnnotations {
  readonly messages: readonly TaughtMessage[];
  readonly problems: readonly AnnotationProblem[];
}

/** The messages of a text of JSON lines; lines with problems are left out of `messages`, empty ones passed over. */
export function readAnnotatedMessages(text: string, handbook: Handbook): ReadAnnotations {
  const messages: TaughtMessage[] = [];
  const problems: AnnotationProblem[] = [];
  text
    .replace(/^\uFEFF/, "")
    .split("\n")
    .forEach((written, at) => {
      if (written.trim() === "") return;
      const read = readLine(written, handbook);
      if (typeof read === "string") problems.push({ line: at + 1, message: read });
      else messages.push(read);
    });
  return { messages, problems };
}

/** The message, or what is wrong with the line. */
function readLine(written: string, handbook: Handbook): TaughtMessage | string {
  const parsed = parsedJson(written);
  if (parsed === undefined) return "this is no JSON; one object a line is needed";
  const shaped = AnnotatedMessage.safeParse(parsed.value);
  if (!shaped.success) return shapeMessage(shaped.error);
  const { text, context, facts } = shaped.data;
  const strange = strangeName(shaped.data, handbook);
  if (strange !== undefined) return strange;
  return {
    text,
    ...(context === undefined ? {} : { context: given(context) }),
    told: facts.flatMap(({ part, feature, state }) =>
      state === undefined || state === notThere ? [] : [{ part, feature, state }],
    ),
  };
}

function parsedJson(written: string): { readonly value: unknown } | undefined {
  try {
    return { value: JSON.parse(written) };
  } catch (failure) {
    if (failure instanceof SyntaxError) return undefined;
    throw failure;
  }
}

function shapeMessage({ issues: [issue] }: z.ZodError): string {
  const where = (issue?.path ?? []).map(String).join(".");
  const what = issue?.message ?? "";
  const words = what.charAt(0).toLowerCase() + what.slice(1);
  return printable(where === "" ? words : `${where}: ${words}`);
}

function given({ part, askedFeature }: NonNullable<AnnotatedMessage["context"]>): {
  readonly part?: string;
  readonly askedFeature?: string;
} {
  return { ...(part === undefined ? {} : { part }), ...(askedFeature === undefined ? {} : { askedFeature }) };
}

/** The first name that the handbook does not have, in words; undefined when it has them all. */
function strangeName({ context, facts }: AnnotatedMessage, handbook: Handbook): string | undefined {
  const { part, askedFeature } = context ?? {};
  if (part !== undefined) {
    const known = partOf(part, handbook);
    if (typeof known === "string") return known;
    const asked = askedFeature === undefined ? undefined : featureOf(askedFeature, known);
    if (typeof asked === "string") return asked;
  }
  for (const fact of facts) {
    const strange = strangeInFact(fact, handbook);
    if (strange !== undefined) return strange;
  }
  return undefined;
}

function strangeInFact({ part, feature, state, not }: AnnotatedFact, handbook: Handbook): string | undefined {
  const known = partOf(part, handbook);
  if (typeof known === "string") return known;
  const told = featureOf(feature, known);
  if (typeof told === "string") return told;
  for (const name of [state, not]) {
    const strange = name === undefined ? undefined : strangeState(name, told);
    if (strange !== undefined) return strange;
  }
  return undefined;
}

function partOf(written: string, { parts }: Handbook): PartKind | string {
  const found = parts.find(({ id }) => id === written);
  return found ?? unknown("part kind", written, parts);
}

function featureOf(written: string, { id: part, features }: PartKind): Feature | string {
  const found = features.find(({ id }) => id === written);
  return found ?? unknown(`feature of ${part}`, written, features);
}

function strangeState(written: string, feature: Feature): string | undefined {
  if (written === notThere) return undefined;
  if (feature.kind !== "states") return `${feature.id} has no states, so none can be told of it`;
  if (feature.states.some(({ id }) => id === written)) return undefined;
  return unknown(`state of ${feature.id}`, written, feature.states);
}

function unknown(what: string, written: string, known: readonly { readonly id: string }[]): string {
  const hint = didYouMean(
    written,
    known.map(({ id }) => id),
  );
  return `unknown ${what} "${printable(written)}"; ${hint}`;
}
