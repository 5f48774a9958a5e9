// The small changes that can be made in a source. Each becomes a whole text of its own rather than a switch within one text of them all: what
// is tried is then exactly what somebody could have written, and runs as fast.
import { readFileSync } from "node:fs";
import { stripTypeScriptTypes } from "node:module";
import { Instrumenter } from "@stryker-mutator/instrumenter";

type Logger = ConstructorParameters<typeof Instrumenter>[0];

export interface Mutant {
  readonly id: number;
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly kind: string;
  /** The piece of the source that is changed. */
  readonly original: string;
  readonly replacement: string;
  /** The source with this change and without its types; made when asked for, since there are thousands. */
  readonly text: () => string;
}

export interface MutatedSources {
  readonly mutants: readonly Mutant[];
  /** File to a text, without types, that notes in `globalThis.reachedMutants` which mutants' places are reached, by id. */
  readonly noting: ReadonlyMap<string, string>;
}

const silent: Logger = {
  isTraceEnabled: () => false,
  isDebugEnabled: () => false,
  isInfoEnabled: () => false,
  isWarnEnabled: () => false,
  isErrorEnabled: () => false,
  isFatalEnabled: () => false,
  trace: () => undefined,
  debug: () => undefined,
  info: () => undefined,
  warn: () => undefined,
  error: () => undefined,
  fatal: () => undefined,
};

/** All mutants of the files, in the order of the files and of the places in them; the same files give the same mutants. */
export async function mutantsOf(files: readonly string[]): Promise<MutatedSources> {
  const sources = new Map(files.map((file) => [file, readFileSync(file, "utf8")]));
  const found = await new Instrumenter(silent).instrument(
    [...sources].map(([name, content]) => ({ name, content, mutate: true })),
    { plugins: null, excludedMutations: [], ignorers: [] },
  );
  return {
    mutants: found.mutants.map(({ id, fileName, location: { start, end }, mutatorName, replacement }) => {
      const source = sources.get(fileName) ?? "";
      const changed = enclosed(mutatorName, replacement ?? "");
      return {
        id: Number(id),
        file: fileName,
        line: start.line + 1,
        column: start.column,
        kind: mutatorName,
        original: source.slice(at(source, start), at(source, end)),
        replacement: replacement ?? "",
        text: () =>
          stripTypeScriptTypes(
            `${source.slice(0, at(source, start))}${changed}${source.slice(at(source, end))}`,
          ),
      };
    }),
    noting: new Map(found.files.map(({ name, content }) => [name, noting(stripTypeScriptTypes(content))])),
  };
}

/** Stryker's counters and switches call functions; in a loop over sightings that is all the time there is, so they become an entry in a list. */
function noting(instrumented: string): string {
  const noted = instrumented
    .replaceAll(/stryCov_9fa48\(("\d+"(?:, "\d+")*)\)/gu, (_, ids: string) => {
      const entries = ids.split(", ").map((id) => `reachedMutants[${id.slice(1, -1)}]`);
      return `(${entries.join(" = ")} = 1)`;
    })
    .replaceAll(/stryMutAct_9fa48\("\d+"\)/gu, "false");
  return `const { reachedMutants } = globalThis;\n${noted}`;
}

/** An expression in brackets, so that what stands around it binds as before; statements and the cases of a switch as they are. */
function enclosed(kind: string, replacement: string): string {
  return kind === "BlockStatement" || /^(?:case|default|for)\b/u.test(replacement)
    ? replacement
    : `(${replacement})`;
}

function at(source: string, { line, column }: { readonly line: number; readonly column: number }): number {
  let start = 0;
  for (let passed = 0; passed < line; passed += 1) start = source.indexOf("\n", start) + 1;
  return start + column;
}
