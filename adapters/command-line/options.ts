/** The words after a command, read by node:util's parser; what is wrong with them is said with a hint and the usage. */
import { type ParseArgsOptionsConfig, parseArgs } from "node:util";

/** What was written, and what could have been: for a hint, which is worked out only when it is shown. */
export interface Misspelt {
  readonly typed: string;
  readonly known: readonly string[];
  /** Stands before a name when it is typed, such as "--". */
  readonly prefix: string;
}

/** The command was written wrongly: shown with its usage, exit status 2. */
export class UsageError extends Error {
  /** The command whose usage helps; absent when no command was recognised. */
  readonly command: string | undefined;
  readonly misspelt: Misspelt | undefined;

  constructor(message: string, command?: string, misspelt?: Misspelt) {
    super(message);
    this.name = "UsageError";
    this.command = command;
    this.misspelt = misspelt;
  }
}

export type OptionKinds = Readonly<Record<string, "text" | "flag">>;

export type Options<Kinds extends OptionKinds> = {
  readonly [Name in keyof Kinds]: Kinds[Name] extends "flag" ? boolean : string | undefined;
};

/** The options given, each at most once; flags that are absent are false. Throws UsageError for anything else. */
export function readOptions<const Kinds extends OptionKinds>(
  command: string,
  written: readonly string[],
  kinds: Kinds,
): Options<Kinds> {
  const options: ParseArgsOptionsConfig = Object.fromEntries(
    Object.entries(kinds).map(([name, kind]) => [name, { type: kind === "flag" ? "boolean" : "string" }]),
  );
  const { tokens } = parseArgs({ args: [...written], options, strict: false, tokens: true });
  const values: Record<string, string | boolean | undefined> = Object.fromEntries(
    Object.entries(kinds).map(([name, kind]) => [name, kind === "flag" ? false : undefined]),
  );
  const given = new Set<string>();
  for (const token of tokens) {
    if (token.kind === "option-terminator") continue;
    if (token.kind === "positional") throw new UsageError(`${token.value}: not expected here`, command);
    if (given.has(token.name)) throw new UsageError(`--${token.name}: given twice`, command);
    given.add(token.name);
    values[token.name] = valueGiven(command, token, kinds);
  }
  return values as Options<Kinds>;
}

function valueGiven(
  command: string,
  token: { readonly name: string; readonly rawName: string; readonly value: string | undefined },
  kinds: OptionKinds,
): string | boolean {
  const kind = Object.hasOwn(kinds, token.name) ? kinds[token.name] : undefined;
  if (kind === undefined) {
    const misspelt = { typed: token.name, known: Object.keys(kinds), prefix: "--" };
    throw new UsageError(`${token.rawName}: no such option`, command, misspelt);
  }
  if (kind === "flag") {
    if (token.value !== undefined) throw new UsageError(`--${token.name}: takes no value`, command);
    return true;
  }
  if (token.value === undefined || token.value === "" || token.value.startsWith("--")) {
    throw new UsageError(`--${token.name}: a value is needed`, command);
  }
  return token.value;
}
