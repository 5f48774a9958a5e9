/** The balance of evidence for whoever draws it, and the same as a table for whoever cannot see it. */
import type { Block } from "../../reply.ts";
import { speaksFor } from "../phrases/answer.ts";
import { evidenceHead, evidenceTitle, oneBanWords, twoBansWords } from "../phrases/charts.ts";

type EvidenceBlock = Extract<Block, { kind: "evidence" }>;

export interface EvidenceChart {
  readonly title: string;
  /** Everything that is in the drawing, in sentences. */
  readonly description: string;
  readonly first: string;
  readonly rival: string;
  readonly items: EvidenceBlock["items"];
  /** What a bar of half a side and of a whole one is worth. */
  readonly scale: { readonly oneBan: string; readonly twoBans: string };
}

export function evidenceChart(block: EvidenceBlock): EvidenceChart {
  const { first, rival, items } = block;
  const said = (lead: string, facts: EvidenceBlock["items"]): readonly string[] =>
    facts.length === 0
      ? []
      : [`${lead} ${facts.map(({ words, strength }) => `${words} (${strength})`).join("; ")}.`];
  const description = [
    ...said(
      speaksFor(first, rival),
      items.filter(({ bans }) => bans >= 0),
    ),
    ...said(
      speaksFor(rival, first),
      items.filter(({ bans }) => bans < 0),
    ),
  ].join(" ");
  const scale = { oneBan: oneBanWords, twoBans: twoBansWords };
  return { title: evidenceTitle(first, rival), description, first, rival, items, scale };
}

/** One row a fact, in the order of the drawing. */
export function evidenceTable({ first, rival, items }: EvidenceBlock): Extract<Block, { kind: "table" }> {
  return {
    kind: "table",
    caption: evidenceTitle(first, rival),
    head: evidenceHead,
    rows: items.map(({ words, bans, strength, sources }) => [
      words,
      bans < 0 ? rival : first,
      strength,
      sources,
    ]),
  };
}
