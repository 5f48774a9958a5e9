/** A sheet read with somebody's help: heads that mean nothing by themselves are asked about, the rest is reported. */
import {
  cellText,
  type ReadTable,
  readHead,
  readTable,
  type TableQuestion,
} from "../../../knowledge/index.ts";
import type { Asker } from "../asker.ts";

/** Without an asker nothing is asked. */
export async function readGuided(question: TableQuestion, asker: Asker | undefined): Promise<ReadTable> {
  const { part, sheet } = question;
  if (asker === undefined) return readTable(question);
  const heads = new Map<number, string>();
  for (const [index, cell] of (sheet.rows[0] ?? []).entries()) {
    const head = cellText(cell);
    if (head === "" || "column" in readHead(part, head)) continue;
    const told = await askHead(question, head, asker);
    if (told !== undefined) heads.set(index, told);
  }
  return readTable({ ...question, heads });
}

/** Asks until a head is told that means something; an empty answer leaves the column out. */
async function askHead({ part }: TableQuestion, head: string, asker: Asker): Promise<string | undefined> {
  const features = part.features.map(({ id }) => id).join(", ");
  let hint = `features: ${features}; write FEATURE: STATE, FEATURE: mean, FEATURE: sources …`;
  for (;;) {
    const told = await asker.ask(`What is the column “${head}”? (${hint}; empty leaves it out) `);
    if (told === undefined || told === "") return undefined;
    const read = readHead(part, told);
    if ("column" in read) return told;
    hint = `${read.message}, ${read.mend}`;
  }
}
