import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { z } from "zod";
import { handbookJsonSchemas } from "../../../knowledge/handbook/json-schemas.ts";
import { minimalHandbook } from "../../support/minimal-handbook.ts";

const schemas = handbookJsonSchemas();

function accepts(kind: keyof typeof schemas, text: string): boolean {
  // Read back as an editor would: from the JSON text alone.
  return z.fromJSONSchema(JSON.parse(JSON.stringify(schemas[kind]))).safeParse(parse(text)).success;
}

describe("the schemas for editors", () => {
  test.each([
    ["handbook", "handbook.yaml"],
    ["cars", "cars.yaml"],
    ["sources", "sources.yaml"],
    ["part", "parts/rear-spoiler.yaml"],
  ] as const)("the schema of %s accepts the sound file and refuses a misspelt one", (kind, path) => {
    const sound = minimalHandbook[path] ?? "";
    expect(accepts(kind, sound)).toBe(true);
    expect(accepts(kind, sound.replace("id:", "idd:"))).toBe(false);
    expect(accepts(kind, `${sound}\nextra: 1\n`)).toBe(false);
  });

  test("what may be left out in writing is not required", () => {
    const variant = schemas.part as { properties: { variants: { items: { required: string[] } } } };
    expect(variant.properties.variants.items.required).toEqual(["id", "name", "origin", "summary"]);
  });

  test("each names the draft it is written in", () => {
    for (const schema of Object.values(schemas)) {
      expect(schema).toMatchObject({
        $schema: "https://json-schema.org/draft/2020-12/schema",
        type: "object",
      });
    }
  });
});
