/**
 * The setting "units" over everything that is said: sizes of the handbook and of people are found in the words where a reply goes out, since
 * half of them stand in a handbook's own sentences. Quoted words, pinned answers and files stay as they were written.
 */
import type { Block, QuestionBlock, Reply } from "../../reply.ts";
import { unitQuestionPrefix } from "../doubted-reading.ts";
import { inUnit, unitExample } from "../phrases/question.ts";
import { outsideQuotes, reworded } from "../reworded.ts";
import { askedUnit, inchesAsRuled, inOtherUnits, type Units } from "./said-size.ts";

type Chosen = Exclude<Units, "metric">;

/** The reply with its sizes in these units; "metric" leaves it as it is. */
export function inUnits(units: Units, reply: Reply): Reply {
  if (units === "metric") return reply;
  const blocks = blocksInUnits(units, reply.blocks);
  const { question } = reply.summary;
  const put = blocks.find((block) => block.kind === "question" && block.feature === question?.feature);
  if (question === null || put?.kind !== "question") return { ...reply, blocks };
  return { ...reply, blocks, summary: { ...reply.summary, question: { ...question, text: put.text } } };
}

export function blocksInUnits(units: Units, blocks: readonly Block[]): readonly Block[] {
  if (units === "metric") return blocks;
  return blocks.flatMap((block) => {
    if (block.kind !== "question") return reworded([block], (text) => sizesIn(units, text));
    // "You wrote 442 in. Did you mean 442 mm?" is about the units themselves.
    return block.feature.startsWith(unitQuestionPrefix) ? [block] : [questionIn(units, block)];
  });
}

function questionIn(units: Chosen, block: QuestionBlock): QuestionBlock {
  const answers = block.answers.map((answer) => ({ ...answer, label: sizesIn(units, answer.label) }));
  if (block.unit === undefined) return { ...block, text: sizesIn(units, block.text), answers };
  const unit = askedUnit(units, block.unit);
  const text = block.text.replace(inUnit("", block.unit), inUnit("", unit));
  return { ...block, text: sizesIn(units, text), unit, answers };
}

const figure = String.raw`\d+(?:\.\d+)?`;
/** Neither "M8 × 20 mm", "4 × 108 mm" nor "8/20 mm": those are names. "450 g mat" is a weight a square metre. */
const before = String.raw`(?<![\p{L}\d.,/]|[x×] ?)`;
const after = String.raw`(?![\p{L}\d/·²³]| (?:mat|cloth|weave|paper)\b)`;
const metric = `(?:(?<first>${figure}) (?<between>to|or) )?(?<last>${figure}) (?<unit>mm|cm|g|kg)(?: ± (?<spread>${figure}))?${after}`;
/** "in" is a word too: after a whole number it is inches only where nothing but punctuation follows, and never after a year. */
const imperial = String.raw`(?:(?<whole>\d+) (?<over>\d+)/(?<under>\d+)|(?<plain>\d{1,3}(?:\.\d+)?)) (?<inches>in|lb|oz)(?=$|[.,;:)\]]| ±|(?<=\.\d+ \w+) )`;
const anySize = new RegExp(`${before}(?:${metric}|${imperial})`, "gu");

/** The sizes of one text in these units: "17 3/8 in", or "442 mm (17 3/8 in)" where both are wanted. */
export function sizesIn(units: Units, text: string): string {
  if (units === "metric") return text;
  if (text.includes(unitExample)) return text;
  return outsideQuotes(text, (piece) =>
    piece.replace(anySize, (said: string, ...found) => {
      const groups: Found = found.at(-1);
      return groups.unit === undefined ? imperialSize(units, said, groups) : metricSize(units, said, groups);
    }),
  );
}

type Found = Readonly<Record<string, string | undefined>>;

function metricSize(units: Chosen, said: string, { first, between, last, unit = "", spread }: Found): string {
  const other = inOtherUnits({
    values: [...(first === undefined ? [] : [Number(first)]), Number(last)],
    unit,
    ...(between === undefined ? {} : { between }),
    ...(spread === undefined ? {} : { spread: Number(spread) }),
  });
  if (other === undefined) return said;
  return units === "both" ? `${said} (${other})` : other;
}

/** What is imperial already needs its millimetres beside it where both are wanted, and the look of a rule everywhere. */
function imperialSize(units: Chosen, said: string, found: Found): string {
  const { whole, over, under, plain, inches: unit = "" } = found;
  const value = whole === undefined ? Number(plain) : Number(whole) + Number(over) / Number(under);
  const own = whole === undefined && unit === "in" ? `${inchesAsRuled(value)} in` : said;
  const other = units === "both" ? inOtherUnits({ values: [value], unit }) : undefined;
  return other === undefined ? own : `${own} (${other})`;
}
