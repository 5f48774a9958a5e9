import { describe, expect, test } from "vitest";
import { reviewRules } from "../../../knowledge/review/remark.ts";
import { reviewHandbook } from "../../../knowledge/review/review-handbook.ts";
import { carefulFiles, carefulHandbook } from "../../support/careful-handbook.ts";
import { minimalFiles } from "../../support/minimal-handbook.ts";
import { carelessHandbooks } from "./careless-handbooks.ts";

describe("a careful handbook", () => {
  test("gets no remark", () => {
    expect(reviewHandbook(carefulFiles()).remarks).toEqual([]);
  });

  test("gets the same remarks in whatever order its files come", () => {
    const spoilt = { "cars.yaml": (carefulHandbook["cars.yaml"] ?? "").replace("  1977: 70\n", "") };
    expect(reviewHandbook(carefulFiles(spoilt).toReversed()).remarks).toEqual(
      reviewHandbook(carefulFiles(spoilt)).remarks,
    );
  });
});

describe("a careless handbook is told of it, at the line that has to be mended:", () => {
  test.each(carelessHandbooks)(
    "$slip",
    ({ file, from, to, code, severity, line, at, says, besides = [] }) => {
      const before = carefulHandbook[file] ?? "";
      expect(before).toContain(from);
      const changed = before.replace(from, () => to);
      const text = besides.reduce((spoilt, [old, put]) => spoilt.replace(old, () => put), changed);
      const { remarks } = reviewHandbook(carefulFiles({ [file]: text }));
      expect(remarks.map((remark) => `${remark.code} ${remark.file}`)).toContain(`${code} ${file}`);
      const lines = text.split("\n");
      const wanted =
        line === undefined ? firstChange(before, changed) : lines.findIndex((one) => one.includes(line));
      const found = remarks.filter((remark) => remark.code === code && remark.file === file);
      expect(found.map((remark) => remark.line)).toContain(wanted + 1);
      const named = found.find((remark) => remark.line === wanted + 1);
      expect(named?.severity).toBe(severity);
      if (says !== undefined) expect(`${named?.message} … ${named?.mend}`).toContain(says);
      if (at !== undefined)
        expect((lines[wanted] ?? "").slice((named?.column ?? 0) - 1)).toMatch(startOf(at));
    },
  );

  test("every rule is broken by one of them", () => {
    const broken = new Set<string>(carelessHandbooks.map(({ code }) => code));
    expect(Object.keys(reviewRules).filter((code) => !broken.has(code))).toEqual([]);
  });

  test("there are more than sixty", () => {
    expect(carelessHandbooks.length).toBeGreaterThanOrEqual(60);
  });
});

describe("severities", () => {
  test("a handbook that does not load gets faults only, the loader's", () => {
    const files = minimalFiles({ "cars.yaml": undefined });
    const { loaded, remarks } = reviewHandbook(files);
    expect(loaded.ok).toBe(false);
    expect(remarks).toMatchObject([{ severity: "fault", code: "file-missing", file: "cars.yaml", line: 1 }]);
  });

  test("what the loader warns of is a doubt", () => {
    const handle = (carefulHandbook["parts/door-handle.yaml"] ?? "").replace(
      "id: door-handle",
      "id: door-grip",
    );
    const { remarks } = reviewHandbook(carefulFiles({ "parts/door-handle.yaml": handle }));
    expect(remarks).toMatchObject([{ severity: "doubt", code: "file-name" }]);
  });

  test("a check that forbids a harmful thing is not taken for one that advises it", () => {
    const handle = (carefulHandbook["parts/door-handle.yaml"] ?? "").replace(
      "Look at it from above in daylight.",
      "Look at it from above. Do not scratch it, and never use acetone.",
    );
    expect(reviewHandbook(carefulFiles({ "parts/door-handle.yaml": handle })).remarks).toEqual([]);
  });
});

describe("a check is read as what it tells one to do", () => {
  const remarksOn = (check: string) =>
    reviewHandbook(
      carefulFiles({
        "parts/door-handle.yaml": (carefulHandbook["parts/door-handle.yaml"] ?? "").replace(
          "Look at it from above in daylight.",
          () => `"${check}"`,
        ),
      }),
    ).remarks.map(({ code }) => code);

  test.each([
    "The later one is thinner at the edge.",
    "See whether the number matches the plate.",
    "Look for grinding marks on the back, and for a scratch in the lacquer.",
    "Look for burn marks beside the hole.",
    "Look for file marks along the edge and see whether it is cut off square.",
    "Look beside the petrol cap; the flame red ones have none.",
    "See whether the paint has a hammer finish.",
    "Look at the connector on the part.",
    "Look at the part beside the plug.",
    "Look at the dust of a brake fluid reservoir.",
    "Look closely. No scratching the lacquer, and without acetone.",
    "Rather than scratch the paint look at its edge.",
  ])("nothing is remarked on: %s", (check) => {
    expect(remarksOn(check)).toEqual([]);
  });

  test.each([
    ["If there is no mark, scratch the paint off.", "check-harmful"],
    ["Without a torch, burn a sliver.", "check-harmful"],
    ["Wipe it with cellulose thinner.", "check-harmful"],
    ["Soak a rag in petrol and rub.", "check-harmful"],
    ["Light it with matches and smell.", "check-harmful"],
    ["Grind the edge until metal shows.", "check-harmful"],
    ["Tap it with a small hammer.", "check-harmful"],
    ["Drill into the back and look at the dust.", "check-harmful"],
    ["File a corner and look at the colour.", "check-harmful"],
    ["Look where the plugs come apart.", "check-uncautioned"],
  ])("it is remarked on: %s", (check, code) => {
    expect(remarksOn(check)).toEqual([code]);
  });
});

describe("what tells two variants apart", () => {
  const alike: readonly (readonly [string, string])[] = [
    [
      "button: { brass: nearly always }\n      length: { mean: 132, spread: 0.5 }",
      "button: { steel: nearly always }\n      length: { mean: 140, spread: 0.5 }",
    ],
  ];
  const lockDate: readonly [string, string] = [
    "causes:\n",
    `  - { id: lock-date, kind: date, name: Lock date, question: What does the lock read?, check: Read the edge of the lock., effort: 2, photograph: true, forms: [month-year] }
causes:
`,
  ];
  const codes = (changes: readonly (readonly [string, string])[]) => {
    const before = carefulHandbook["parts/door-handle.yaml"] ?? "";
    const text = changes.reduce((rest, [from, to]) => {
      expect(rest).toContain(from);
      return rest.replace(from, () => to);
    }, before);
    return reviewHandbook(carefulFiles({ "parts/door-handle.yaml": text })).remarks.map(({ code }) => code);
  };

  test("is a date mark, when they were made at different times", () => {
    expect(codes(alike)).toContain("variants-alike");
    expect(codes([...alike, lockDate])).not.toContain("variants-alike");
  });

  test("is no date mark, when they were made at the same time", () => {
    const sameTime: readonly [string, string] = [
      "{ from: 1973-01, to: 1975-12, sources: [list-1974] }",
      "{ from: 1970-01, to: 1972-12, share: 0.5, sources: [ledger] }",
    ];
    expect(codes([...alike, lockDate, sameTime])).toContain("variants-alike");
  });

  test("is a mark that one of them never carries, and the other always may", () => {
    const early: readonly [string, string] = [
      'button: { steel: "nearly always, 9 of 9", sources: [measured] }',
      'button: { steel: "nearly always, 9 of 9", sources: [measured] }\n      lock-date: { not-there: never }',
    ];
    const late: readonly [string, string] = [
      "button: { steel: nearly always }\n      length: { mean: 140, spread: 0.5 }",
      "button: { steel: nearly always }\n      length: { mean: 140, spread: 0.5 }\n      lock-date: { not-there: always }",
    ];
    const sameTime: readonly [string, string] = [
      "{ from: 1973-01, to: 1975-12, sources: [list-1974] }",
      "{ from: 1970-01, to: 1972-12, share: 0.5, sources: [ledger] }",
    ];
    expect(codes([...alike, lockDate, early, late, sameTime])).not.toContain("variants-alike");
  });

  test("is a hidden cause that differs, and none that names only one of them", () => {
    const other: readonly [string, string] = [
      "flat-late: { harl: usually, orme: sometimes }",
      "flat-late: { orme: always }",
    ];
    const silent: readonly [string, string] = ["      flat-late: { harl: usually, orme: sometimes }\n", ""];
    expect(codes([...alike, other])).not.toContain("variants-alike");
    expect(codes([...alike, silent])).toContain("variants-alike");
  });
});

function startOf(text: string): RegExp {
  return new RegExp(`^${text.replaceAll(/[.*+?^${}()|[\]\\]/gu, "\\$&")}`, "u");
}

/** The first line, from 0, in which two texts differ. */
function firstChange(before: string, after: string): number {
  const old = before.split("\n");
  return after.split("\n").findIndex((line, index) => line !== old[index]);
}
