/** The forms Discord opens over a message: one for an answer in words or figures, with room for more; one to complete a sentence. */
import type { APIModalInteractionResponseCallbackData } from "discord.js";
import type { PressedAnswer, QuestionBlock } from "../../bot/index.ts";
import { fitted } from "./markdown.ts";
import { forms } from "./phrases.ts";

const LONGEST_TITLE = 45;
const LONGEST_PLACEHOLDER = 100;
const LONGEST_TEXT = 4000;

type Field = APIModalInteractionResponseCallbackData["components"][number];

/** A reading, what else can be seen and the car, several at once; nothing of it must be filled in. */
export function questionForm(
  customId: string,
  question: QuestionBlock | undefined,
): APIModalInteractionResponseCallbackData {
  const asksReading = question !== undefined && question.expects !== "choice";
  const unit = question?.unit === undefined ? {} : { placeholder: question.unit };
  return {
    custom_id: customId,
    title: forms.title,
    components: [
      ...(question === undefined ? [] : [display(question.text)]),
      ...(asksReading ? [field("reading", readingLabel(question), false, unit)] : []),
      field("more", forms.more, true),
      field("car", forms.car, false),
    ],
  };
}

function readingLabel({ expects }: QuestionBlock): string {
  if (expects === "measurement") return forms.reading;
  return expects === "date" ? forms.date : forms.answer;
}

/** Asks for what is left open in words such as "decline observation 12 because …". */
export function completionForm(customId: string, title: string): APIModalInteractionResponseCallbackData {
  return {
    custom_id: customId,
    title: fitted(title, LONGEST_TITLE),
    components: [field("rest", forms.complete, true, { required: true })],
  };
}

export function pinForm(customId: string, words: string): APIModalInteractionResponseCallbackData {
  const value = words.trim() === "" ? {} : { value: words.slice(0, LONGEST_TEXT) };
  return {
    custom_id: customId,
    title: forms.pinTitle,
    components: [field("rest", forms.pin, true, { required: true, ...value })],
  };
}

interface FieldOptions {
  readonly placeholder?: string;
  readonly required?: boolean;
  readonly value?: string;
}

function field(id: string, label: string, isLong: boolean, options: FieldOptions = {}): Field {
  const { placeholder, ...others } = options;
  return {
    type: 18,
    label: fitted(label, LONGEST_TITLE),
    component: {
      type: 4,
      custom_id: id,
      style: isLong ? 2 : 1,
      required: false,
      max_length: LONGEST_TEXT,
      ...others,
      ...(placeholder === undefined ? {} : { placeholder: fitted(placeholder, LONGEST_PLACEHOLDER) }),
    },
  };
}

function display(text: string): Field {
  return { type: 10, content: text };
}

/** What a filled form says, in the order it counts: the answer to the question, then words. */
export function saidInForm(
  question: QuestionBlock | undefined,
  values: ReadonlyMap<string, string>,
): readonly ({ readonly answer: PressedAnswer } | { readonly text: string })[] {
  const value = (id: string) => values.get(id)?.trim() ?? "";
  const reading = value("reading");
  const words = [value("more"), value("car")].filter((text) => text !== "").join("\n");
  return [
    ...(reading === "" || question === undefined ? [] : [readingOf(question, reading)]),
    ...(words === "" ? [] : [{ text: words }]),
  ];
}

function readingOf(
  question: QuestionBlock,
  reading: string,
): { readonly answer: PressedAnswer } | { readonly text: string } {
  const isReading = question.expects === "measurement" || question.expects === "date";
  if (!isReading || reading.length > 200) return { text: reading };
  return { answer: { feature: question.feature, reading } };
}
