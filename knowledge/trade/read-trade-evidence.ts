// What the marks in any message, question or not, let a case conclude: the plastic or the density, a day before
// which the mark cannot exist, the readings of a date mark that plain date words do not cover (tyre numbers, dots
// on glass). "Week 31 of 1981" in words is left to the reading of messages, so that nothing counts twice.
import { formatInterval, parseDateText } from "../calendar/date-text.ts";
import { type Interval, monthStart } from "../calendar/interval.ts";
import { type ApprovalMark, readApprovalMark } from "./approval-mark.ts";
import { spotGlassDots, spotTyreDate } from "./asking/date-topics.ts";
import { readWeighing } from "./asking/material-topics.ts";
import {
  isDeniedAt,
  type TradeContext,
  type TradeQuestion,
  toTradeQuestion,
} from "./asking/trade-question.ts";
import { datedRulesFor } from "./dated-rules.ts";
import { dateMarkEvidence, decodeDateMark } from "./decode-date-mark.ts";
import { readSaeLens } from "./lamp-codes.ts";
import { materialsOfDensity } from "./material-candidates.ts";
import { findMaterialMarks, MATERIAL_MARK_BEGINS } from "./material-mark.ts";
import type { TradeEvidence, TradeSubject } from "./trade-reading.ts";
import { findVins, maskVins, readVin } from "./vin.ts";

type EvidenceReader = (question: TradeQuestion) => readonly TradeEvidence[];

const materialMarks: EvidenceReader = (question) =>
  findMaterialMarks(question.text).flatMap((mark): readonly TradeEvidence[] => {
    const at = question.text.toUpperCase().indexOf(`>${mark.code.toUpperCase()}`);
    if (isDeniedAt(question.lower, Math.max(0, at)) || !mark.isFullyRead) return [];
    const density = mark.density === undefined ? {} : { densityGramsPerCubicCentimetre: mark.density };
    const begins: TradeEvidence = {
      kind: "not-before",
      about: "part",
      date: MATERIAL_MARK_BEGINS,
      isFirm: false,
      words: `a mark like >${mark.code}< is seldom older than December 1987`,
    };
    return [
      { kind: "material", about: "part", symbols: mark.symbols, ...density, words: mark.reading },
      begins,
    ];
  });

const weighings: EvidenceReader = (question) => {
  const measured = readWeighing(question.lower);
  if (measured === undefined) return [];
  const symbols = materialsOfDensity(measured.band).map((candidate) => candidate.symbol);
  const words = `apparent density ${measured.density.toFixed(2)} g/cm³${symbols.length === 0 ? "" : `, which fits ${symbols.slice(0, 5).join(", ")}`}`;
  return [{ kind: "material", about: "part", symbols, densityGramsPerCubicCentimetre: measured.band, words }];
};

const GLASS_RULES = new Set([43]);
const LAMP_RULES = new Set([
  1, 2, 3, 4, 5, 6, 7, 8, 19, 20, 23, 31, 37, 38, 50, 77, 87, 91, 98, 99, 112, 113, 119, 123, 148, 149,
]);

function subjectOf(approval: ApprovalMark, lower: string): TradeSubject {
  const rule = approval.regulationNumber ?? 0;
  if (GLASS_RULES.has(rule) || /\bglass\b|windscreen|windshield/.test(lower)) return "glass";
  if (LAMP_RULES.has(rule) || /\blamp|\blens|headl|indicator/.test(lower)) return "lamp";
  if (rule === 16 || /\bbelt/.test(lower)) return "belt";
  if (rule === 46 || /mirror/.test(lower)) return "mirror";
  return rule === 30 || rule === 54 || /\bt[yi]re/.test(lower) ? "tyre" : "part";
}

/** Whether the regulation's day, told from memory, is what sets the date of an approval. */
function isFromMemory(approval: ApprovalMark): boolean {
  const rule = approval.regulation;
  const since = rule === undefined ? undefined : parseDateText(rule.inForce);
  const sets = since !== undefined && since.from === approval.notBefore?.from;
  return sets ? rule?.basis !== "standard" : approval.authority?.dateBasis !== "standard";
}

const approvals: EvidenceReader = (question) => {
  const approval = readApprovalMark(question.text);
  if (approval?.notBefore === undefined) return [];
  const isMark =
    approval.regulation !== undefined ||
    /\bmark|circle|approv|homolog|stamp|embossed|mou?lded|etched/.test(question.lower);
  const isCapital = /^\(?E/.test(approval.written) || approval.regulation !== undefined;
  const at = question.text.indexOf(approval.written.split(" ")[0] ?? "");
  if (!isMark || !isCapital || isDeniedAt(question.lower, Math.max(0, at))) return [];
  const words = `an approval ${approval.written} cannot be older than ${formatInterval(approval.notBefore)}${isFromMemory(approval) ? " (the day is from memory)" : ""}`;
  return [
    {
      kind: "not-before",
      about: subjectOf(approval, question.lower),
      date: approval.notBefore,
      isFirm: true,
      words,
    },
  ];
};

const tyreDates: EvidenceReader = (question) => {
  const spotted = spotTyreDate(question.text);
  if (spotted === undefined) return [];
  const { today } = question.context;
  const era: Interval = { from: monthStart(1971, 1), to: today.to };
  const evidence = dateMarkEvidence(
    decodeDateMark(spotted.mark, { form: "tyre", era, today }),
    "tyre",
    `the tyre code ${spotted.mark.replace(/^DOT /, "")}`,
  );
  return evidence === undefined ? [] : [evidence];
};

const glassDates: EvidenceReader = (question) => {
  const spotted = /glass|windscreen|windshield|window|pane|quarter ?light/.test(question.lower)
    ? spotGlassDots(question.text)
    : undefined;
  if (spotted === undefined) return [];
  const { today, era } = question.context;
  const years = era ?? { from: monthStart(1950, 1), to: today.to };
  const evidence = dateMarkEvidence(
    decodeDateMark(spotted.mark, { form: "glass-dots", era: years, today }),
    "glass",
    `the glass mark ${spotted.mark.trim()}`,
  );
  return evidence === undefined ? [] : [evidence];
};

const lampYears: EvidenceReader = (question) => {
  const lens = readSaeLens(question.text);
  if (lens?.notBefore === undefined) return [];
  const words = `the lens names the SAE handbook of ${formatInterval(lens.notBefore)} and is of about that year or later`;
  return [{ kind: "not-before", about: "lamp", date: lens.notBefore, isFirm: false, words }];
};

const vehicleNumbers: EvidenceReader = (question) =>
  findVins(question.text).flatMap((vin) => {
    const read = readVin(vin);
    if (read?.notBefore === undefined) return [];
    const words = `model year ${read.modelYears.join(" or ")} by the number ${read.masked}; building may begin the January before`;
    return [{ kind: "not-before", about: "car", date: read.notBefore, isFirm: true, words }];
  });

const SIGNS: readonly (readonly [RegExp, TradeSubject])[] = [
  [/recycl\w* (?:triangle|symbol)|triangle with (?:a )?(?:number|figure)|numbered triangle/, "part"],
  [/\bjwl\b/, "wheel"],
  [/traction (?:grade )?aa\b/, "tyre"],
  [/\bce mark\b/, "part"],
];

const signs: EvidenceReader = (question) =>
  question.isAsking && !question.isPlainMark
    ? []
    : SIGNS.flatMap(([pattern, about]) => {
        const match = pattern.exec(question.lower);
        if (match === null || isDeniedAt(question.lower, match.index)) return [];
        return datedRulesFor(match[0]).flatMap((rule): readonly TradeEvidence[] =>
          rule.from === undefined
            ? []
            : [
                {
                  kind: "not-before",
                  about,
                  date: rule.from,
                  isFirm: rule.requirement.use.startsWith("not before"),
                  words: rule.reading,
                },
              ],
        );
      });

const READERS: readonly EvidenceReader[] = [
  materialMarks,
  weighings,
  approvals,
  tyreDates,
  glassDates,
  lampYears,
  vehicleNumbers,
  signs,
];

/**
 * The evidence in any message, in the order of the readers above; empty when it carries no trade mark. A mark the
 * member denies ("no >ABS< mark") gives none. Vehicle numbers are masked in every word.
 */
export function readTradeEvidence(text: string, context: TradeContext): readonly TradeEvidence[] {
  const question = toTradeQuestion(text, context);
  return READERS.flatMap((read) => read(question)).map((evidence) => ({
    ...evidence,
    words: maskVins(evidence.words),
  }));
}
