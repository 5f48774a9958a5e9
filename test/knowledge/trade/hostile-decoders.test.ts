// Every decoder is called with any string: none may throw, and time stays bounded by the clip of each.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseDateText } from "../../../knowledge/calendar/date-text.ts";
import { monthInterval } from "../../../knowledge/calendar/interval.ts";
import { readApprovalMark } from "../../../knowledge/trade/approval-mark.ts";
import { readBeltCode, readMirrorClass } from "../../../knowledge/trade/belt-mirror-codes.ts";
import { readHeadFigures, readOldHeadMark } from "../../../knowledge/trade/bolt-head.ts";
import type { DateMarkForm } from "../../../knowledge/trade/date-marks/date-mark-reading.ts";
import { datedRulesFor } from "../../../knowledge/trade/dated-rules.ts";
import { decodeDateMark } from "../../../knowledge/trade/decode-date-mark.ts";
import { findGlazingSymbols, readGlazingItems } from "../../../knowledge/trade/glazing-mark.ts";
import { readSaeLens, readUnLampCode, splitSaeLetters } from "../../../knowledge/trade/lamp-codes.ts";
import { findMaterialMarks } from "../../../knowledge/trade/material-mark.ts";
import { parsePlainNumber, spellFractions } from "../../../knowledge/trade/plain-numbers.ts";
import { processesOfTraces } from "../../../knowledge/trade/process-traces.ts";
import { readRimDesignation } from "../../../knowledge/trade/rim-designation.ts";
import { readSpeedSymbol } from "../../../knowledge/trade/tyre-ratings.ts";
import { readTyreSizes } from "../../../knowledge/trade/tyre-size.ts";
import { findUnit } from "../../../knowledge/trade/units.ts";
import { maskSerial, maskVins, readVin, vinCheckSum } from "../../../knowledge/trade/vin.ts";
import { findWireColour, readTerminal } from "../../../knowledge/trade/wiring-colours.ts";

const ERA = { from: 12 * 1950, to: 12 * 2030 };
const TODAY = monthInterval(2026, 11);
const FORMS: readonly DateMarkForm[] = [
  "tyre",
  "glass-dots",
  "month-year",
  "week-year",
  "year-week",
  "day-of-year",
  "month-letter",
  "quarter",
  "day-month-year",
  "year",
  "clock",
  "dot-grid",
];

const DECODERS: readonly (readonly [string, (text: string) => unknown])[] = [
  ["parseDateText", parseDateText],
  ["decodeDateMark", (text) => decodeDateMark(text, { era: ERA, today: TODAY })],
  ["decodeDateMark by form", (text) => FORMS.map((form) => decodeDateMark(text, { form, era: ERA }))],
  ["readApprovalMark", readApprovalMark],
  ["readBeltCode", readBeltCode],
  ["readMirrorClass", readMirrorClass],
  ["readHeadFigures", readHeadFigures],
  ["readOldHeadMark", readOldHeadMark],
  ["datedRulesFor", datedRulesFor],
  ["findGlazingSymbols", findGlazingSymbols],
  ["readGlazingItems", readGlazingItems],
  ["readSaeLens", readSaeLens],
  ["readUnLampCode", (text) => readUnLampCode(text)],
  ["splitSaeLetters", splitSaeLetters],
  ["findMaterialMarks", findMaterialMarks],
  ["parsePlainNumber", parsePlainNumber],
  ["spellFractions", spellFractions],
  ["processesOfTraces", processesOfTraces],
  ["readRimDesignation", readRimDesignation],
  ["readSpeedSymbol", readSpeedSymbol],
  ["readTyreSizes", readTyreSizes],
  ["findUnit", findUnit],
  ["maskSerial", maskSerial],
  ["maskVins", maskVins],
  ["readVin", readVin],
  ["vinCheckSum", vinCheckSum],
  ["findWireColour", findWireColour],
  ["readTerminal", readTerminal],
];

const anyText = fc.oneof(
  fc.string({ unit: "binary", maxLength: 80 }),
  fc.stringMatching(/^[0-9A-Za-z ./\-+<>()|.•:,x"'%]{0,40}$/),
  fc.stringMatching(/^[0-9]{1,5}[ /.-]?[0-9]{0,4}$/),
);

describe("decoders and any string", () => {
  test.each(DECODERS)("%s never throws", (_name, decode) => {
    fc.assert(
      fc.property(anyText, (text) => {
        expect(() => decode(text)).not.toThrow();
      }),
      { seed: 5, numRuns: 300 },
    );
  });

  test.each(DECODERS)("%s reads a very long text at once", (_name, decode) => {
    const texts = ["9", ".", " ", "A1 ", "PP-", ">PP", "1/", "SAE A"].map((piece) => piece.repeat(20_000));
    const started = performance.now();
    for (const text of texts) decode(text);
    expect(performance.now() - started).toBeLessThan(8000);
  });

  test("every reading of a date mark lies in the era's years and has an end after its start", () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[0-9]{1,4}[ /.-]?[0-9]{0,2}$/), (text) => {
        for (const reading of decodeDateMark(text, { era: ERA })) {
          expect(reading.interval.from).toBeLessThan(reading.interval.to);
          expect(reading.interval.from).toBeLessThan(ERA.to);
          expect(reading.interval.to).toBeGreaterThan(ERA.from);
        }
      }),
      { seed: 6, numRuns: 300 },
    );
  });
});
