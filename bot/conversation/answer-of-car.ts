/** A bare answer to a question about the car ("nov 81", "S"), which by itself would mean nothing. */
import {
  type CarFinding,
  type Cars,
  type Lexicon,
  type MessageReading,
  parseDateText,
  type ReadingContext,
  readMessage,
} from "../../knowledge/index.ts";

/** A name as short as "S" is taken only where it was asked for. */
const shortestName = 2;
/** Longer messages say more than an answer and are read as they are. */
const longestAnswer = 60;

/** What the text answers to the open question about the car; empty when it is no such answer. */
export function answerOfCar(
  text: string,
  lexicon: Lexicon,
  context: ReadingContext,
  spoken: MessageReading,
): readonly CarFinding[] {
  const asked = context.askedFeature;
  const part = lexicon.handbook.parts.find((one) => one.id === context.part);
  const isDateAsked = part?.features.some((one) => one.id === asked && one.kind === "date") === true;
  const isElse = spoken.findings.length > 0 || spoken.car.length > 0 || text.length > longestAnswer;
  if (isElse) return [];
  // A bare date that no question asked for ("march 1979") is the car's, and is shown so that it can be corrected.
  const isBareDate = asked !== "car.built" && !isDateAsked && bareDate.test(text);
  if (asked === "car.built" || isBareDate) {
    const strict = parseDateText(text.trim());
    if (strict !== undefined) return [{ about: "built", interval: strict, words: text }];
    return readMessage(`the car was built ${text}`, lexicon, context).car.filter(
      (finding) => finding.about === "built",
    );
  }
  // A trim or a market said alone tells of the car, whatever is asked.
  const isAsked = (aspect: string) => asked === `car.${aspect}`;
  const [first] = aspects
    .filter((aspect) => isAsked(aspect) || text.trim().length > shortestName)
    .toSorted((one, other) => Number(isAsked(other)) - Number(isAsked(one)))
    .flatMap((about): readonly CarFinding[] => {
      const id = named(lexicon.handbook.cars, about, text.replace(ownWord(about), ""));
      return id === undefined ? [] : [{ about, id, words: text }];
    });
  return first === undefined ? [] : [first];
}

const bareDate =
  /^\W*((early|mid|late) )?((jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*,? '?(\d\d)?\d\d|(19|20)\d\d)\W*$/i;

const aspects = ["model", "trim", "market"] as const;

/** "Market: continental": the name of what is told, before it. */
function ownWord(about: (typeof aspects)[number]): RegExp {
  return new RegExp(String.raw`^\W*(?:the )?${about}\b(?: (?:is|was))?\W*`, "iu");
}

/** The one thing that is called so, by its whole name or by a beginning or an end that no other shares. */
function named(cars: Cars, about: (typeof aspects)[number], text: string): string | undefined {
  const said = text
    .toLowerCase()
    .replace(/[^\p{L}\p{N} ]+/gu, " ")
    .trim();
  const meant = cars[`${about}s`].filter(
    (one) => one.id === said || [one.name, ...one.also].some((name) => callsSo(name.toLowerCase(), said)),
  );
  const [only] = meant;
  return meant.length === 1 ? only?.id : undefined;
}

function callsSo(name: string, said: string): boolean {
  return name === said || name.startsWith(`${said} `) || name.endsWith(` ${said}`);
}
