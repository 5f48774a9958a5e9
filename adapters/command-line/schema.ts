/**
 * `witness-mark schema`: the shape of a handbook's files as JSON Schema, for editors that check and complete while one
 * writes. Made from the same definition that the loader uses, so the two cannot disagree.
 */
import { handbookJsonSchemas } from "../../knowledge/index.ts";
import { readOptions, UsageError } from "./options.ts";

export async function run(written: readonly string[]): Promise<void> {
  const { file } = readOptions("schema", written, { file: "text" });
  const schemas: Readonly<Record<string, object>> = handbookJsonSchemas();
  if (file === undefined) throw new UsageError("--file is needed", "schema");
  if (!Object.hasOwn(schemas, file)) {
    const misspelt = { typed: file, known: Object.keys(schemas), prefix: "" };
    throw new UsageError(`--file ${file}: no such file of a handbook`, "schema", misspelt);
  }
  process.stdout.write(`${JSON.stringify(schemas[file], null, 2)}\n`);
}
