// Every body the bot sends, held against Discord's published description of its HTTP API, as the registry package
// discord-api-spec carries it, and against the limits that the description does not carry.
import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import { toJSONSchema } from "zod";
import type { Component, Json } from "./wire-shapes.ts";

// The package declares its types in a file that TypeScript does not read.
const place: string = "discord-api-spec/zod";
const schemas: Readonly<Record<string, Parameters<typeof toJSONSchema>[0]>> = await import(place);

const ajv = new Ajv2020({ strict: false, logger: false, validateFormats: false });
const compiled = new Map<string, ValidateFunction>();

/** discord.js puts these into every message body; Discord takes no notice of them where it has no use for them. */
const takenNoNoticeOf = ["tts", "nonce", "enforce_nonce", "username"];

function validatorOf(name: string): ValidateFunction {
  const known = compiled.get(name);
  if (known !== undefined) return known;
  const schema = schemas[name];
  if (schema === undefined) throw new RangeError(`published description: no schema ${name}`);
  // Of the output side, because only there a property that is not described is an error.
  const made = ajv.compile(toJSONSchema(schema, { io: "output", unrepresentable: "any" }));
  compiled.set(name, made);
  return made;
}

/** What the description has against a body; empty when it is sound. */
export function againstDescription(schema: string, body: unknown): readonly string[] {
  const validate = validatorOf(schema);
  if (validate(body)) return [];
  const found = (validate.errors ?? []).filter(
    ({ keyword, params }) =>
      !(keyword === "additionalProperties" && takenNoNoticeOf.includes(String(params["additionalProperty"]))),
  );
  return found.length === 0
    ? []
    : [`${schema}: ${ajv.errorsText(found.slice(0, 3))} in ${JSON.stringify(body).slice(0, 300)}`];
}

/** The body of one entry of a list. */
export function eachAgainstDescription(schema: string, bodies: unknown): readonly string[] {
  return Array.isArray(bodies)
    ? bodies.flatMap((body) => againstDescription(schema, body))
    : [`${schema}: a list is needed`];
}

/** Limits of a message that the description is silent on or generous about. */
export function messageTrouble(body: Json): readonly string[] {
  const content = typeof body["content"] === "string" ? body["content"] : "";
  const components = listOf(body["components"]);
  const trouble = [...rowTrouble(components), ...idTrouble(components)];
  if (content.length > 2000) trouble.push(`content of ${content.length} characters`);
  if (listOf(body["attachments"]).length > 10) trouble.push("more than ten attachments");
  const mentions = body["allowed_mentions"] as { readonly parse?: readonly unknown[] } | undefined;
  if (content !== "" && (mentions === undefined || (mentions.parse ?? [""]).length > 0))
    trouble.push("mentions are not neutralised");
  if (/(^|[^\\])<@[!&]?\d/u.test(content)) trouble.push(`a mention in ${content.slice(0, 200)}`);
  if (/@(everyone|here)\b/u.test(content)) trouble.push("everybody is mentioned");
  for (const file of listOf(body["attachments"]) as readonly Json[]) {
    if ("description" in file && String(file["description"] ?? "").length > 1024)
      trouble.push("alternative text is too long");
    if (!("id" in file)) trouble.push("an attachment without an id");
  }
  return trouble;
}

function rowTrouble(rows: readonly Component[]): string[] {
  const trouble: string[] = [];
  if (rows.length > 5) trouble.push(`${rows.length} rows`);
  for (const row of rows) {
    const inside = row.components ?? [];
    if (row.type !== 1 || inside.length === 0) trouble.push("a row that is no row, or empty");
    const selects = inside.filter(({ type }) => type !== 2);
    if (selects.length > 1 || (selects.length === 1 && inside.length > 1))
      trouble.push("a select beside something");
    if (inside.length > 5) trouble.push(`${inside.length} buttons in a row`);
    for (const { options, label, type } of inside) {
      if (type === 3 && ((options?.length ?? 0) < 1 || (options?.length ?? 0) > 25))
        trouble.push(`${options?.length} options`);
      if (type === 2 && ((label ?? "").length < 1 || (label ?? "").length > 80))
        trouble.push(`label "${label}"`);
      for (const option of options ?? []) {
        if (option.label.length < 1 || option.label.length > 100) trouble.push(`option "${option.label}"`);
        if ((option.description ?? "x").length > 100) trouble.push("an option's description is too long");
      }
      const values = (options ?? []).map(({ value }) => value);
      if (new Set(values).size < values.length) trouble.push("two options with one value");
    }
  }
  return trouble;
}

function idTrouble(rows: readonly Component[]): string[] {
  const ids = rows.flatMap(({ components }) =>
    (components ?? []).flatMap(({ custom_id }) => custom_id ?? []),
  );
  const trouble = ids.filter((id) => id.length < 1 || id.length > 100).map((id) => `custom_id "${id}"`);
  return new Set(ids).size < ids.length ? [...trouble, "two components with one custom_id"] : trouble;
}

export function modalTrouble(modal: Json): readonly string[] {
  const trouble: string[] = [];
  const components = listOf(modal["components"]);
  if (String(modal["title"]).length > 45 || String(modal["title"]).length < 1) trouble.push("modal title");
  if (String(modal["custom_id"]).length > 100) trouble.push("modal custom_id");
  if (components.length < 1 || components.length > 5) trouble.push(`${components.length} parts in a modal`);
  for (const one of components) {
    if (one.type === 18 && ((one.label ?? "").length < 1 || (one.label ?? "").length > 45))
      trouble.push(`modal label "${one.label}"`);
    const input = one.component;
    if (input?.type === 4 && (input.placeholder ?? "").length > 100) trouble.push("placeholder");
    if (input?.type === 4 && (input.value ?? "").length > 4000)
      trouble.push("more than 4,000 characters in a field");
  }
  return trouble;
}

function listOf(value: unknown): readonly Component[] {
  return Array.isArray(value) ? (value as readonly Component[]) : [];
}
