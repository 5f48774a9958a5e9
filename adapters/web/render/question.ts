/**
 * The one question of a reply as a form: a button an answer with its drawing, a field with units for a measurement, a field for a date.
 * Plain forms, so that they work without script and with a keyboard; what is pressed goes as a field of its own.
 */
import type { Choice, QuestionBlock } from "../../../bot/index.ts";
import { chat } from "../phrases.ts";
import { html, type Markup } from "./markup.ts";
import type { Controls, Rendering, Units } from "./rendering.ts";

/** With controls a form; without, the words of the question alone. */
export function questionForm(block: QuestionBlock, rendering: Rendering): Markup {
  const { controls, drawings, part } = rendering;
  const drawing = part === null ? undefined : drawings.ofFeature(part, block);
  const picture =
    drawing !== undefined &&
    html`<img class="drawing" src="${drawing.address}" alt="${drawing.alternative}" width="320" height="200">`;
  const text = html`<p class="ask">${block.text}</p>`;
  if (controls === undefined) return html`<div class="question">${text}${picture}</div>`;
  return html`<div class="question" data-once>
${text}
<div class="beside">${picture}<div>
${block.expects === "choice" ? undefined : readingForm(block, controls, rendering.units)}
${answersForm(block, controls, rendering)}
${block.besides.length > 0 && wordsForm(block.besides, controls, "quiet")}
</div></div></div>`;
}

function answersForm(
  block: QuestionBlock,
  controls: Controls,
  { drawings, part }: Rendering,
): Markup | undefined {
  if (block.answers.length === 0) return undefined;
  const buttons = block.answers.map(({ id, label }) => {
    const drawing = part === null ? undefined : drawings.ofState(part, block, id);
    const picture =
      drawing !== undefined && html`<img src="${drawing.address}" alt="" width="160" height="100">`;
    return html`<button type="submit" name="state" value="${id}">${picture}<span>${label}</span></button>`;
  });
  return html`<form method="post" action="${controls.action}" class="answers" aria-label="${chat.answers}">${controls.hidden}<input type="hidden" name="feature" value="${block.feature}">${buttons}</form>`;
}

/** Buttons that say words: what may be done beside answering, or next. */
export function wordsForm(choices: readonly Choice[], controls: Controls, look: "quiet" | "next"): Markup {
  const buttons = choices.map(
    ({ label, say }) => html`<button type="submit" name="words" value="${say}">${label}</button>`,
  );
  return html`<form method="post" action="${controls.action}" class="${look}">${controls.hidden}${buttons}</form>`;
}

function readingForm(block: QuestionBlock, controls: Controls, units: Units): Markup {
  const id = `reading-${block.feature.replaceAll(/[^a-z0-9-]/gu, "-")}`;
  const offered = block.expects === "measurement" ? unitsFor(block.unit, units) : [];
  const isBuildDate = block.feature === "car.built";
  const hint = isBuildDate && html`<span class="hint" id="${id}-hint">${chat.dateHint}</span>`;
  const described = isBuildDate && html` aria-describedby="${id}-hint"`;
  const select =
    offered.length > 0 &&
    html`<label for="${id}-unit" class="unseen">${chat.unit}</label><select id="${id}-unit" name="unit">${offered.map((unit) => html`<option>${unit}</option>`)}</select>`;
  const mode = block.expects === "measurement" ? html` inputmode="text" class="figure"` : html``;
  return html`<form method="post" action="${controls.action}" class="reading">${controls.hidden}<input type="hidden" name="feature" value="${block.feature}">
<label for="${id}">${chat.fields[block.expects]}</label> ${hint}<span class="row"><input id="${id}" type="text" name="reading" maxlength="180" required autocomplete="off"${mode}${described}>${select}<button type="submit">${chat.sendReading}</button></span></form>`;
}

const lengths: Readonly<Record<Units, readonly string[]>> = {
  metric: ["mm", "cm", "in"],
  imperial: ["in", "mm", "cm"],
};
const masses: Readonly<Record<Units, readonly string[]>> = {
  metric: ["g", "kg", "lb", "oz"],
  imperial: ["lb", "oz", "g", "kg"],
};

/** The units of the same kind as the handbook's; its own first for a metric reader, the inch or the pound for an imperial one. */
export function unitsFor(unit: string | undefined, units: Units): readonly string[] {
  if (unit === undefined) return [];
  const all = [lengths, masses].find((kind) => kind.metric.includes(unit))?.[units] ?? [];
  const isOwnFirst = units === "metric" || unit === "in" || unit === "lb" || unit === "oz";
  return isOwnFirst ? [unit, ...all.filter((one) => one !== unit)] : all;
}
