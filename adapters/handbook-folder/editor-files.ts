// What makes an editor check and complete a handbook while one writes: the schemas in the folder, and a line or a setting that names
// them. The names begin with a dot, so that a handbook's reader passes them over.
import { mkdir, readFile, writeFile } from "node:fs/promises";
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

export interface EditorFiles {
  readonly written: readonly string[];
  /** Files of the folder's own that were left as they are, each with what is to be done by hand. */
  readonly left: readonly string[];
}

/** Writes the schemas and the settings into a handbook's folder; what somebody has set there stays. */
export async function writeEditorFiles(folder: string): Promise<EditorFiles> {
  const schemas = Object.entries(handbookJsonSchemas()).map(([kind, schema]): [string, object] => [
    schemaPath(kind),
    schema,
  ]);
  const settings = Object.fromEntries(
    Object.entries(patterns).map(([kind, pattern]) => [schemaPath(kind), pattern]),
  );
  const left: string[] = [];
  const files: (readonly [string, string])[] = schemas.map(([path, schema]) => [path, inLines(schema)]);
  const before = await textOf(join(folder, settingsPath));
  const after = withSchemas(before, settings);
  if (after !== undefined) files.push([settingsPath, after]);
  else
    left.push(`${settingsPath}: is no plain JSON; put into it ${JSON.stringify({ [schemasKey]: settings })}`);
  if ((await textOf(join(folder, ".editorconfig"))) === undefined) files.push([".editorconfig", indenting]);
  for (const [path, text] of files) {
    try {
      await mkdir(dirname(join(folder, path)), { recursive: true });
      await writeFile(join(folder, path), text);
    } catch (failure) {
      throw new OutsideError(`${join(folder, path)}: cannot be written`, failure);
    }
  }
  return { written: files.map(([path]) => path), left };
}

const settingsPath = ".vscode/settings.json";
const schemasKey = "yaml.schemas";
const indenting = "[*.yaml]\nindent_style = space\nindent_size = 2\ncharset = utf-8\n";

/** The settings with the schemas beside whatever else is set; undefined when they are not JSON. */
function withSchemas(
  before: string | undefined,
  schemas: Readonly<Record<string, string>>,
): string | undefined {
  if (before === undefined) return inLines({ [schemasKey]: schemas });
  try {
    const set: unknown = JSON.parse(before);
    if (typeof set !== "object" || set === null || Array.isArray(set)) return undefined;
    const known: unknown = Reflect.get(set, schemasKey);
    const others = typeof known === "object" && known !== null ? known : {};
    return inLines({ ...set, [schemasKey]: { ...others, ...schemas } });
  } catch (failure) {
    if (failure instanceof SyntaxError) return undefined;
    throw failure;
  }
}

function inLines(value: object): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}

/** Undefined when there is no such file. */
async function textOf(path: string): Promise<string | undefined> {
  try {
    return await readFile(path, "utf8");
  } catch (failure) {
    if (failure instanceof Error && "code" in failure && failure.code === "ENOENT") return undefined;
    throw new OutsideError(`${path}: cannot be read`, failure);
  }
}
