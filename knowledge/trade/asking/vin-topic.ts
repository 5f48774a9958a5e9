// Questions about vehicle numbers: a whole number, a short one of before 1981, or one place of it.
import type { TradeReading } from "../trade-reading.ts";
import { findVins, maskSerial, readVin } from "../vin.ts";
import { readModelYearCode, readVinBeginning } from "../vin-letters.ts";
import { type TopicReader, type TradeQuestion, topicAnswer } from "./trade-question.ts";

function shortNumberReading(lower: string): readonly TradeReading[] {
  const number =
    /(?:\bvin\b|chassis (?:number|no\.?|plate)|frame (?:number|no\.?))[^a-z0-9]{0,4}(?:is |number |no\.? )?([a-z0-9/-]{4,24})(?![a-z0-9])/.exec(
      lower,
    )?.[1];
  const length = number?.replace(/[/-]/g, "").length ?? 0;
  if (number === undefined || /^\d+(?:st|nd|rd|th)$/.test(number) || !/\d{2}/.test(number) || length === 17)
    return [];
  return [
    {
      reading: `${maskSerial(number.toUpperCase())}: ${length} characters, so the 17-character rules do not apply`,
      why: "before 1981 each maker had its own scheme, often type letters and a serial; not applicable is not invalid",
      basis: "49 CFR 565; ISO 3779 first issued in 1977",
    },
  ];
}

/** "10th character F", "VIN starts with W". */
function placeReadings(question: TradeQuestion): readonly TradeReading[] {
  if (!question.isAsking) return [];
  const code =
    /(?:\b(?:10th|tenth)|position (?:10|ten)|year) (?:\w+ )?(?:of (?:the |a )?vin )?(?:letter |digit |character |code )?(?:is |of |vin letter )?["']?([A-HJ-NPRSTV-Ya-hj-nprstv-y1-9])["']?(?![\w'])/.exec(
      question.text,
    )?.[1] ??
    /\b([A-Z1-9]) in (?:the )?(?:10th|tenth)/.exec(question.text)?.[1] ??
    /\bvin (?:year )?letter ["']?([A-Za-z])["']?(?!\w)/.exec(question.text)?.[1];
  const beginning =
    /\b(?:start(?:s|ing)?|begin(?:s|ning)?) (?:with |in )?(?:an? )?["']?([A-HJ-NPR-Z\d]{1,3})["']?(?!\w)/.exec(
      question.text,
    )?.[1];
  const worldCode = /\b(?:VIN|vin|Vin) ([A-HJ-NPR-Z][A-HJ-NPR-Z\d]{2})\b/.exec(question.text)?.[1];
  const start = beginning ?? worldCode;
  return [
    ...(code === undefined ? [] : readModelYearCode(code)),
    ...(start === undefined ? [] : readVinBeginning(start)),
  ];
}

/** "VIN 1M8GDM9AXKP042788 ok?". The last six characters are hidden in every line. */
export const vinTopic: TopicReader = (question) => {
  const [vin] = findVins(question.text);
  const isAbout =
    /\bvins?\b|chassis|frame n|\bcheck digit\b|\bserial\b|vehicle (?:id|number)|\b(?:10th|tenth) (?:digit|character|letter|position)/.test(
      question.lower,
    );
  if (!question.mayBeAnswered || !(isAbout || (vin !== undefined && question.isAsking))) return undefined;
  const read = vin === undefined ? undefined : readVin(vin);
  const wrong: readonly TradeReading[] =
    vin !== undefined && read === undefined
      ? [
          {
            reading: `${maskSerial(vin)}: holds I, O or Q, which no 17-character number does`,
            why: "read 1 for I, 0 for O or Q and try again",
            basis: "ISO 3779; 49 CFR 565",
          },
        ]
      : [];
  const plain = vin === undefined && question.isAsking ? shortNumberReading(question.lower) : [];
  const places = vin === undefined ? placeReadings(question) : [];
  const head = read?.readings[0];
  const named: readonly TradeReading[] =
    read === undefined || head === undefined
      ? []
      : [{ ...head, reading: `${read.masked}: ${head.reading}` }, ...read.readings.slice(1)];
  return topicAnswer("vehicle number", [...named, ...wrong, ...plain, ...places], {
    cannotSay:
      "A number that passes can still be copied or re-issued, and one that fails in Europe is no fault; what the maker's own positions mean stands in his papers.",
    lookNext:
      "Compare plate, stamping and papers, and look whether plate and rivets are of one age. Show the last six to keepers only.",
  });
};
