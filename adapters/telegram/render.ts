/**
 * A reply as what Telegram is given: messages in HTML, buttons under the last of them, pictures and files beside. Pure, and made
 * from the blocks themselves, so that nothing a member wrote can become formatting. Adds marks, no words.
 */
import {
  type Block,
  type Choice,
  type PressedAnswer,
  pinnedLead,
  type QuestionBlock,
  type Reply,
} from "../../bot/index.ts";
import { changeoverPicture } from "../pictures/changeover-picture.ts";
import { evidenceSection, standingSection, tableSections, withColon } from "./figures.ts";
import { begun, clean, type Mark, type Section, type Span } from "./html.ts";
import { captionOf, pagesOf } from "./pages.ts";

/** What a button stands for: an answer, or words. */
export type Pressed = { readonly answer: PressedAnswer } | { readonly say: string };

export interface Button {
  readonly label: string;
  readonly pressed: Pressed;
}

export interface Rendered {
  /** HTML, each within the limit of one message. */
  readonly pages: readonly string[];
  /** In rows, as they stand under the last page. */
  readonly buttons: readonly (readonly Button[])[];
  readonly pictures: readonly { readonly svg: string; readonly caption: string }[];
  readonly photographs: readonly { readonly photograph: string; readonly caption: string }[];
  readonly files: readonly { readonly name: string; readonly text: string; readonly caption: string }[];
  /** The feature that is asked for. */
  readonly question: string | null;
  /** What it is about: the case, a flow of questions by its name ("observation"), or nothing that goes on. */
  readonly subject: string | null;
  /** Tells where the case stands now, so that it may take the place of what was told before. */
  readonly movesCase: boolean;
}

export interface Page {
  /** Where pages of the program's own web are found; without it they are not shown. */
  readonly publicAddress?: string;
  /** Stands under a question that wants words, where a member must answer this very message to be heard. */
  readonly answerHint?: string;
}

const longestRow = 32;
const mostInRow = 3;
/** The platform takes a hundred buttons a message; what stands beside the answers keeps its room. */
const mostButtons = 96;
const mostAnswers = 80;
const longestLabel = 60;

export function renderReply(reply: Reply, page: Page = {}): Rendered {
  const { blocks } = reply;
  const question = blocks.find((block) => block.kind === "question")?.feature ?? null;
  const movesCase = tellsOfCase(reply, question);
  return {
    pages: pagesOf(blocks.flatMap((block) => sectionsOf(block, page))),
    buttons: upTo(mostButtons, blocks.flatMap(buttonRows)),
    pictures: blocks.flatMap(picturesOf),
    photographs: blocks.flatMap((block) =>
      block.kind === "photograph"
        ? [{ photograph: block.photograph, caption: captionOf(clean(block.alternative)) }]
        : [],
    ),
    files: blocks.flatMap((block) =>
      block.kind === "file"
        ? [{ name: block.name, text: block.text, caption: captionOf(clean(block.alternative)) }]
        : [],
    ),
    question,
    subject: movesCase || isOfCase(reply, question) ? ofCase : (question?.split(".")[0] ?? null),
    movesCase,
  };
}

function picturesOf(block: Block): Rendered["pictures"] {
  if (block.kind === "picture") return [{ svg: block.svg, caption: captionOf(clean(block.alternative)) }];
  if (block.kind !== "timeline") return [];
  const { chart } = block;
  return [{ svg: changeoverPicture(chart), caption: captionOf(clean(chart.title)) }];
}

/** The subject of everything that is about a case. */
export const ofCase = "case";

function isOfCase({ summary }: Reply, question: string | null): boolean {
  return question !== null && question === (summary.question?.feature ?? null);
}

function tellsOfCase(reply: Reply, question: string | null): boolean {
  return reply.blocks.some((block) => {
    if (block.kind === "standing") return true;
    if (block.kind === "text") return block.tone === "answer";
    return block.kind === "understood" && block.items.length > 0 && isOfCase(reply, question);
  });
}

function sectionsOf(block: Block, page: Page): readonly Section[] {
  switch (block.kind) {
    case "text":
      return block.text === "" ? [] : [plain(toneSpan(block.text, block.tone ?? "plain"))];
    case "understood":
      return understoodSections(block);
    case "standing":
      return present(standingSection(block));
    case "evidence":
      return present(evidenceSection(block));
    case "question":
      return questionSections(block, page);
    case "picture":
    case "timeline":
    case "photograph":
    case "file":
    case "choices":
      return [];
    case "page":
      return page.publicAddress === undefined
        ? []
        : [plain({ text: clean(block.label), link: page.publicAddress + block.path })];
    case "pinned":
      return pinnedSections(block);
    case "table":
      return tableSections(block);
    case "list":
      return [
        plain(
          { text: withColon(clean(block.lead)) },
          ...block.items.map((item, index) => ({
            text: `${index === 0 && block.lead === "" ? "" : "\n"}• ${clean(item)}`,
          })),
        ),
      ];
    case "cautions":
      return block.lines.length === 0
        ? []
        : [{ look: "quote", spans: [{ text: block.lines.map((line) => `! ${clean(line)}`).join("\n") }] }];
    case "sources":
      return block.items.length === 0 ? [] : [sourcesSection(block)];
    case "edition":
      return [plain({ text: clean(block.text), mark: "italic" })];
  }
}

function toneSpan(text: string, tone: "plain" | "answer" | "caution" | "aside"): Span {
  const marks: Readonly<Record<string, Mark>> = { answer: "bold", aside: "italic" };
  const mark = marks[tone];
  const words = tone === "caution" ? `! ${clean(text)}` : clean(text);
  return mark === undefined ? { text: words } : { text: words, mark };
}

function understoodSections(block: Extract<Block, { kind: "understood" }>): readonly Section[] {
  const items = block.items.flatMap(({ label, value, doubt }): readonly Span[] => [
    { text: `\n• ${clean(label)}: ` },
    { text: clean(value), mark: "bold" },
    { text: doubt === undefined ? "" : ` (${clean(doubt)})` },
  ]);
  const read = items.length === 0 ? [] : [plain({ text: withColon(clean(block.lead)) }, ...items)];
  return [...read, ...block.remarks.map((remark) => plain({ text: clean(remark) }))];
}

function questionSections(block: QuestionBlock, { answerHint }: Page): readonly Section[] {
  const question = plain({ text: clean(block.text), mark: "bold" });
  if (block.expects === "choice" || answerHint === undefined) return [question];
  return [question, plain({ text: clean(answerHint), mark: "italic" })];
}

function pinnedSections(block: Extract<Block, { kind: "pinned" }>): readonly Section[] {
  const sources = block.sources.length === 0 ? "" : ` [${block.sources.join("; ")}]`;
  const dispute = block.dispute === undefined ? [] : [plain({ text: `! ${clean(block.dispute)}` })];
  return [
    plain({ text: clean(pinnedLead(block.author, block.date)), mark: "bold" }),
    { look: "quote", spans: [{ text: clean(`${block.text}${sources}`) }] },
    ...dispute,
  ];
}

function sourcesSection({ items }: Extract<Block, { kind: "sources" }>): Section {
  const lines = items.map(({ short, citation, grade }) => `[${short}] ${citation} (grade ${grade})`);
  return { look: "folded", spans: [{ text: clean(lines.join("\n")) }] };
}

function buttonRows(block: Block): readonly (readonly Button[])[] {
  if (block.kind === "choices") return inRows(block.choices.map(saying));
  if (block.kind !== "question") return [];
  const answers = block.answers.slice(0, mostAnswers).map((choice) => ({
    label: labelOf(choice),
    pressed: { answer: { feature: block.feature, state: choice.id } },
  }));
  return [...inRows(answers), ...inRows(block.besides.map(saying))];
}

function saying(choice: Choice): Button {
  return { label: labelOf(choice), pressed: { say: choice.say } };
}

function labelOf({ label, say }: Choice): string {
  const shown = [label, say].map((text) => clean(text).trim()).find((text) => text !== "") ?? "…";
  return shown.length <= longestLabel ? shown : `${begun(shown, longestLabel - 1).trimEnd()}…`;
}

/** As many beside each other as a telephone shows whole. */
function inRows(buttons: readonly Button[]): readonly (readonly Button[])[] {
  const rows: Button[][] = [];
  for (const button of buttons) {
    const row = rows.at(-1);
    const taken = row?.reduce((sum, { label }) => sum + label.length, 0) ?? 0;
    if (row !== undefined && row.length < mostInRow && taken + button.label.length <= longestRow)
      row.push(button);
    else rows.push([button]);
  }
  return rows;
}

function upTo(most: number, rows: readonly (readonly Button[])[]): readonly (readonly Button[])[] {
  let count = 0;
  return rows.filter((row) => {
    count += row.length;
    return count <= most;
  });
}

function plain(...spans: readonly Span[]): Section {
  return { look: "plain", spans };
}

function present(section: Section | undefined): readonly Section[] {
  return section === undefined ? [] : [section];
}
