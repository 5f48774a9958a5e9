/**
 * Controls as rows of Discord's components: up to five answers are buttons, more are a select; what always goes along stands in
 * a row of its own. Labels that do not fit a button go into a select, whose options may be longer.
 */
import type {
  APIActionRowComponent,
  APIComponentInMessageActionRow,
  APIStringSelectComponent,
} from "discord.js";
import type { Control, Controls } from "./controls.ts";
import { customId, type Pressed } from "./custom-id.ts";
import { fitted, plainLine } from "./markdown.ts";
import { labels } from "./phrases.ts";

export type Row = APIActionRowComponent<APIComponentInMessageActionRow>;
type Button = Extract<APIComponentInMessageActionRow, { type: 2 }>;

const LONGEST_LABEL = 80;
const LONGEST_OPTION = 100;
const MOST_OPTIONS = 25;
const MOST_BUTTONS = 5;
const MOST_ROWS = 5;

/** Which case and reply the controls belong to. */
export type Holder = Omit<Pressed, "key">;

/** At most five rows; `pages` is how many pages the text has, `page` the one shown, from 0. */
export function rowsFor(controls: Controls, holder: Holder, page: number, pages: number): readonly Row[] {
  const { question, answers, besides, choices } = controls;
  const paging = pages < 2 ? [] : [row(pageButtons(holder, page, pages))];
  const isOpen = question !== undefined && question.feature !== "part";
  const form = isOpen || question !== undefined ? [formButton(holder)] : [];
  const beside = buttonsOf(besides, holder, answers.length, 2);
  const room = MOST_ROWS - paging.length - (question === undefined ? 0 : 1) - (choices.length > 0 ? 1 : 0);
  const asked = answerRows(answers, holder, room);
  const taken = paging.length + asked.length + (question === undefined ? 0 : 1);
  return [
    ...asked,
    ...(question === undefined ? [] : [row([...beside.slice(0, MOST_BUTTONS - 1), ...form])]),
    ...choiceRows(choices, holder, answers.length + besides.length, MOST_ROWS - taken),
    ...paging,
  ];
}

function answerRows(answers: readonly Control[], holder: Holder, room: number): readonly Row[] {
  if (answers.length === 0) return [];
  const fits = answers.every(({ label }) => plainLine(label).length <= LONGEST_LABEL);
  if (answers.length <= MOST_BUTTONS && fits) return [row(buttonsOf(answers, holder, 0, 1))];
  return selects(answers, holder, 0, labels.chooseAnswer, room);
}

function choiceRows(
  choices: readonly Control[],
  holder: Holder,
  first: number,
  room: number,
): readonly Row[] {
  if (choices.length === 0 || room < 1) return [];
  if (choices.length > MOST_BUTTONS * room) return selects(choices, holder, first, labels.chooseNext, room);
  const buttons = buttonsOf(choices, holder, first, 2);
  return Array.from({ length: Math.ceil(buttons.length / MOST_BUTTONS) }, (_, index) =>
    row(buttons.slice(index * MOST_BUTTONS, (index + 1) * MOST_BUTTONS)),
  );
}

function selects(
  controls: readonly Control[],
  holder: Holder,
  first: number,
  placeholder: string,
  room: number,
): readonly Row[] {
  const count = Math.min(room, Math.ceil(controls.length / MOST_OPTIONS));
  return Array.from({ length: count }, (_, index) => {
    const from = index * MOST_OPTIONS;
    const select: APIStringSelectComponent = {
      type: 3,
      custom_id: customId({ ...holder, key: `s${first + from}` }),
      placeholder,
      options: controls
        .slice(from, from + MOST_OPTIONS)
        .map(({ label }, offset) => option(label, first + from + offset)),
    };
    return { type: 1, components: [select] };
  });
}

/** A label too long for an option goes on in its description, so that nothing is left out of 200 characters. */
function option(text: string, number: number): APIStringSelectComponent["options"][number] {
  const line = plainLine(text);
  if (line.length <= LONGEST_OPTION) return { label: line === "" ? "–" : line, value: String(number) };
  const cut = line.lastIndexOf(" ", LONGEST_OPTION);
  const border = cut > 0 ? cut : LONGEST_OPTION;
  return {
    label: line.slice(0, border),
    value: String(number),
    description: fitted(line.slice(border), LONGEST_OPTION),
  };
}

function buttonsOf(
  controls: readonly Control[],
  holder: Holder,
  first: number,
  style: 1 | 2,
): readonly Button[] {
  return controls.map(({ does, label }, index) => {
    // Whether a form opens must be seen from the button: a form has to be the first answer.
    const key = `${does === "complete" ? "c" : ""}${first + index}`;
    return button(label, { ...holder, key }, style);
  });
}

function button(label: string, pressed: Pressed, style: 1 | 2): Button {
  const shown = fitted(label, LONGEST_LABEL);
  return { type: 2, style, label: shown === "" ? "–" : shown, custom_id: customId(pressed) };
}

function formButton(holder: Holder): Button {
  return button(labels.form, { ...holder, key: "f" }, 2);
}

function pageButtons(holder: Holder, page: number, pages: number): readonly Button[] {
  const back = button(labels.pageBack, { ...holder, key: `p${Math.max(0, page - 1)}` }, 2);
  const on = button(labels.pageOn(Math.min(page + 2, pages), pages), { ...holder, key: `p${page + 1}` }, 2);
  return [...(page > 0 ? [back] : []), ...(page < pages - 1 ? [on] : [])];
}

function row(components: readonly Button[]): Row {
  return { type: 1, components: [...components] };
}
