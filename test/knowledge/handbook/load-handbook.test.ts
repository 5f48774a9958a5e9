import { describe, expect, test } from "vitest";
import { loadHandbook } from "../../../knowledge/handbook/load-handbook.ts";
import { problemText } from "../../../knowledge/handbook/problem.ts";
import { minimalFiles, minimalHandbook } from "../../support/minimal-handbook.ts";
import { brokenHandbooks } from "./broken-handbooks.ts";

function problemsOf(replaced: Readonly<Record<string, string | undefined>>) {
  const loaded = loadHandbook(minimalFiles(replaced));
  return loaded.ok ? [] : loaded.problems;
}

function spoilerWith(from: string, to: string): string {
  return (minimalHandbook["parts/rear-spoiler.yaml"] ?? "").replace(from, to);
}

describe("a sound handbook", () => {
  test("loads without a problem or a warning", () => {
    const loaded = loadHandbook(minimalFiles());
    expect(loaded.ok ? loaded.warnings : loaded.problems).toEqual([]);
  });

  test("keeps what was written and fills in what may be left out", () => {
    const loaded = loadHandbook(minimalFiles());
    if (!loaded.ok) throw new Error("the sound handbook is refused");
    const [part] = loaded.handbook.parts;
    expect(part?.variants.map(({ id }) => id)).toEqual(["first", "second", "trade-copy"]);
    expect(part?.variants[1]?.fitted[0]).toEqual({
      from: "1980-09",
      to: "1984-09",
      start: "about",
      end: "exact",
      models: [],
      trims: [],
      markets: [],
      share: 1,
      sources: [],
    });
    expect(part?.replaced).toBe(0.2);
    expect(loaded.handbook.cars.production["1978"]).toBe(12);
    expect([...loaded.handbook.drawings.keys()]).toEqual(["drawings/spoiler.svg"]);
  });

  test("a date written as a plain year stays the text of that year", () => {
    const loaded = loadHandbook(minimalFiles({ "parts/rear-spoiler.yaml": spoilerWith('"1995"', "1995") }));
    expect(loaded.ok && loaded.handbook.parts[0]?.variants[2]?.sold[0]?.from).toBe("1995");
  });

  test("the order of the files changes nothing", () => {
    expect(loadHandbook(minimalFiles().toReversed())).toEqual(loadHandbook(minimalFiles()));
  });

  test("Windows line ends and a byte order mark change neither the content nor the edition", () => {
    const files = minimalFiles().map(({ path, text }) => ({
      path,
      text: `\uFEFF${text.replaceAll("\n", "\r\n")}`,
    }));
    expect(
      loadHandbook(
        files
          .filter(({ path }) => path.endsWith(".yaml"))
          .concat(minimalFiles().filter(({ path }) => path.endsWith(".svg"))),
      ),
    ).toEqual(loadHandbook(minimalFiles()));
  });
});

describe("a broken handbook is refused with file, line and mending when", () => {
  test.each(brokenHandbooks)("$slip", ({ file, from, to, code, line, mend = "" }) => {
    const sound = minimalHandbook[file] ?? "";
    expect(sound).toContain(from);
    const broken = sound.replace(from, () => to);
    const problems = problemsOf({ [file]: broken });
    const lines = broken.split("\n");
    const wanted = line ?? (to.split("\n")[0] || "</svg>");
    const found = problems.find((problem) => problem.code === code && problem.file === file);
    expect(found, problems.map(problemText).join("\n")).toBeDefined();
    // What is not closed is told at the end of the text.
    const shown = `${lines[(found?.line ?? 0) - 1] ?? ""}${to === "" ? "</svg>" : ""}`;
    expect(shown, problems.map(problemText).join("\n")).toContain(wanted);
    expect(found?.mend).toContain(mend);
    expect(found?.column).toBeGreaterThan(0);
  });

  test("at least sixty different slips are known", () => {
    expect(new Set(brokenHandbooks.map(({ slip }) => slip)).size).toBeGreaterThanOrEqual(60);
  });
});

describe("problems", () => {
  test("a slip in one place is one problem", () => {
    const problems = problemsOf({
      "parts/rear-spoiler.yaml": spoilerWith("origin: reproduction", "orign: reproduction"),
    });
    expect(problems.map(problemText)).toEqual([
      'parts/rear-spoiler.yaml:102:5  unknown key "orign" … did you mean "origin"?',
    ]);
  });

  test("all are listed at once, by file and line", () => {
    const problems = problemsOf({
      "parts/rear-spoiler.yaml": spoilerWith("effort: 2", "effort: two").replace("unit: mm", "unit: ell"),
      "cars.yaml": (minimalHandbook["cars.yaml"] ?? "").replace("serial: 101", "serial: -1"),
      "handbook.yaml": undefined,
    });
    expect(problems.map(({ file, line, code }) => `${file}:${line} ${code}`)).toEqual([
      "cars.yaml:24 value-range",
      "handbook.yaml:1 file-missing",
      "parts/rear-spoiler.yaml:12 value-type",
      "parts/rear-spoiler.yaml:38 value-choice",
    ]);
  });

  test("a broken cars.yaml is not held against the parts that name its cars", () => {
    const problems = problemsOf({ "cars.yaml": "models: []\n" });
    expect(new Set(problems.map(({ file }) => file))).toEqual(new Set(["cars.yaml"]));
  });

  test("reads as one line with place, fault and mending", () => {
    const [problem] = problemsOf({
      "parts/rear-spoiler.yaml": spoilerWith("{ rough: nearly", "{ ruff: nearly"),
    });
    expect(problem && problemText(problem)).toBe(
      'parts/rear-spoiler.yaml:88:24  unknown state of inside-finish "ruff" … did you mean "rough"?',
    );
  });

  test("more than two hundred of one file are cut short, and it is said", () => {
    const keys = Array.from({ length: 5000 }, (_, index) => `extra-${index}: 1`).join("\n");
    const problems = problemsOf({ "handbook.yaml": `${minimalHandbook["handbook.yaml"]}${keys}\n` });
    expect(problems).toHaveLength(201);
    expect(problems.some(({ code }) => code === "problems-left-out")).toBe(true);
  });
});

describe("warnings do not stop a handbook", () => {
  const warningsOf = (replaced: Readonly<Record<string, string>>) => {
    const loaded = loadHandbook(minimalFiles(replaced));
    return loaded.ok ? loaded.warnings.map(({ code, file, line }) => `${file}:${line} ${code}`) : ["refused"];
  };

  test("a drawing that no part names", () => {
    const text = minimalHandbook["drawings/spoiler.svg"] ?? "";
    expect(warningsOf({ "drawings/other.svg": text })).toEqual(["drawings/other.svg:1 drawing-unused"]);
  });

  test("a fitted period long before the first car", () => {
    const text = spoilerWith("from: 1980-09, to: 1984-09", "from: 1880-09, to: 1884-09");
    expect(warningsOf({ "parts/rear-spoiler.yaml": text })).toEqual([
      "parts/rear-spoiler.yaml:96 period-outside-production",
    ]);
  });

  test("shares that add up to a little too much", () => {
    const text = spoilerWith("smooth: rarely", "smooth: about half");
    expect(warningsOf({ "parts/rear-spoiler.yaml": text })).toEqual(["parts/rear-spoiler.yaml:88 claim-sum"]);
  });

  test("a file that is not named after its part kind", () => {
    const loaded = loadHandbook(
      minimalFiles({
        "parts/rear-spoiler.yaml": undefined,
        "parts/spoiler.yaml": minimalHandbook["parts/rear-spoiler.yaml"],
      }),
    );
    expect(loaded.ok && loaded.warnings.map(({ code }) => code)).toEqual(["file-name"]);
  });
});

test("a key that is none is named as it is written, in one pair of quotes", () => {
  const cars = (minimalHandbook["cars.yaml"] ?? "").replace(/ {2}1980: .*/u, "  nineteen: 3");
  const messages = problemsOf({ "cars.yaml": cars }).map(({ message }) => message);
  expect(messages).toEqual(['"nineteen" cannot be a key here']);
});
