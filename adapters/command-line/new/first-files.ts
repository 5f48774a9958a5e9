/** The files of a handbook that has just begun: sound as they stand, with a word at each place on how to go on. */
import { type HandbookFile, parseDateText } from "../../../knowledge/index.ts";
import { schemaLine } from "../../handbook-folder/index.ts";
import type { Beginning, FirstVariant } from "./interview.ts";

/** `month`: the month in which it begins, "2026-11". */
export function firstFiles(beginning: Beginning, month: string): readonly HandbookFile[] {
  const part = idOf(beginning.part);
  return [
    file("handbook.yaml", cover(beginning, month)),
    file("cars.yaml", things(beginning)),
    file("sources.yaml", sources(beginning)),
    file(`parts/${part}.yaml`, partKind(beginning, part)),
  ];
}

function file(path: string, text: string): HandbookFile {
  return { path, text: `${schemaLine(path)}\n${text}` };
}

function cover({ name, thing, part }: Beginning, month: string): string {
  const named = thing === "car" ? "" : `thing: ${quoted(thing)}\n`;
  return `format: 1
id: ${idOf(name)}
name: ${quoted(name)}
${named}# What this handbook is about, and what it covers so far.
summary: ${quoted(`${name}: begun with the ${part.toLowerCase()}.`)}
# complete, good, fair or poor: how much of what exists is described. Be modest.
completeness: poor
# The month of this edition.
edited: ${quoted(month)}
`;
}

function things({ name, from, to, perYear, thing }: Beginning): string {
  const first = yearOf(from);
  const years = Array.from(
    { length: yearOf(to) - first + 1 },
    (_, index) => `  ${first + index}: ${perYear}`,
  );
  return `# The models, with first and last date. Trims and markets may follow: see the shipped handbooks.
models:
  - id: ${idOf(name)}
    name: ${quoted(name)}
    # What else people call it; typing slips and plurals need not be listed.
    also: []
    from: ${quoted(from)}
    to: ${quoted(to)}
# How many ${thing}s were made each year; a rough figure is better than none.
production:
${years.join("\n")}
`;
}

function sources({ source }: Beginning): string {
  const kinds = { A: "works-record", B: "measured", C: "witness", D: "hearsay" } as const;
  const short = source.citation.split(/[,;.]/u)[0]?.slice(0, 40).trim() || "first source";
  return `# Where it is known from. Grade: A a record of the time, B seen and measured, C told by somebody who was there, D repeated.
sources:
  - id: first-source
    kind: ${kinds[source.grade]}
    citation: ${quoted(source.citation)}
    # Stands in brackets behind an answer.
    short: ${quoted(short)}
    grade: ${source.grade}
`;
}

function partKind({ part, feature, variants }: Beginning, id: string): string {
  const seen = variants.map((variant) => variant.seen);
  const states = ownIds(seen, reservedStates);
  const ids = ownIds(variants.map(({ name }) => name));
  return `id: ${id}
name: ${quoted(part)}
also: []
summary: ${quoted(`The ${part.toLowerCase()}.`)}

# What can be looked at. Effort: 1 a look from outside … 8 dismantling.
features:
  - id: ${idOf(feature.name)}
    kind: states
    name: ${quoted(feature.name)}
    also: []
    question: ${quoted(feature.question)}
    check: ${quoted(feature.check)}
    effort: 1
    photograph: true
    states:
${seen.map((name, index) => `      - { id: ${states[index]}, name: ${quoted(name)}, also: [] }`).join("\n")}

# The versions. How often: always, nearly always, usually, often, about half, sometimes, rarely, never, or a count, 17 of 20.
variants:
${variants.map((variant, index) => version(variant, ids[index] ?? "", idOf(feature.name), states[index] ?? "")).join("\n")}
`;
}

function version(variant: FirstVariant, id: string, feature: string, state: string): string {
  return `  - id: ${id}
    name: ${quoted(variant.name)}
    also: []
    origin: production
    summary: ${quoted(`Has ${variant.seen}.`)}
    fitted:
      - { from: ${quoted(variant.from)}, to: ${quoted(variant.to)} }
    sources: [first-source]
    tells:
      ${feature}: { ${state}: usually }`;
}

const reservedStates = ["not-there", "cannot-tell", "sources", "drawing", "mean", "spread"];

/** Two sights, or two versions, may have names that make one id ("Mk 1", "Mk-1"). */
function ownIds(names: readonly string[], reserved: readonly string[] = []): readonly string[] {
  const taken = new Set(reserved);
  return names.map((name) => {
    const id = idOf(name);
    const own = taken.has(id) ? `${id}-${reserved.includes(id) ? "seen" : "too"}` : id;
    taken.add(own);
    return own;
  });
}

/** Lower-case letters and figures joined by hyphens. */
export function idOf(name: string): string {
  const plain = name
    .normalize("NFKD")
    .replaceAll(/\p{M}/gu, "")
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/gu, "-")
    .replaceAll(/^-+|-+$/gu, "")
    .slice(0, 60)
    .replace(/-+$/u, "");
  return plain === "" || plain === "constructor" ? "first" : plain;
}

function yearOf(date: string): number {
  return Math.floor((parseDateText(date)?.from ?? 0) / 12);
}

function quoted(text: string): string {
  return JSON.stringify(text);
}
