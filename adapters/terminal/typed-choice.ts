/**
 * What was typed, against what was on offer: a number or the words of a choice count as pressing it; everything else is
 * words for the bot to read. A number counts only where numbers were shown, so that "17" can answer "how wide is it?".
 */
import type { Choice, PressedAnswer, Reply } from "../../bot/index.ts";

export type Typed = { readonly text: string } | { readonly answer: PressedAnswer };

/** What `line` stands for after `last`, the reply before it; undefined before the first. */
export function typedAgainst(line: string, last: Reply | undefined): Typed {
  const text = line.trim();
  const question = last?.blocks.find((block) => block.kind === "question");
  const numbered = numberedChoices(last);
  const chosen = choiceByNumber(text, numbered) ?? choiceByLabel(text, allChoices(last));
  if (chosen === undefined) return { text };
  const isAnswer = question?.answers.includes(chosen) === true;
  if (question !== undefined && isAnswer) return { answer: { feature: question.feature, state: chosen.id } };
  return { text: chosen.say };
}

/**
 * The choices that are shown with a number, in order: the answers of a question that is answered by choosing, else what may
 * be done next. None where a number is the answer itself: where a measurement or date is asked for, and where "2" may mean "two screws".
 */
export function numberedChoices(reply: Reply | undefined): readonly Choice[] {
  const blocks = reply?.blocks ?? [];
  const question = blocks.find((block) => block.kind === "question");
  if (question !== undefined) {
    return question.expects === "choice" && !areCounted(question.answers) ? question.answers : [];
  }
  return blocks.find((block) => block.kind === "choices")?.choices ?? [];
}

const counts = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

/**
 * Whether two or more of the choices are counts, one of which could be taken for the place of another: "3" where "three screws" stands
 * second. A count beside a mere "none" is no such list.
 */
export function areCounted(choices: readonly Choice[]): boolean {
  const counted = choices.map(({ label }) => countOf(label));
  const isMistakable = counted.some(
    (count, index) => count !== undefined && count <= choices.length && count !== index + 1,
  );
  return isMistakable && counted.filter((count) => count !== undefined).length > 1;
}

/** The count that a label begins with, from 1; undefined when it begins with none. */
function countOf(label: string): number | undefined {
  const first = label.toLowerCase().split(/\W/u)[0] ?? "";
  const count = counts.includes(first) ? counts.indexOf(first) + 1 : Number(first);
  return count >= 1 ? count : undefined;
}

function allChoices(reply: Reply | undefined): readonly Choice[] {
  return (reply?.blocks ?? []).flatMap((block) => {
    if (block.kind === "question") return [...block.answers, ...block.besides];
    return block.kind === "choices" ? block.choices : [];
  });
}

function choiceByNumber(text: string, choices: readonly Choice[]): Choice | undefined {
  return /^[1-9]\d?[.)]?$/u.test(text) ? choices[Number.parseInt(text, 10) - 1] : undefined;
}

function choiceByLabel(text: string, choices: readonly Choice[]): Choice | undefined {
  const words = text.toLowerCase();
  return choices.find((choice) => choice.label.toLowerCase() === words);
}
