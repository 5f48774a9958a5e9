// What a moulded mark or a weighing says of the states whose material it names, by symbol or by density; and marks told in words, in every way to
// number a month and to say a year. Symbols as in ISO 1043-1, densities of the demo handbook; wordings from memory.
import { describe, expect, test } from "vitest";
import { monthInterval } from "../../../knowledge/calendar/interval.ts";
import { findToldMarks } from "../../../knowledge/language/clock-marks.ts";
import type { DatePhrase } from "../../../knowledge/language/date-phrases.ts";
import { meantBy } from "../../../knowledge/language/mark-findings.ts";
import { findingsOfMaterial } from "../../../knowledge/language/material-findings.ts";
import { demoLexicon } from "../../support/demo-lexicon.ts";
import { findingInWords } from "../../support/reading-in-words.ts";
import { wordings } from "../../support/wordings.ts";

const lexicon = await demoLexicon();
type Material = Parameters<typeof findingsOfMaterial>[1];

/** What the material says of the housing of a mirror: cast alloy (AlSi, 2.6 to 2.8), moulded plastic (ABS, 1.02 to 1.08) or steel (7.8 to 7.9). */
function housing(told: Partial<Material>, text = ""): readonly string[] {
  const part = lexicon.handbook.parts.find(({ id }) => id === "door-mirror");
  if (part === undefined) throw new Error("the demo handbook has no mirror");
  const material: Material = { kind: "material", about: "part", symbols: [], words: "it", ...told };
  return findingsOfMaterial(part, material, text, 0.5).map(
    (each) => `${findingInWords(each)} "${each.words}" ${each.certainty}`,
  );
}
const dense = (from: number, to: number) => ({ densityGramsPerCubicCentimetre: { from, to } });

describe("a material", () => {
  test.each([
    [["ABS"], "moulded-plastic"],
    [["abs"], "moulded-plastic"],
    [["ABS-GF20"], "moulded-plastic"],
    [["ABS(fr)"], "moulded-plastic"],
    [["ABS20"], "moulded-plastic"],
    [["PA66", "ABS"], "moulded-plastic"],
    [["ABS", "AlSi"], "cast-alloy|moulded-plastic"],
    [["PA66", "PA6", "ABS"], "moulded-plastic"],
  ])("of the symbols %s is that of %s", (symbols, states) => {
    expect(housing({ symbols })).toEqual([`door-mirror.housing ${states} "it" 0.5`]);
  });
  test.each([[["PA66"]], [["20ABS"]], [["ABS", "AlSi", "steel"]], [["ABS", "PA66", "PA6", "PC"]], [[]]])(
    "of the symbols %s is that of none, of all or only a long list",
    (symbols) => {
      expect(housing({ symbols })).toEqual([]);
    },
  );
  test.each([
    [2.8, 2.9, "cast-alloy"],
    [2.5, 2.6, "cast-alloy"],
    [1.08, 1.2, "moulded-plastic"],
    [1.0, 2.7, "cast-alloy|moulded-plastic"],
    [7.85, 7.85, "pressed-steel"],
  ])("of a density from %d to %d is that of %s", (from, to, states) => {
    expect(housing(dense(from, to))).toEqual([`door-mirror.housing ${states} "it" 0.5`]);
  });
  test.each([
    [2.81, 2.9],
    [2.5, 2.59],
    [0.9, 8],
  ])("of a density from %d to %d is that of none or of all", (from, to) => {
    expect(housing(dense(from, to))).toEqual([]);
  });
  test("of a symbol does not go by its density, and one of a long list of symbols does", () => {
    expect(housing({ symbols: ["ABS"], ...dense(2.7, 2.7) })).toEqual([
      'door-mirror.housing moulded-plastic "it" 0.5',
    ]);
    expect(housing({ symbols: ["ABS", "PA66", "PA6", "PC"], ...dense(2.7, 2.7) })).toEqual([
      'door-mirror.housing cast-alloy "it" 0.5',
    ]);
  });
  test("whose mark is the very name of a state is that state where it is written", () => {
    const of = (text: string) =>
      housing({ symbols: ["ABS"] }, text).filter((each) => !each.includes("housing"));
    expect(of("> abs <")).toEqual(['door-mirror.material-mark bracketed "it" 0.5']);
    expect(of("abs")).toEqual([]);
  });
});

test("what is said within forty signs behind a told mark, a month or a day, is the month that its speaker takes it for", () => {
  const [mark] = findToldMarks("a 9 with five dots");
  if (mark === undefined) throw new Error("no mark is told");
  const phrase = (start: number, shape: DatePhrase["shape"]): DatePhrase => ({
    start,
    end: start + 8,
    interval: monthInterval(1979, 5),
    shape,
    text: "may 1979",
  });
  const behind = (by: number, shape: DatePhrase["shape"] = "month") =>
    meantBy(mark, [phrase(mark.end + by, shape)]);
  expect([behind(0), behind(40), behind(1, "day")]).toEqual(Array(3).fill(monthInterval(1979, 5)));
  expect([behind(-1), behind(41), behind(1, "year"), meantBy(mark, [])]).toEqual(Array(4).fill(undefined));
});

describe("a mark told in words", () => {
  const told = (text: string): string =>
    findToldMarks(text)
      .map(({ written, start, end }) => `${written} [${text.slice(start, end)}]`)
      .join(" | ");
  const months =
    "january february march april may june july august september october november december".split(" ");
  const counts = "one two three four five six seven eight nine ten eleven twelve".split(" ");
  const ordinals = "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth".split(
    " ",
  );
  test.each(months.map((name, at) => [name, at + 1] as const))(
    "points to %s, the month %i",
    (name, month) => {
      const spoken = [name, name.slice(0, 3), counts[month - 1], ordinals[month - 1], String(month)];
      for (const said of spoken) {
        const text = `arrow at ${said}, centre 80`;
        expect(told(text)).toBe(`arrow at ${month}, centre 80 [${text}]`);
      }
    },
  );
  test("says its year in figures or in words, parted or not", () => {
    const years: Readonly<Record<string, string>> = {
      60: "sixty",
      71: "{seventy one,seventy-one,7|1,7 | 1,7/1,1971,'71}",
      79: "{seventy nine,seventy-nine}",
      80: "{eighty,8|0,1980}",
      85: "{eighty five,8/5}",
      93: "{ninety three,ninety-three}",
    };
    for (const [year, table] of Object.entries(years))
      for (const said of wordings(`${table} in the middle {pointing to,with the arrow at} five`))
        expect(told(said)).toBe(`arrow at 5, centre ${year} [${said}]`);
  });
  test.each([
    ["the third pip is missing, year 80", "arrow at 3, centre 80 [the third pip is missing, year 80]"],
    ["pip 3 is gone, 80", "arrow at 3, centre 80 [pip 3 is gone, 80]"],
    ["80, the missing pip is 3", "arrow at 3, centre 80 [80, the missing pip is 3]"],
    ["dot for 3 has been struck, 80", "arrow at 3, centre 80 [dot for 3 has been struck, 80]"],
    ["pip is missing for march 80", "arrow at 3, centre 80 [pip is missing for march 80]"],
    ["ring with 80 and stud 5 missing", "arrow at 5, centre 80 [ring with 80 and stud 5 missing]"],
    ["dial: stud 5 missing, 80", "arrow at 5, centre 80 [dial: stud 5 missing, 80]"],
    ["stud 5 missing, 80", ""],
    ["ring: fifth one is gone, 80", "arrow at 5, centre 80 [ring: fifth one is gone, 80]"],
    ["one pip is flat, year 80", ""],
    ["arrow at which five, centre 80", ""],
    ["arrow at 13, centre 80", ""],
    ["arrow at 5, centre 80 mm", ""],
    ["arrow at 5, centre 80.5", ""],
    ["arrow at 5, centre 801", ""],
    ["2 dots behind the number 8", "8 with 2 dots after [2 dots behind the number 8]"],
    ["2 dots after 8", "8 with 2 dots after [2 dots after 8]"],
    ["four dots over 8", "four dots before 8 [four dots over 8]"],
    ["8, with 2 dots in front", "2 dots before 8 [8, with 2 dots in front]"],
    ["8 has two dots right", "8 with two dots after [8 has two dots right]"],
    ["8 and two dots", "8 with two dots after [8 and two dots]"],
    ["7 dots before 8", ""],
    ["•• 8", ".. 8 [•• 8]"],
    ["8***", "8... [8***]"],
    ["·8", "·8 [·8]"],
    ["a.8", ""],
    ["..8.5", ""],
    [". 12", ". 12 [. 12]"],
    ["8..", "8.. [8..]"],
    ["8.", ""],
    ["arrow at 5, centre 80, then 8..", "arrow at 5, centre 80 [arrow at 5, centre 80] | 8.. [8..]"],
    ["8.. and the arrow at 5, centre 80", "8.. [8..] | arrow at 5, centre 80 [arrow at 5, centre 80]"],
  ])("%s: %s", (text, expected) => {
    expect(told(text)).toBe(expected);
  });
});
