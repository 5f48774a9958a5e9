// Every body the bot sends, held against Discord's published description of its HTTP API, as the registry package
// discord-api-spec carries it.
import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import { toJSONSchema } from "zod";

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
      !(keyword === "additionalProperties" && takenNoNoticeOf.includes(String(params.additionalProperty))),
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
