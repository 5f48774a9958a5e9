// A JSON Schema that others published (test/published/schemas/ORIGINS.txt says who), as a check of a value.
import { readFileSync } from "node:fs";
import { Ajv2019 } from "ajv/dist/2019.js";

/**
 * What the schema has against a value, the first three; empty when it is sound. The Compose Specification's is of draft 2019-09, SARIF's of
 * draft 04: of what that one is made of, only `id` has another name since then.
 */
export function againstSchema(name: string): (value: unknown) => readonly string[] {
  const url = new URL(`../published/schemas/${name}.json`, import.meta.url);
  const { $schema: _, ...schema } = JSON.parse(readFileSync(url, "utf8"));
  const ajv = new Ajv2019({ strict: false, allErrors: true, unicodeRegExp: false, logger: false });
  ajv.removeKeyword("id");
  // RFC 3986, section 2: which letters a reference may hold, and what follows a per cent sign.
  ajv.addFormat("uri-reference", /^(?:[A-Za-z0-9\-._~:/?#[\]@!$&'()*+,;=]|%[0-9A-Fa-f]{2})*$/u);
  ajv.addFormat("uri", /^[A-Za-z][A-Za-z0-9+.-]*:(?:[A-Za-z0-9\-._~:/?#[\]@!$&'()*+,;=]|%[0-9A-Fa-f]{2})*$/u);
  ajv.addFormat("date-time", true);
  const validate = ajv.compile(schema);
  return (value) =>
    validate(value)
      ? []
      : (validate.errors ?? []).slice(0, 3).map((error) => `${error.instancePath} ${error.message}`);
}
