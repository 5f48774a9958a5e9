/** `witness-mark model`: the tables a part kind is identified by, for whoever wants to check the arithmetic. */
import { readOptions } from "./options.ts";
import { openPartTables, type PartTables, tableOptions } from "./part-tables.ts";

export async function run(written: readonly string[]): Promise<void> {
  const { json, ...options } = readOptions("model", written, tableOptions);
  const open = await openPartTables("model", options);
  process.stdout.write(json ? `${JSON.stringify(open.tables)}\n` : `${summary(open).join("\n")}\n`);
}

function summary({ part, goal, tables }: PartTables): readonly string[] {
  const classes = new Map<string, number>();
  for (const { class: name, prior } of tables.hypotheses) classes.set(name, (classes.get(name) ?? 0) + prior);
  const byPrior = [...classes].sort(([, one], [, other]) => other - one);
  const column = Math.max(
    ...byPrior.map(([name]) => name.length),
    ...tables.questions.map(({ id }) => id.length),
  );
  return [
    `${part}, ${goal}: ${tables.hypotheses.length} hypotheses, an error costs ${tables.lambda} looks`,
    "",
    `${"class".padEnd(column)}   prior`,
    ...byPrior.map(([name, prior]) => `${name.padEnd(column)}  ${prior.toFixed(4).padStart(6)}`),
    "",
    `${"question".padEnd(column)}    cost  cannot tell  answers`,
    ...tables.questions.map(
      ({ id, cost, cannotTell, answers }) =>
        `${id.padEnd(column)}  ${cost.toFixed(1).padStart(6)}  ${cannotTell.toFixed(2).padStart(11)}  ${answers.join(", ")}`,
    ),
  ];
}
