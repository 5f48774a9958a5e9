/**
 * What aligns, on a telephone: a bar of ten cells before each name of the standing, an arrow before each weight of the evidence,
 * tables in columns while they are narrow and as one short record a row when they are not.
 */
import type { Block } from "../../bot/index.ts";
import { clean, type Section, type Span } from "./html.ts";

type Standing = Extract<Block, { kind: "standing" }>;
type Evidence = Extract<Block, { kind: "evidence" }>;
type Table = Extract<Block, { kind: "table" }>;

const CELLS = 10;
/** Columns of fixed width that a telephone shows without breaking the line. */
const WIDEST_COLUMNS = 36;
/** A head that is not worth repeating beside every cell. */
const LONGEST_HEAD = 14;
const signs = ["①", "②", "③", "④", "⑤", "⑥", "⑦", "⑧"];
/** Two bans (a hundred to one) are three arrows. */
const ARROWS_PER_BAN = 1.5;

export function standingSection(block: Standing): Section | undefined {
  if (block.items.length === 0) return undefined;
  const rows = block.items.flatMap((item): readonly Span[] => {
    const cells = Math.round(Math.min(1, Math.max(0, item.probability)) * CELLS);
    const bar = "█".repeat(cells) + "░".repeat(CELLS - cells);
    return [
      { text: "\n" },
      { text: bar, mark: "code" },
      { text: ` ${clean(item.name)}, ${clean(item.words)}` },
    ];
  });
  return { look: "plain", spans: [{ text: withColon(clean(block.lead)) }, ...rows] };
}

/** The first name and its rival with an arrow each; then every fact with arrows to the side it speaks for. */
export function evidenceSection({ first, rival, items }: Evidence): Section | undefined {
  if (items.length === 0) return undefined;
  const rows = items.flatMap(({ words, bans, strength, sources }): readonly Span[] => [
    { text: `\n${arrows(bans)} ${clean(words)}` },
    { text: strength === "" ? "" : ` (${clean(strength)})` },
    { text: sources === "" ? "" : ` [${clean(sources)}]` },
  ]);
  return {
    look: "folded",
    spans: [{ text: `▸ ${clean(first)}` }, { text: `\n◂ ${clean(rival)}` }, ...rows],
  };
}

function arrows(bans: number): string {
  const count = Math.min(3, Math.round(Math.abs(bans) * ARROWS_PER_BAN));
  if (count === 0) return "·";
  return (bans > 0 ? "▸" : "◂").repeat(count);
}

export function tableSections(block: Table): readonly Section[] {
  const rows = [block.head, ...block.rows].map((row) => row.map(clean));
  const widths = block.head.map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  const width = widths.reduce((sum, one) => sum + one + 2, -2);
  const caption: Section = { look: "plain", spans: [{ text: clean(block.caption), mark: "bold" }] };
  const lead = block.caption === "" ? [] : [caption];
  if (width > WIDEST_COLUMNS) return [...lead, ...recordSections(block.head, block.rows)];
  const lines = rows.map((row) =>
    row
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join("  ")
      .trimEnd(),
  );
  return [...lead, { look: "columns", spans: [{ text: lines.join("\n") }] }];
}

/** A record a row; where the heads are long, they stand once, with a sign each that the records repeat. */
function recordSections(head: readonly string[], rows: readonly (readonly string[])[]): readonly Section[] {
  const [, ...heads] = head.map(clean);
  const isLong = heads.length <= signs.length && heads.some((one) => one.length > LONGEST_HEAD);
  const named = heads.map((one, index) => (isLong ? `${signs[index]} ` : `${one}: `));
  const legend = heads.map((one, index) => `${signs[index]} ${one}`).join("\n");
  const records = rows.map(([first = "", ...rest]): Section => {
    const cells = rest.flatMap((cell, index) =>
      cell === "" ? [] : [{ text: `\n${named[index] ?? ""}${clean(cell)}` }],
    );
    return { look: "plain", spans: [{ text: clean(first), mark: "bold" }, ...cells] };
  });
  return isLong ? [{ look: "plain", spans: [{ text: legend }] }, ...records] : records;
}

/** The words before rows end in a colon unless they end in something else. */
export function withColon(lead: string): string {
  return lead === "" || /[.:?!]$/u.test(lead) ? lead : `${lead}:`;
}
