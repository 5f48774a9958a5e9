// Every body the bot sends, held against Discord's published description of its HTTP API, as the registry package
// discord-api-spec carries it.
import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import { toJSONSchema } from "zod";

// The package declares its types in a file that TypeScript does not read.
const schemas: Readonly<Record<string, Parameters<typeof toJSONSchema>[0]>> = await import(
  "discord-api-spec/zod" as string
);

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
  if (validate(withoutUnnoticed(body))) return [];
  const errors = ajv.errorsText((validate.errors ?? []).slice(0, 3));
  return [`${schema}: ${errors} in ${JSON.stringify(body).slice(0, 300)}`];
}

function withoutUnnoticed(body: unknown): unknown {
  if (typeof body !== "object" || body === null || Array.isArray(body)) return body;
  const entries = Object.entries(body).filter(([name]) => !takenNoNoticeOf.includes(name));
  return Object.fromEntries(
    entries.map(([name, value]) => [name, name === "data" ? withoutUnnoticed(value) : value]),
  );
}

/** The body of one entry of a list. */
export function eachAgainstDescription(schema: string, bodies: unknown): readonly string[] {
  return Array.isArray(bodies)
    ? bodies.flatMap((body) => againstDescription(schema, body))
    : [`${schema}: a list is needed`];
}
