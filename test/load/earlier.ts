// What was there before anybody speaks: a handbook of many more part kinds, and years of conversations and observations. Drawn from what the
// demonstration has, because what is made of one mould costs what many of it cost.
import { cpSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parseDocument } from "yaml";
import { demonstrationHandbook } from "../../adapters/configuration.ts";
import type { DatabaseStore } from "../../adapters/store/database-store.ts";

const LANES = 64;
const TURNS = 10;

/** A copy of the demonstration in `folder`, with every part kind there `times` times, under invented names from the second on. */
export function copyHandbook(folder: string, times: number): void {
  cpSync(demonstrationHandbook, folder, { recursive: true });
  const parts = join(folder, "parts");
  for (const name of readdirSync(parts)) {
    const text = readFileSync(join(parts, name), "utf8");
    for (let copy = 1; copy < times; copy += 1) {
      const document = parseDocument(text);
      document.set("id", `${document.get("id")}-${copy}`);
      document.set("name", inventedName(copy * 100 + name.length));
      document.set("also", []);
      writeFileSync(join(parts, name.replace(".yaml", `-${copy}.yaml`)), document.toString());
    }
  }
}

/** Two words of two syllables, another one for each number below 3,000,000. */
function inventedName(number: number): string {
  const syllables = ["bra", "kel", "dof", "mur", "ti", "sno", "val", "gri", "pem", "rul", "ha", "zig"];
  let left = number;
  const syllable = () => {
    const chosen = syllables[left % syllables.length] ?? "";
    left = Math.floor(left / syllables.length);
    return chosen;
  };
  return `${syllable()}${syllable()}ek ${syllable()}${syllable()}um`;
}

/**
 * Each conversation and observation that is there `times` times over, under other names; conversations with as many versions as a talk
 * has turns. Gives how many records and versions were added.
 */
export async function addHistory(
  store: DatabaseStore,
  times: number,
): Promise<{ readonly versions: number }> {
  const moulds: { readonly kind: string; readonly id: string; readonly state: unknown }[] = [];
  for (const kind of ["conversation", "observation"]) {
    for await (const { id, state } of store.currents(kind, "")) moulds.push({ kind, id, state });
  }
  let versions = 0;
  const jobs = moulds.flatMap((mould) => Array.from({ length: times }, (_, copy) => ({ ...mould, copy })));
  const lane = async () => {
    for (let job = jobs.pop(); job !== undefined; job = jobs.pop()) {
      const { kind, id, state, copy } = job;
      const turns = kind === "conversation" ? TURNS : 1;
      for (let turn = 0; turn < turns; turn += 1) {
        const change = { kind, id: `${id}x${copy}`, by: "earlier", at: copy, why: "said" };
        const message = kind === "conversation" ? { message: `m${turn}` } : {};
        await store.advance({ ...change, ...message }, () => ({ state, outcome: null }));
        versions += 1;
      }
    }
  };
  await Promise.all(Array.from({ length: LANES }, lane));
  return { versions };
}
