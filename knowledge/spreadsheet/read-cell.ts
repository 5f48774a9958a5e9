/** What single cells say: a frequency, a figure, sources, or a whole claim in one cell; or why not. */
import { notThere } from "../evidence/report.ts";
import { frequencyWords, parseFrequency } from "../handbook/frequency.ts";
import { didYouMean } from "../handbook/nearest-name.ts";
import type { Feature, Source } from "../handbook/schema.ts";
import { isCalled } from "./columns.ts";
import { type Cell, cellText } from "./sheet.ts";

export type ReadCell<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly message: string; readonly mend: string };

/** A claim but for its sources: mean and spread, or frequencies by state. */
export type Said = Readonly<Record<string, string | number>>;

function refused(message: string, mend: string): ReadCell<never> {
  return { ok: false, message, mend };
}

/** A frequency as it is to stand in the handbook: words as written, `17/20` as `17 of 20`. Undefined for an empty cell. */
export function readFrequency(cell: Cell | undefined): ReadCell<string | undefined> {
  const text = cellText(cell);
  if (text === "") return { ok: true, value: undefined };
  if (typeof cell === "object" && cell !== null) {
    return refused("the spreadsheet has made a date of it", 'format the column as text and write "17 of 20"');
  }
  if (typeof cell === "number" || /^\d+([.,]\d+)?\s*%?$/u.test(text)) {
    return refused(
      "a share does not say how many were looked at",
      'write "17 of 20", or a word such as usually',
    );
  }
  const spelt = text.replace(/^(\d{1,5})\s*(?:\/|of|out of)\s*(\d{1,5})$/iu, "$1 of $2");
  if (parseFrequency(spelt) !== undefined) return { ok: true, value: spelt };
  if (/^[x✓✗√]$|^yes$|^true$/iu.test(text)) {
    return refused("a tick does not say how often", "write always, nearly always, usually … or 17 of 20");
  }
  return refused("no frequency", didYouMean(text, Object.keys(frequencyWords)));
}

/** A positive figure; a decimal comma is read where it can be no other, a unit is not. Undefined for an empty cell. */
export function readFigure(cell: Cell | undefined): ReadCell<number | undefined> {
  const text = cellText(cell);
  if (text === "") return { ok: true, value: undefined };
  if (typeof cell === "object" && cell !== null) {
    return refused("the spreadsheet has made a date of it", "format the column as number");
  }
  if (/^[1-9]\d{0,2},\d{3}$/u.test(text)) {
    const [whole, decimal] = [text.replace(",", ""), text.replace(",", ".")];
    return refused(
      `${text} can be read as ${whole} and as ${Number(decimal)}`,
      `write ${whole} or ${Number(decimal)}`,
    );
  }
  const plain = /^\d+,\d+$/u.test(text) ? text.replace(",", ".") : text;
  const value =
    typeof cell === "number" ? cell : /^\d+(\.\d+)?(e[+-]?\d+)?$/iu.test(plain) ? Number(plain) : Number.NaN;
  if (Number.isFinite(value) && value > 0) return { ok: true, value };
  return refused("no figure above nought", "write the figure alone, in the feature's unit, such as 12.5");
}

/** Source ids, parted by commas or semicolons; short forms are read too. */
export function readSources(cell: Cell | undefined, sources: readonly Source[]): ReadCell<readonly string[]> {
  const ids: string[] = [];
  for (const piece of cellText(cell).split(/[,;]/u)) {
    const word = piece.trim();
    if (word === "") continue;
    const source = sources.find(({ id, short }) => isCalled({ id, name: short }, word));
    if (source === undefined) {
      return refused(
        `no source "${word}"`,
        didYouMean(
          word,
          sources.map(({ id }) => id),
        ),
      );
    }
    ids.push(source.id);
  }
  return { ok: true, value: ids };
}

/** A claim in one cell: "1180 ± 3", or "rough: usually, smooth: rarely". Undefined for an empty cell. */
export function readWhole(feature: Feature, cell: Cell | undefined): ReadCell<Said | undefined> {
  const text = cellText(cell);
  if (text === "") return { ok: true, value: undefined };
  return feature.kind === "measurement" && !text.includes(":")
    ? readMeasure(text, feature.unit)
    : readStates(feature, text);
}

/** Figures may carry the feature's own unit and no other. */
function readMeasure(text: string, unit: string): ReadCell<Said> {
  const match = /^([\d.,]+)\s*([a-z"]*)\s*(?:±|\+\/-|\+-)\s*([\d.,]+)\s*([a-z"]*)$/iu.exec(text);
  const other = [match?.[2] ?? "", match?.[4] ?? ""].find(
    (written) => written !== "" && !isUnit(written, unit),
  );
  if (other !== undefined)
    return refused(`the feature is in ${unit}, not in ${other}`, `write the figures in ${unit}`);
  const [mean, spread] = [readFigure(match?.[1]), readFigure(match?.[3])];
  for (const figure of [mean, spread]) if (match !== null && !figure.ok) return figure;
  if (mean.ok && spread.ok && mean.value !== undefined && spread.value !== undefined) {
    return { ok: true, value: { mean: mean.value, spread: spread.value } };
  }
  return refused("no mean with its spread", "write 1180 ± 3, or use the columns mean and spread");
}

function isUnit(written: string, unit: string): boolean {
  return written.toLowerCase() === unit || (unit === "in" && written === '"');
}

function readStates(feature: Feature, text: string): ReadCell<Said> {
  const states = [
    ...(feature.kind === "states" ? feature.states : []),
    { id: notThere, name: feature.none ?? "not there" },
  ];
  const claim: Record<string, string> = {};
  for (const piece of text.split(/[;\n]|,(?!\s*\d+ of \d+)/u)) {
    const [name = "", ...rest] = piece.split(":");
    const state = states.find((one) => isCalled(one, name));
    if (state === undefined) {
      return refused(
        `no state "${name.trim()}" of ${feature.id}`,
        didYouMean(
          name.trim(),
          states.map(({ id }) => id),
        ),
      );
    }
    const said = readFrequency(rest.join(":"));
    if (!said.ok) return said;
    if (said.value === undefined)
      return refused("how often is not said", `write "${state.id}: always", or usually, or 17 of 20`);
    claim[state.id] = said.value;
  }
  return { ok: true, value: claim };
}
