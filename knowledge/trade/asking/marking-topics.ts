// Questions about marks of approval and specification: glass, lamps, belts, mirrors, E numbers.
import { type ApprovalMark, readApprovalMark, readAuthoritiesNamed } from "../approval-mark.ts";
import { readBeltCode, readMirrorClass, US_BELT_REMARK } from "../belt-mirror-codes.ts";
import {
  findGlazingSymbols,
  readGlassDot,
  readGlazingItems,
  readGlazingSymbol,
  UK_1985_REMARK,
} from "../glazing-mark.ts";
import {
  LAMP_DOT_REMARK,
  type LampPlace,
  readHeadlampArrow,
  readReferenceNumber,
  readSaeLampCode,
  readSaeLens,
  readUnLampCode,
} from "../lamp-codes.ts";
import { UN_LAMP_CODES } from "../tables/lamp-codes-un.ts";
import type { TradeReading } from "../trade-reading.ts";
import { type TopicReader, type TradeQuestion, topicAnswer } from "./trade-question.ts";

const GLASS = /\bglass\b|windscreen|windshield|\bwindows?\b|\bpanes?\b|\bscreen\b|quarter ?light/;
const LAMP = /\blamps?\b|\w*lights?\b|\blens(?:es)?\b|headl\w+|indicators?\b|reflectors?\b|repeaters?\b/;
const RULE_DATES =
  "A mark dates its rule or the type's approval, never the car; almost nothing gives a not-after, for old stock and old tooling live long.";

/** The approval on a pane. A lone "43R" is an answer to somebody's question more often than a question. */
function approvalOnGlass(question: TradeQuestion): ApprovalMark | undefined {
  const isGlass = GLASS.test(question.lower);
  const found = isGlass || /\b43 ?r/.test(question.lower) ? readApprovalMark(question.text) : undefined;
  return isGlass || question.isAsking || found?.authority !== undefined ? found : undefined;
}

/** DOT, its absence, and the UK rule of 1985: read only where the message speaks of glass. */
function rulesOnGlass(question: TradeQuestion): readonly TradeReading[] {
  const hasDot = /\bDOT ?\d/.test(question.text);
  const lacksDot = /\bno dot\b|without (?:a )?dot\b|missing dot/.test(question.lower);
  const isUkRule = /1985|laminated (?:screen|windscreen)s? (?:compulsory|required|law)/.test(question.lower);
  return [...(hasDot || lacksDot ? [readGlassDot(!lacksDot)] : []), ...(isUkRule ? [UK_1985_REMARK] : [])];
}

/** "AS2 on my windscreen", "E11 43R-001234 on my glass", "DOT 318 on the window". */
export const glassMarkTopic: TopicReader = (question) => {
  if (!question.mayBeAnswered) return undefined;
  const isGlass = GLASS.test(question.lower);
  const approval = approvalOnGlass(question);
  const isPane = isGlass || approval?.regulationNumber === 43;
  const symbols = isPane ? findGlazingSymbols(question.text).flatMap(readGlazingSymbol) : [];
  const rules = isGlass && question.isAsking ? rulesOnGlass(question) : [];
  const items = readGlazingItems(question.text);
  return topicAnswer("glass mark", [...items, ...(approval?.readings ?? []), ...symbols, ...rules], {
    cannotSay: RULE_DATES,
    lookNext:
      "Read the rest of the mark in this order: maker, roman numeral, DOT number, model, figure and dots; and do it on every pane.",
    cautions: ["lamp-law"],
  });
};

/** "what is E11", "e1 in a rectangle", "what does 7R mean on my lamp". */
export const approvalTopic: TopicReader = (question) => {
  const hasCue =
    /approval|\bcircle\b|rectang|in a (?:box|square)|\bmarks?\b|homologat|\bstand|\bmean|\bsame\b|\bvs\b|differ|\bcountry\b|\b\d{1,3} ?r\b|\b\d{1,3}r-/.test(
      question.lower,
    );
  const isShort = question.lower.split(" ").length <= 6;
  if (
    !question.mayBeAnswered ||
    !(hasCue || isShort) ||
    /petrol|fuel|gasoline|e10 |class/.test(question.lower)
  )
    return undefined;
  const spoken = question.text
    .replace(/\be[- ]?mark (?:number |no\.? ?)?(\d{1,2})\b/i, "E$1")
    .replace(/\bnumber (\d{1,2}) (?:in|on) (?:the |an )?e\b/i, "E$1 ");
  const approval = readApprovalMark(spoken);
  const asksNumber = question.isAsking && /\be[- ]?(?:numbers?|marks?|codes?)\b/.test(question.lower);
  const named = asksNumber && approval === undefined ? readAuthoritiesNamed(question.lower) : [];
  const isBareSmall = approval !== undefined && /^e/.test(approval.written) && !hasCue;
  const isAnswer = approval?.authority === undefined && !question.isAsking;
  if (named.length === 0 && (approval === undefined || isBareSmall || isAnswer)) return undefined;
  return topicAnswer("approval mark", approval?.readings ?? named, {
    cannotSay: `The country approved the type; where and when the part was made stands elsewhere. ${RULE_DATES}`,
    lookNext: "Read the figures beside it: the first two are the series of amendments the type met.",
    cautions: ["lamp-law"],
  });
};

function placeOf(lower: string): LampPlace | undefined {
  if (/headl|front|fog lamp at the front|spot/.test(lower)) return "front";
  if (/\brear\b|\btail\b|\bback\b|\bstop\b|brake/.test(lower)) return "rear";
  return /\bside\b|repeater/.test(lower) ? "side" : undefined;
}

/** UN codes in a text: groups of two signs or more, single signs only when the words set them apart. */
function unCodesIn(text: string): readonly string[] {
  const codes = [...new Set(UN_LAMP_CODES.map((row) => row.code))].filter((code) =>
    /^[A-Z0-9/]{1,5}[ab]?$/.test(code),
  );
  const tokens = new Set(text.match(/[A-Z0-9][A-Za-z0-9/]{0,5}/g) ?? []);
  const apart = new Set(
    [
      ...text.matchAll(
        /(?:letters?|marked|code|symbol|mark|does|["'“‘]) ?["'“‘]?([A-Z0-9][ab]?)(?![A-Za-z0-9])|^([A-Z0-9][ab]?) on /g,
      ),
    ].map((match) => match[1] ?? match[2]),
  );
  return codes.filter((code) => (code.length >= 2 ? tokens.has(code) : apart.has(code)));
}

function arrowReadings(lower: string) {
  if (!/\barrows?\b/.test(lower)) return [];
  const seenFrom = /from (?:behind|the (?:back|driver|inside|seat))/.test(lower) ? "behind" : "front";
  if (/\bno arrow\b|without (?:an )?arrow/.test(lower)) return [readHeadlampArrow("none", seenFrom)];
  if (/both|double|two[- ]headed|two[- ]way/.test(lower)) return [readHeadlampArrow("both", seenFrom)];
  if (/\bright\b/.test(lower)) return [readHeadlampArrow("right", seenFrom)];
  return /\bleft\b/.test(lower) ? [readHeadlampArrow("left", seenFrom)] : [];
}

/** "HCR on my headlamp", "SAE AIST 70", "arrow to the right on the headlamp". */
export const lampTopic: TopicReader = (question) => {
  if (!question.mayBeAnswered) return undefined;
  const lens = readSaeLens(question.text);
  const isLamp = LAMP.test(question.lower);
  if (lens === undefined && !isLamp) return undefined;
  const place = placeOf(question.lower);
  const codes = isLamp ? unCodesIn(question.text).flatMap((code) => readUnLampCode(code, place)) : [];
  const reference = readReferenceNumber(
    /(?:reference|number|figure|what does|meaning of) (\d{1,2}(?:\.5)?)\b/.exec(question.lower)?.[1] ?? "",
  );
  const arrows = /headl|dip|beam/.test(question.lower) ? arrowReadings(question.lower) : [];
  const saeCode = /\bdoes ([A-Z][A-Z0-9]{1,3}) (?:mean|stand|on)\b/.exec(question.text)?.[1] ?? "";
  const sae = isLamp && codes.length === 0 ? readSaeLampCode(saeCode) : [];
  const dot = isLamp && question.isAsking && /\bDOT\b/.test(question.text) ? [LAMP_DOT_REMARK] : [];
  const readings = [
    ...(lens?.readings ?? []),
    ...dot,
    ...codes,
    ...sae,
    ...(reference === undefined ? [] : [reference]),
    ...arrows,
  ];
  return topicAnswer("lamp mark", readings, {
    cannotSay: `Letters are read per lamp and changed their meaning with time. DOT on a lens is the maker's statement; no approval exists. ${RULE_DATES}`,
    lookNext:
      "Read what stands in the circle and the figures beside it, and say whether the lamp is at the front or the rear.",
    cautions: ["lamp-law", "battery"],
  });
};

/** "Ar4m on my belt label", "class III mirror". */
export const beltMirrorTopic: TopicReader = (question) => {
  if (!question.mayBeAnswered) return undefined;
  const belt = /belts?\b|^what(?:'s| is|s) z?[abs]r[1-4]/.test(question.lower)
    ? /(?<![\w-])(Z?[ABS]r[1-4]?[Nmept]{0,5}|[ABS](?=,? (?:on|mean)|$))(?![\w-])/.exec(question.text)?.[1]
    : undefined;
  const mirror = /mirror/.test(question.lower)
    ? /\bclass (VII|VI|IV|V|III|II|I)\b|\b(VII|VI|IV|III|II)\b/.exec(question.text)
    : null;
  const beltReadings = belt === undefined ? [] : (readBeltCode(belt) ?? []);
  const mirrorReading = mirror === null ? undefined : readMirrorClass(mirror[1] ?? mirror[2] ?? "");
  const label =
    /\bbelt\b/.test(question.lower) && /label/.test(question.lower) && question.isAsking
      ? [US_BELT_REMARK]
      : [];
  const isBelt = beltReadings.length > 0 || label.length > 0;
  return topicAnswer(
    isBelt ? "belt mark" : "mirror mark",
    [...beltReadings, ...label, ...(mirrorReading === undefined ? [] : [mirrorReading])],
    {
      cannotSay: RULE_DATES,
      lookNext: "Read the E number beside it and the year on the label.",
      cautions: isBelt ? ["belt"] : [],
    },
  );
};
