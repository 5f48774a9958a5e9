/** The forms Discord opens over a message: one for an answer in words or figures, with room for more; one to complete a sentence. */
import type { APIModalInteractionResponseCallbackData } from "discord.js";
import type { PressedAnswer, QuestionBlock } from "../../bot/index.ts";
import { fitted } from "./markdown.ts";
import { forms } from "./phrases.ts";

const LONGEST_TITLE = 45;
const LONGEST_PLACEHOLDER = 100;
const LONGEST_TEXT = 4000;
const LONGEST_READING = 200;

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

/** What a filled form says, as one message: the answer to the question, and words. Undefined when nothing was filled in. */
export function saidInForm(
  question: QuestionBlock | undefined,
  values: ReadonlyMap<string, string>,
): { readonly answer?: PressedAnswer; readonly text?: string } | undefined {
  const value = (id: string) => values.get(id)?.trim() ?? "";
  const reading = value("reading");
  const isAnswer = isReadingOf(question) && reading !== "" && reading.length <= LONGEST_READING;
  const words = [isAnswer ? "" : reading, value("more"), value("car")]
    .filter((text) => text !== "")
    .join("\n");
  const answer = isAnswer ? { answer: { feature: question.feature, reading } } : undefined;
  if (answer === undefined && words === "") return undefined;
  return { ...answer, ...(words === "" ? {} : { text: words }) };
}

function isReadingOf(question: QuestionBlock | undefined): question is QuestionBlock {
  return question?.expects === "measurement" || question?.expects === "date";
}
