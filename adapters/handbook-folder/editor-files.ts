// What makes an editor check and complete a handbook while one writes: the schemas in the folder, and a line or a setting that names
// them. The names begin with a dot, so that a handbook's reader passes them over.
import { mkdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { handbookJsonSchemas } from "../../knowledge/index.ts";
import { OutsideError } from "../errors.ts";

const patterns: Readonly<Record<string, string>> = {
  handbook: "handbook.yaml",
  cars: "cars.yaml",
  sources: "sources.yaml",
  part: "parts/*.yaml",
};

/** The line at the head of a handbook's file by which editors with a YAML language server find its schema. */
export function schemaLine(path: string): string {
  const kind = path.startsWith("parts/") ? "part" : path.replace(/\.yaml$/u, "");
  return `# yaml-language-server: $schema=${path.startsWith("parts/") ? "../" : ""}${schemaPath(kind)}`;
}

function schemaPath(kind: string): string {
  return `.schemas/${kind}.schema.json`;
}

/** Writes the schemas and the settings into a handbook's folder; gives the paths that were written. */
export async function writeEditorFiles(folder: string): Promise<readonly string[]> {
  const schemas = Object.entries(handbookJsonSchemas()).map(([kind, schema]): [string, object] => [
    schemaPath(kind),
    schema,
  ]);
  const settings = Object.fromEntries(
    Object.entries(patterns).map(([kind, pattern]) => [schemaPath(kind), pattern]),
  );
  const files: readonly (readonly [string, string])[] = [
    ...schemas.map(([path, schema]) => [path, `${JSON.stringify(schema, null, 2)}\n`] as const),
    [".vscode/settings.json", `${JSON.stringify({ "yaml.schemas": settings }, null, 2)}\n`],
    [".editorconfig", "[*.yaml]\nindent_style = space\nindent_size = 2\ncharset = utf-8\n"],
  ];
  for (const [path, text] of files) {
    try {
      await mkdir(dirname(join(folder, path)), { recursive: true });
      await writeFile(join(folder, path), text);
    } catch (failure) {
      throw new OutsideError(`${join(folder, path)}: cannot be written`, failure);
    }
  }
  return files.map(([path]) => path);
}
