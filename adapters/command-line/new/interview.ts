/** The few questions from which a handbook begins. An answer that cannot be used is asked for again, with the reason. */
import { parseDateText } from "../../../knowledge/index.ts";
import { OutsideError } from "../../errors.ts";
import type { Asker } from "../asker.ts";

export interface Beginning {
  readonly thing: string;
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly perYear: number;
  readonly part: string;
  readonly variants: readonly FirstVariant[];
  readonly feature: { readonly name: string; readonly question: string; readonly check: string };
  readonly source: { readonly citation: string; readonly grade: "A" | "B" | "C" | "D" };
}

export interface FirstVariant {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  /** What is seen of the feature on it. */
  readonly seen: string;
}

export async function interview(asker: Asker): Promise<Beginning> {
  const thing = await asked(asker, "What is it about, in one word (car, machine, caravan …)?", words, "car");
  const name = await asked(asker, "What is the handbook called, the make or the model?", words);
  const from = await asked(asker, `When was the first ${thing} made (1961 or 1961-04)?`, date);
  const to = await asked(asker, `And the last one?`, dateAfter(from));
  const perYear = Number(await asked(asker, `About how many a year?`, count, "100"));
  const part = await asked(asker, "Which part do you begin with (door mirror, window catch …)?", words);
  const first = await version(asker, `The earlier version of the ${part}: what do people call it?`, from);
  const second = await version(asker, `The later version: what do people call it?`, first.to, first.name);
  const feature = await asked(asker, "What tells them apart (material, number of screws …)?", words);
  const question = await asked(
    asker,
    "As a question to an owner?",
    words,
    `What is the ${feature.toLowerCase()}?`,
  );
  const check = await asked(
    asker,
    "How does one look: where, with what light or tool? Nothing that marks the part.",
    sentence,
  );
  const seenFirst = await asked(asker, `What is seen on the ${first.name}?`, words);
  const seenSecond = await asked(asker, `What is seen on the ${second.name}?`, unlike(seenFirst));
  const citation = await asked(asker, "Where do you know it from: who, what, where, when?", sentence);
  const grade = await asked(
    asker,
    "A a record of the time, B seen and measured, C told by somebody who was there, D repeated?",
    oneOf(["A", "B", "C", "D"]),
    "B",
  );
  return {
    thing,
    name,
    from,
    to,
    perYear,
    part,
    variants: [
      { ...first, seen: seenFirst },
      { ...second, seen: seenSecond },
    ],
    feature: { name: feature, question, check },
    source: { citation, grade: grade === "A" || grade === "C" || grade === "D" ? grade : "B" },
  };
}

async function version(
  asker: Asker,
  question: string,
  begins: string,
  other?: string,
): Promise<Omit<FirstVariant, "seen">> {
  const name = await asked(asker, question, other === undefined ? words : unlike(other));
  const from = await asked(asker, `Since when was the ${name} fitted?`, date, begins);
  const to = await asked(asker, `And until when?`, dateAfter(from));
  return { name, from, to };
}

/** What is wrong with an answer; undefined for a good one. */
type Fault = (answer: string) => string | undefined;

async function asked(asker: Asker, question: string, fault: Fault, otherwise?: string): Promise<string> {
  let reason = "";
  for (;;) {
    const hint = otherwise === undefined ? "" : ` [${otherwise}]`;
    const typed = await asker.ask(`${reason}${question}${hint} `);
    if (typed === undefined) throw new OutsideError("new: the answers ended too soon; nothing written");
    const answer = typed === "" && otherwise !== undefined ? otherwise : typed;
    const wrong = answer === "" ? "an answer is needed" : fault(answer);
    if (wrong === undefined) return answer;
    reason = `(${wrong}) `;
  }
}

const words: Fault = (answer) => {
  if (answer.length > 120) return "shorter, at most 120 letters";
  return /[a-z0-9]/iu.test(answer.normalize("NFKD")) ? undefined : "letters or figures are needed";
};
const sentence: Fault = (answer) =>
  answer.split(/\s+/u).length < 3 ? "a few more words, so that another can follow" : undefined;
const count: Fault = (answer) => (/^[1-9]\d{0,6}$/u.test(answer) ? undefined : "a whole number is needed");
const date: Fault = (answer) =>
  parseDateText(answer) === undefined ? "write 1961, 1961-04 or 1961-04-17" : undefined;

function dateAfter(first: string): Fault {
  const from = parseDateText(first)?.from ?? 0;
  return (answer) => {
    const wrong = date(answer);
    if (wrong !== undefined) return wrong;
    return (parseDateText(answer)?.to ?? 0) > from ? undefined : `that is before ${first}`;
  };
}

function unlike(other: string): Fault {
  return (answer) =>
    answer.toLowerCase() === other.toLowerCase() ? "that is the same as the other" : words(answer);
}

function oneOf(choices: readonly string[]): Fault {
  return (answer) => (choices.includes(answer) ? undefined : `one of ${choices.join(", ")} is needed`);
}
