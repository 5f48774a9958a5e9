// Whether a call is what the Bot API describes: every parameter known, every required one there, every value of a type it may have.
// The description is the published one; unions of objects hold when one of their parts does.
import { readFileSync } from "node:fs";

type Fields = Readonly<Record<string, string>>;
type Type = { readonly fields?: Fields; readonly subtypes?: readonly string[] };

interface Description {
  readonly methods: Readonly<Record<string, Fields>>;
  readonly types: Readonly<Record<string, Type>>;
}

const { methods, types }: Description = JSON.parse(
  readFileSync(new URL("./api-description.json", import.meta.url), "utf8"),
);

export function isMethod(name: string): boolean {
  return Object.hasOwn(methods, name);
}

/** What is wrong with a call, one line each; none when it is sound. */
export function violationsOf(method: string, payload: Readonly<Record<string, unknown>>): readonly string[] {
  return againstFields(methods[method] ?? {}, payload, method);
}

/** Multipart brings every value as text: those that are no text in the description are read as JSON. */
export function readTexts(
  method: string,
  texts: Readonly<Record<string, string>>,
): Readonly<Record<string, unknown>> {
  const fields = methods[method] ?? {};
  return Object.fromEntries(
    Object.entries(texts).map(([name, text]) => {
      const type = fields[name] ?? fields[`${name}?`] ?? "String";
      return [name, type.split("|").includes("String") ? asNumber(type, text) : parsed(text)];
    }),
  );
}

/** A chat may be a number or a name. */
function asNumber(type: string, text: string): unknown {
  return type.split("|").includes("Integer") && /^-?\d+$/u.test(text) ? Number(text) : text;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}

function againstFields(fields: Fields, value: Readonly<Record<string, unknown>>, where: string): string[] {
  const problems: string[] = [];
  for (const [name, given] of Object.entries(value)) {
    const type = fields[name] ?? fields[`${name}?`];
    if (type === undefined) problems.push(`${where}: no parameter ${name}`);
    else problems.push(...againstUnion(type, given, `${where}.${name}`));
  }
  for (const name of Object.keys(fields)) {
    if (!name.endsWith("?") && value[name] === undefined) problems.push(`${where}: ${name} is required`);
  }
  return problems;
}

function againstUnion(union: string, value: unknown, where: string): string[] {
  const tries = union.split("|").map((type) => againstType(type, value, where));
  if (tries.some((problems) => problems.length === 0)) return [];
  return tries.reduce((least, problems) => (problems.length < least.length ? problems : least));
}

function againstType(type: string, value: unknown, where: string): string[] {
  if (type.startsWith("Array of ")) {
    if (!Array.isArray(value)) return [`${where}: a list is needed`];
    return value.flatMap((item, index) => againstUnion(type.slice(9), item, `${where}[${index}]`));
  }
  const known = types[type];
  if (known !== undefined) return againstObject(known, value, where);
  return isPlain(type, value) ? [] : [`${where}: ${type} is needed, not ${JSON.stringify(value)}`];
}

function againstObject(type: Type, value: unknown, where: string): string[] {
  if (type.subtypes !== undefined) return againstUnion(type.subtypes.join("|"), value, where);
  // An InputFile travels beside the call, or as the name of the part that carries it.
  if (Object.keys(type.fields ?? {}).length === 0) {
    return typeof value === "string" ? [] : [`${where}: a file is needed`];
  }
  if (typeof value !== "object" || value === null || Array.isArray(value))
    return [`${where}: an object is needed`];
  return againstFields(type.fields ?? {}, value as Record<string, unknown>, where);
}

function isPlain(type: string, value: unknown): boolean {
  switch (type) {
    case "String":
      return typeof value === "string";
    case "Integer":
      return Number.isSafeInteger(value);
    case "Float":
      return typeof value === "number";
    case "Boolean":
    case "True":
      return typeof value === "boolean";
    default:
      return false;
  }
}
