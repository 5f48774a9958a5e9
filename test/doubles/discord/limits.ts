// The limits of messages and forms that the published description is silent on or generous about, and our own rule that
// nothing may mention anybody.
import type { Component, Json } from "./wire-shapes.ts";

/** What is wrong, or false. */
type Rule<Subject> = (subject: Subject) => string | false;

interface Body {
  readonly content: string;
  readonly components: readonly Component[];
  readonly attachments: readonly Json[];
  readonly mentionsParsed: number;
}

const messageRules: readonly Rule<Body>[] = [
  ({ content }) => content.length > 2000 && `content of ${content.length} characters`,
  ({ attachments }) => attachments.length > 10 && "more than ten attachments",
  ({ attachments }) => attachments.some((one) => !("id" in one)) && "an attachment without an id",
  ({ attachments }) =>
    attachments.some(({ description }) => String(description ?? "").length > 1024) &&
    "alternative text is too long",
  ({ content, mentionsParsed }) => content !== "" && mentionsParsed > 0 && "mentions are not neutralised",
  ({ content }) => /(^|[^\\])<@!?\d/u.test(content) && `a mention in ${content.slice(0, 200)}`,
  ({ content }) => /@(everyone|here)\b/u.test(content) && "everybody is mentioned",
  ({ components }) => components.length > 5 && `${components.length} rows`,
  ({ components }) => {
    const ids = components.flatMap(inside).flatMap(({ custom_id }) => custom_id ?? []);
    return new Set(ids).size < ids.length && "two components with one custom_id";
  },
];

const rowRules: readonly Rule<Component>[] = [
  (row) => (row.type !== 1 || inside(row).length === 0) && "a row that is no row, or empty",
  (row) => inside(row).length > 5 && `${inside(row).length} buttons in a row`,
  (row) =>
    inside(row).length > 1 && inside(row).some(({ type }) => type !== 2) && "a select beside something",
];

const componentRules: readonly Rule<Component>[] = [
  ({ custom_id }) => isOutside(custom_id, 1, 100) && `custom_id "${custom_id}"`,
  ({ type, label }) => type === 2 && isOutside(label, 1, 80) && `label "${label}"`,
  ({ type, options }) =>
    type === 3 && (listOf(options).length < 1 || listOf(options).length > 25) && "too few or many options",
  ({ options }) => (options ?? []).some(({ label }) => isOutside(label, 1, 100)) && "an option's label",
  ({ options }) =>
    (options ?? []).some(({ description }) => (description ?? "").length > 100) && "an option's description",
  ({ options }) => {
    const values = (options ?? []).map(({ value }) => value);
    return new Set(values).size < values.length && "two options with one value";
  },
];

const fieldRules: readonly Rule<Component>[] = [
  ({ type, label }) => type === 18 && isOutside(label, 1, 45) && `label "${label}"`,
  ({ component }) => (component?.placeholder ?? "").length > 100 && "placeholder",
  ({ component }) => (component?.value ?? "").length > 4000 && "more than 4,000 characters in a field",
];

/** What breaks a limit in the body of a message. */
export function messageTrouble(body: Json): readonly string[] {
  const mentions = body.allowed_mentions as { readonly parse?: readonly unknown[] } | undefined;
  const components = listOf(body.components) as readonly Component[];
  const asRead: Body = {
    content: typeof body.content === "string" ? body.content : "",
    components,
    attachments: listOf(body.attachments) as readonly Json[],
    mentionsParsed: mentions?.parse?.length ?? 1,
  };
  return [
    ...broken(messageRules, asRead),
    ...components.flatMap((row) => broken(rowRules, row)),
    ...components.flatMap(inside).flatMap((one) => broken(componentRules, one)),
  ];
}

/** What breaks a limit in a form. */
export function modalTrouble(modal: Json): readonly string[] {
  const components = listOf(modal.components) as readonly Component[];
  return [
    ...(isOutside(modal.title, 1, 45) ? [`form's title "${modal.title}"`] : []),
    ...(isOutside(modal.custom_id, 1, 100) ? ["form's custom_id"] : []),
    ...(components.length < 1 || components.length > 5 ? [`${components.length} parts in a form`] : []),
    ...components.flatMap((one) => broken(fieldRules, one)),
  ];
}

function broken<Subject>(rules: readonly Rule<Subject>[], subject: Subject): readonly string[] {
  return rules.flatMap((rule) => rule(subject) || []);
}

function inside({ components }: Component): readonly Component[] {
  return components ?? [];
}

function isOutside(text: unknown, least: number, most: number): boolean {
  const length = String(text ?? "").length;
  return length < least || length > most;
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}
