import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseDateText } from "../../../knowledge/calendar/date-text.ts";
import { type Interval, monthInterval, monthStart } from "../../../knowledge/calendar/interval.ts";
import { answerTradeQuestion } from "../../../knowledge/trade/answer-trade-question.ts";
import { cautionById } from "../../../knowledge/trade/cautions.ts";
import { readTradeEvidence } from "../../../knowledge/trade/read-trade-evidence.ts";

const TODAY: Interval = monthInterval(2026, 11);
const CONTEXT = { today: TODAY };

const QUESTIONS: readonly (readonly [string, string, string])[] = [
  ["what does >PP-TD20< mean", "material mark", "20 % talc powder"],
  ["what does UP-GF mean", "material mark", "unsaturated polyester"],
  ["tyre says DOT ... 318, how old", "tyre date", "31 July to 6 August 1988"],
  ["how old is a tyre with code 031 and a triangle", "tyre date", "20 to 26 January 1991"],
  ["tyre DOT ABCD 799, how old?", "tyre date", "no date"],
  ["E11 43R-001234 on my glass", "glass mark", "United Kingdom"],
  ["AS2 on my windscreen", "glass mark", "laminated or tempered"],
  ["DOT 318 on the window, what does it mean", "glass mark", "prime maker"],
  ["no DOT on my side glass, is that wrong?", "glass mark", "normal on flat glass"],
  ["what date is ..7 on the windscreen", "glass date", "May 1987"],
  ["5 bolts, 70.5 mm between neighbours, what PCD", "bolt circle", "5 × 120.65"],
  ["PCD 5 stud every other hole 114 mm?", "bolt circle", "5 × 120"],
  ["it weighs 412 g dry and 180 g in water at 18 C, what is it made of", "density", "1.77 g/cm³"],
  ["what plastic: 31 g dry, 2 oz for the sinker, 50 g with the sinker", "density", "density"],
  ["bolt head with three lines", "bolt head", "grade 5"],
  ["what does 8.8 on the bolt head mean", "bolt head", "800/640"],
  ["0.312 inch thread 18 tpi", "thread", "BSW 5/16"],
  ["M8 x 1.25 thread", "thread", "M8"],
  ["what spanner for 13 mm", "spanner", "M8"],
  ["VIN 1M8GDM9AXKP042788 ok?", "vehicle number", "check digit X"],
  ["Is VIN 1M8GDM9A XKP042788 valid?", "vehicle number", "check digit X"],
  ["chassis number AB1234567, is it a valid VIN?", "vehicle number", "do not apply"],
  ["VIN 1M8GDM9AXKPO42788 ok?", "vehicle number", "holds I, O or Q"],
  ["when did high level brake lights become compulsory", "dated rule", "1 September 1985"],
  ["car built 1985-08-31, is a high level brake light required?", "dated rule", "allowed, not required"],
  ["built 1985-09-01: was the high level brake light required?", "dated rule", "1 September 1985: required"],
  ["bars under the letters on the glass, what date?", "glass date", "own key"],
  ["retread tyre DOT 318, how old", "tyre date", "not the casing"],
  ["my tyre size is 165 SR 15, what diameter is that", "tyre size", "651.6 mm"],
  ["What does 195/65 R 15 91 V mean?", "tyre size", "615 kg"],
  ["What is the rolling radius of a 6.40-15?", "tyre size", "680.1 mm"],
  ["what does treadwear 200 on my tyre mean", "tyre grades", "200 percent"],
  ["whats the e1 in a box on my mirror", "approval mark", "EC approval by Germany"],
  ["does 43R date the glass?", "glass mark", "15 February 1981"],
  ["laminated windscreens required since when, 1985?", "glass mark", "1980 specification"],
  ["mark on glass is .8 which month?", "glass date", "June 1978"],
  ["what does the 1 in a ring on the moulding mean", "date mark", "cavity"],
  ["arrow at 7 centre 81 on the mould clock, when?", "date mark", "July 1981"],
  ["1000 cc in cubic inches", "units", "61.0237"],
  ["what is M10x1.5 in tpi?", "thread", "M10"],
  ["what size is 2BA?", "thread", "BA 2BA"],
  ["1/4 BSW thread, what is it", "thread", "BSW 1/4"],
  ["thread 10 mm pitch 1.25", "thread", "M10x1.25"],
  ["what does letter 8G on a bolt head mean", "bolt head", "German before 1968"],
  ["three circles on a bolt, meaning?", "bolt head", "Unified"],
  ["what does 5.5Jx14H2 mean", "rim", "5.5 inches wide"],
  ["what does ET-12 mean?", "rim", "12 mm inboard"],
  ["4 stud, 10 cm across opposite holes, PCD?", "bolt circle", "4 × 100"],
  ["what's the stud pattern when holes are 70.6 mm apart", "bolt circle", "5 × 120"],
  ["what does the reference 17.5 on a headlamp mean", "lamp mark", "17.5"],
  ["no arrow on the headlamp, meaning?", "lamp mark", "keep-right"],
  ["double arrow on the headlamp, meaning?", "lamp mark", "either side"],
  ["headlamp arrow points left seen from the driver's seat, what does that mean", "lamp mark", "keep-left"],
  ["what does R mean on a side lamp", "lamp mark", "R:"],
  ["is DOT on a lens an approval?", "lamp mark", "own statement"],
  ["what is on a belt label?", "belt mark", "1 March 1967"],
  ["which terminal is 30?", "wiring", "battery positive"],
  ["colour of the earth wire?", "wiring", "earth is brown"],
  ["what does the wire colour green/white mean", "wiring", "green is"],
  ["when was R134a introduced", "dated rule", "1991-1994"],
  ["when did UN regulation 16 start", "dated rule", "1 December 1970"],
  ["what is the density of ABS?", "density", "1.02 to 1.08"],
  ["density 1.05, what plastic?", "density", "PUR"],
  ["412 g dry and 20 g under water at 64 F, what plastic", "density", "1.05 g/cm³"],
  ["how can I tell hand lay-up from SMC?", "process", "hot-press SMC"],
  ["what does 3 mm hand laid weigh per square metre?", "area weight", "4.2 to 4.8 kg/m²"],
  ["how heavy is a 2.5 mm SMC panel per m2?", "area weight", "4.5 to 4.9 kg/m²"],
  ["how much smaller is a casting copied in aluminium?", "small-run spread", "1.0 to 1.3 percent"],
  ["what is RIM?", "process", "RIM / RRIM"],
  ["what is 17 3/8 in in mm", "units", "441.32"],
  ["how many mm in 3/8 inch", "units", "9.525 mm"],
  ["what is 5.5 gallons in litres", "units", "20.8198"],
  ["what is -40 C in F", "units", "-40 °F"],
  ["6J x 15 ET30 backspace", "rim", "118.9 mm"],
  ["load index 88", "load index", "560 kg"],
  ["load index 151?", "load index", "0 to 150"],
  ["what is LI 91/88", "load index", "615 kg"],
  ["speed rating V means?", "speed symbol", "240 km/h"],
  ["195/65 R 15 diameter", "tyre size", "634.5 mm"],
  ["does no utqg on the tyre mean anything?", "tyre grades", "AA"],
  ["week 31 of 1981 is when", "date mark", "27 July to 2 August 1981"],
  ["date code 8127, when is that", "date mark", "29 June to 5 July 1981"],
  ["brown wire is what", "wiring", "earth"],
  ["what does terminal 15 mean", "wiring", "ignition"],
  ["what does E4 mean", "approval mark", "Netherlands"],
  ["SAE AIST 70 on the lens, meaning?", "lamp mark", "1970"],
  ["arrow to the right on the headlamp, meaning?", "lamp mark", "keep-left"],
  ["Ar4m on my belt label, what does it mean", "belt mark", "three-point"],
  ["class III mirror what is that", "mirror mark", "most cars"],
  ["what does JWL on my wheel mean", "wheel marks", "own statement"],
  ["rough inside, mat strands, ground edge: how was it made?", "process", "hand lay-up"],
  ["is it safe to sand old paint?", "safety", "lead"],
  ["when was cellulose used?", "paint", "1924"],
  ["what counts as provenance?", "provenance", "build record"],
  ["how much does a GRP copy shrink?", "small-run spread", "0.2 to 0.5"],
];

// Messages in the middle of an identification, or questions only a handbook can answer.
const NOT_TRADE: readonly string[] = [
  "the glass is marked week 31",
  "car was finished 2 november 1981, the glass is marked week 31 81",
  "it has >ABS< on the back",
  "is it genuine if it has >ABS< on the back?",
  "rough inside, ribs, ejector pins",
  "which spoiler is this?",
  "got a pair of mirrors for my Shrike at a swap meet, guy swears first type. alloy housing, two screws. legit?",
  "its the moulded housing but it has the milled groove",
  "17 3/8 in wide",
  "how much is it worth?",
  "what should my car have?",
  "is the brown one right?",
  "when was my car built?",
  "what is the width in mm?",
  "my vin is 1M8GDM9AXKP042788",
  "what does the inside look like on early ones?",
  "I think the headlamp has HCR on it",
  "three lines on the bracket",
  "tyres are 195/65 R 15",
  "wheels are 6J x 15 ET30",
  "Is the glass marked week 31 or 32?",
  "when did the second type come in?",
  "what size are the wheels?",
  "M8 bolts",
  "43R",
  "ET30",
  "5 holes",
  "how heavy should it be? mine is 3.2 kg dry",
  "what are the injection moulded ones like?",
  "is mine hand laid or SMC?",
  "which brackets are aluminium?",
  "how do I tell mine from the later one?",
  "the seller sent a photo of the dial, what now?",
  "two dots and then a 7",
  "can you tell the year from the rim?",
  "what do you need to know?",
  "it weighs 412 g dry and 180 g in water",
  "1.4 kg in the box, 2 m of cable",
  "",
  "?",
];

describe("trade questions in words", () => {
  test.each(QUESTIONS)("%s", (question, topic, words) => {
    const answer = answerTradeQuestion(question, CONTEXT);
    expect(answer?.topic).toBe(topic);
    expect(answer?.readings.map((reading) => reading.reading).join("\n")).toContain(words);
  });

  test.each(QUESTIONS)(
    "%s: every reading says why and on whose word, and the answer what it cannot say",
    (question) => {
      const answer = answerTradeQuestion(question, CONTEXT);
      for (const reading of answer?.readings ?? []) {
        expect(reading.why).not.toBe("");
        expect(reading.basis).not.toBe("");
      }
      expect(answer?.cannotSay).not.toBe("");
      expect(answer?.lookNext).not.toBe("");
      for (const id of answer?.cautions ?? []) expect(cautionById(id)).toBeDefined();
    },
  );

  test.each(NOT_TRADE)("%j is left to the identification", (message) => {
    expect(answerTradeQuestion(message, CONTEXT)).toBeUndefined();
  });

  test("a vehicle number never comes back whole", () => {
    const answer = answerTradeQuestion("VIN 1M8GDM9AXKP042788 and 1M8 GDM9AX KP042788 ok?", CONTEXT);
    expect(JSON.stringify(answer)).not.toContain("042788");
    expect(JSON.stringify(answer)).toContain("1M8GDM9AXKP••••••");
  });

  test("the brown trap is said before anybody trusts a colour", () => {
    expect(answerTradeQuestion("brown wire is what", CONTEXT)?.cannotSay).toContain(
      "where the loom was made",
    );
    expect(answerTradeQuestion("brown wire is what", CONTEXT)?.cautions).toEqual(["battery"]);
  });

  test("the era of the case closes the decade of a glass mark but not of a tyre", () => {
    const context = { today: TODAY, era: { from: monthStart(1976, 1), to: monthStart(1986, 1) } };
    const glass = answerTradeQuestion("what date is ..7 on the windscreen", context);
    expect(glass?.readings.map((reading) => reading.reading)).toEqual(["February 1977", "May 1977"]);
    const tyre = answerTradeQuestion("tyre says DOT ... 318, how old", context);
    expect(tyre?.readings[0]?.reading).toContain("1998");
  });

  test("a question in words is asked, a bare or plainly stated mark is not", () => {
    const isAsked = (text: string) => answerTradeQuestion(text, CONTEXT)?.isAsked;
    expect(isAsked("tyre says DOT ... 318, how old")).toBe(true);
    expect(isAsked("is 5x120 the same as 5x120.65")).toBe(true);
    expect(isAsked("bolt head has three lines")).toBe(false);
    expect(isAsked("tyre ends 0820")).toBe(false);
    expect(isAsked("load index 88")).toBe(false);
  });

  test("the same question gives the same bytes", () => {
    for (const [question] of QUESTIONS) {
      expect(JSON.stringify(answerTradeQuestion(question, CONTEXT))).toBe(
        JSON.stringify(answerTradeQuestion(question, CONTEXT)),
      );
    }
  });
});

describe("evidence in any message", () => {
  test("a material mark speaks of the plastic and of a seldom-before", () => {
    const [material, begins] = readTradeEvidence("it has >PP-TD20< inside", CONTEXT);
    expect(material).toMatchObject({
      kind: "material",
      about: "part",
      symbols: ["PP-TD20", "PP"],
      densityGramsPerCubicCentimetre: { from: 1.03, to: 1.06 },
    });
    expect(begins).toMatchObject({ kind: "not-before", date: parseDateText("1987-12-15"), isFirm: false });
  });

  test("a weighing speaks of every material it fits", () => {
    const [evidence] = readTradeEvidence("412 g dry, 20 g in water", CONTEXT);
    expect(evidence).toMatchObject({ kind: "material", symbols: expect.arrayContaining(["ABS", "PUR"]) });
  });

  test.each([
    ["windscreen E11 43R-001234 etched", "glass", "1981-02-15"],
    ["E12 in a circle on the lamp", "lamp", "1971-05-11"],
    ["the lens says SAE AIST 70", "lamp", "1970"],
    ["it carries a recycling triangle with a 2", "part", "1988"],
    ["wheel stamped JWL", "wheel", "1972"],
    ["vin 1M8GDM9AXKP042788", "car", "1988"],
    ["belt mark E4 16R-041234", "belt", "1970-12-01"],
    ["mirror stamped E9 46R-001234", "mirror", "1981-09-01"],
    ["tyre mark E4 30R-021234", "tyre", "1975-04-01"],
    ["moulded mark E20 in a circle", "part", "1979-03-13"],
    ["tyre grades say traction AA", "tyre", "1998-03-09"],
  ])("%s: about the %s, not before %s", (message, about, date) => {
    expect(readTradeEvidence(message, CONTEXT)).toContainEqual(
      expect.objectContaining({ kind: "not-before", about, date: parseDateText(date) }),
    );
  });

  test.each([
    ["tyre DOT XXXX 318", "tyre", 3],
    ["glass has ..7 in the corner", "glass", 14],
  ])("%s: a date mark of the %s with %d readings, weights summing to one", (message, about, count) => {
    const [evidence] = readTradeEvidence(message, CONTEXT);
    expect(evidence).toMatchObject({ kind: "date-mark", about });
    const weights = evidence?.kind === "date-mark" ? evidence.readings.map((reading) => reading.weight) : [];
    expect(weights).toHaveLength(count);
    expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
  });

  test.each([
    "no >ABS< mark",
    "without any >ABS< on it",
    "no JWL on the wheel",
    "E10 petrol",
    "the glass is marked week 31 81",
    "DOT 318 on the window",
    "it is 17 inches wide",
    "vin SA9GDM9A1KP042788",
    "",
  ])("%j gives none", (message) => {
    expect(readTradeEvidence(message, CONTEXT)).toEqual([]);
  });
});

describe("hostile messages", () => {
  const pieces = fc.constantFrom(
    "DOT",
    ">",
    "<",
    "PP",
    "-",
    "(",
    ")",
    "+",
    "E1",
    "43R",
    "what",
    "?",
    "mean",
    "tyre",
    "glass",
    "...",
    "7",
    "318",
    "1M8GDM9AX",
    " ",
    "  ",
    "in",
    "mm",
    "3/8",
    "½",
    "R",
    "AS2",
    "SAE",
    "x",
    "J",
    "ET",
    "week",
    "\u0130",
    "ß",
    "\ud800",
    "💥",
    "VIN",
    "pcd",
    "bolts",
    "dry",
    "in water",
    "g",
    "lamp",
    "belt",
    "no",
    "arrow at",
    "[",
    "\\",
    "*",
    "NaN",
    "1e9",
  );

  test("no message of trade scraps makes a reader throw, and each is answered at once", () => {
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 60 }), (parts) => {
        const message = parts.join(" ");
        expect(() => answerTradeQuestion(message, CONTEXT)).not.toThrow();
        expect(() => readTradeEvidence(parts.join(""), CONTEXT)).not.toThrow();
      }),
      { seed: 42, numRuns: 400 },
    );
  });

  test("no string at all makes a reader throw", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 300 }), (message) => {
        expect(() => answerTradeQuestion(message, CONTEXT)).not.toThrow();
        expect(() => readTradeEvidence(message, CONTEXT)).not.toThrow();
      }),
      { seed: 43, numRuns: 300 },
    );
  });

  test.each([
    ["spaces", " ".repeat(50_000)],
    ["dots", `what glass ${".".repeat(50_000)}7`],
    ["figures", `what tyre DOT ${"318 ".repeat(12_000)}`],
    ["fractions", `what is ${"1/".repeat(25_000)}2 in in mm`],
    ["brackets", `what is ${">PP-(".repeat(10_000)}`],
    ["letters", `SAE ${"PC2".repeat(16_000)} what`],
    ["short words", `what vin ${"1A 2 B3 ".repeat(6_000)}`],
    ["roman", `43R ${"VI-".repeat(16_000)}?`],
  ])(
    "fifty thousand %s are read at once: what grows with the square would take minutes",
    (_name, message) => {
      const started = performance.now();
      answerTradeQuestion(message, CONTEXT);
      readTradeEvidence(message, CONTEXT);
      expect(performance.now() - started).toBeLessThan(3000);
    },
  );
});
