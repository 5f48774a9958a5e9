/**
 * What the conversation hands back: blocks in reading order. An adapter renders them within its platform's limits and
 * adds no words of its own; every sentence comes from bot/conversation/phrases/ or the handbook.
 */
import type { Goal } from "../knowledge/index.ts";
import type { ChainChart } from "./conversation/saying/chain-chart.ts";
import type { ChangeoverChart } from "./conversation/saying/changeover-chart.ts";

/**
 * Something that can be pressed or typed. `say` is what typing it as words would be; where it ends in "…" the person completes it, and
 * said as it stands it is asked for the rest.
 */
export interface Choice {
  readonly id: string;
  readonly label: string;
  readonly say: string;
}

export interface QuestionBlock {
  readonly kind: "question";
  /** Feature id, or "car.built", "car.trim", "car.market", "part" (which part kind?), "unit:FEATURE" (a unit to confirm). */
  readonly feature: string;
  readonly text: string;
  /** 1 a look from outside … 8 dismantling. */
  readonly effort: number;
  /** A picture can be photographed and shown instead. */
  readonly photographDoes: boolean;
  /** Given answers; empty when a measurement or date is asked for in free text. */
  readonly answers: readonly Choice[];
  readonly expects: "choice" | "measurement" | "date" | "words";
  readonly unit?: string;
  /** Always on offer: cannot tell, why this?, how do I check?, undo. */
  readonly besides: readonly Choice[];
}

export interface TableBlock {
  readonly kind: "table";
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export type Block =
  | { readonly kind: "text"; readonly text: string; readonly tone?: "plain" | "answer" | "caution" | "aside" }
  /** What was read from the words, shown so that it can be corrected. */
  | {
      readonly kind: "understood";
      readonly lead: string;
      readonly items: readonly { readonly label: string; readonly value: string; readonly doubt?: string }[];
      readonly remarks: readonly string[];
    }
  /** Where it stands: names with probability in number and published word. */
  | {
      readonly kind: "standing";
      readonly lead: string;
      readonly items: readonly {
        readonly name: string;
        readonly probability: number;
        readonly words: string;
      }[];
    }
  /** What speaks for and against, as weights in bans with words. */
  | {
      readonly kind: "evidence";
      readonly first: string;
      readonly rival: string;
      readonly items: readonly {
        readonly words: string;
        readonly bans: number;
        readonly strength: string;
        readonly sources: string;
      }[];
    }
  | QuestionBlock
  /** A drawing of the handbook, with its path there, or a chart, which has none. */
  | {
      readonly kind: "picture";
      readonly path: string | null;
      readonly svg: string;
      readonly alternative: string;
    }
  /** A keeper's own answer; it stands before what the bot works out. */
  | {
      readonly kind: "pinned";
      readonly pin: string;
      readonly author: string;
      /** In words: "12 March 2026". */
      readonly date: string;
      readonly text: string;
      readonly sources: readonly string[];
      /** What speaks against it; undefined when nothing does. */
      readonly dispute?: string;
    }
  /** A member's photograph, by the id under which it is kept. */
  | { readonly kind: "photograph"; readonly photograph: string; readonly alternative: string }
  /** Something to save: an export. */
  | {
      readonly kind: "file";
      readonly name: string;
      readonly mediaType: string;
      readonly text: string;
      readonly alternative: string;
    }
  /** A page of this program's own web, by its path; shown only where the address is known. */
  | { readonly kind: "page"; readonly label: string; readonly path: string }
  | TableBlock
  /** A change over time, to be drawn; the table says the same where nothing can be drawn. */
  | { readonly kind: "timeline"; readonly chart: ChangeoverChart | ChainChart; readonly table: TableBlock }
  | { readonly kind: "list"; readonly lead: string; readonly items: readonly string[] }
  /** Stands before the step it concerns. */
  | { readonly kind: "cautions"; readonly lines: readonly string[] }
  | {
      readonly kind: "sources";
      readonly items: readonly {
        readonly short: string;
        readonly citation: string;
        readonly grade: string;
      }[];
    }
  /** Things the person may do next, beside answering. */
  | { readonly kind: "choices"; readonly choices: readonly Choice[] }
  | { readonly kind: "edition"; readonly text: string };

/** The state of a case in the terms that scripts read (one JSON line); the blocks say the same to people. */
export interface CaseSummary {
  readonly case: string;
  readonly part: string | null;
  readonly goal: Goal;
  readonly car: Readonly<Record<string, string>>;
  readonly understood: readonly {
    readonly feature: string;
    readonly state?: string;
    readonly reading?: string;
    readonly certainty: number;
    readonly words: string;
  }[];
  readonly ranking: readonly {
    readonly variant: string;
    readonly name: string;
    readonly probability: number;
  }[];
  readonly verdict: { readonly class: string; readonly probability: number } | null;
  readonly question: {
    readonly feature: string;
    readonly text: string;
    readonly effort: number;
    readonly answers: readonly { readonly id: string; readonly label: string }[];
  } | null;
  readonly done: boolean;
  readonly uncertainty: {
    readonly bits: number;
    readonly remaining: readonly {
      readonly variant: string;
      readonly probability: number;
      readonly toldApartBy: readonly string[];
    }[];
  };
  readonly pinned: readonly string[];
  readonly cautions: readonly string[];
  readonly sources: readonly string[];
}

export interface Reply {
  readonly blocks: readonly Block[];
  readonly summary: CaseSummary;
  /** Only for the one who spoke: where others read along, it goes to them alone. */
  readonly isPrivate?: boolean;
}
