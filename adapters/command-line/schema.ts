/**
 * `witness-mark schema`: the shape of a handbook's files as JSON Schema, for editors that check and complete while one
 * writes. Made from the same definition that the loader uses, so the two cannot disagree.
 */
import { handbookJsonSchemas } from "../../knowledge/index.ts";
import { writeEditorFiles } from "../handbook-folder/index.ts";
import { readOptions, UsageError } from "./options.ts";

export async function run(written: readonly string[]): Promise<void> {
  const { file, into } = readOptions("schema", written, { file: "text", into: "text" });
  if (into !== undefined) {
    const { written: paths, left } = await writeEditorFiles(into);
    const lines = [
      ...paths.map((path) => `written: ${into}/${path}`),
      ...left.map((line) => `left as it is: ${into}/${line}`),
    ];
    process.stdout.write(`${lines.join("\n")}\n`);
    return;
  }
  const schemas: Readonly<Record<string, object>> = handbookJsonSchemas();
  if (file === undefined) throw new UsageError("--file or --into is needed", "schema");
  if (!Object.hasOwn(schemas, file)) {
    const misspelt = { typed: file, known: Object.keys(schemas), prefix: "" };
    throw new UsageError(`--file ${file}: no such file of a handbook`, "schema", misspelt);
  }
  process.stdout.write(`${JSON.stringify(schemas[file], null, 2)}\n`);
}
