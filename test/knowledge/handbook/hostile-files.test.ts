import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { HandbookFile } from "../../../knowledge/handbook/handbook-file.ts";
import { loadHandbook } from "../../../knowledge/handbook/load-handbook.ts";
import { problemCodes, problemText } from "../../../knowledge/handbook/problem.ts";
import { minimalFiles, minimalHandbook } from "../../support/minimal-handbook.ts";

function codesOf(files: readonly HandbookFile[]): readonly string[] {
  const loaded = loadHandbook(files);
  return loaded.ok ? [] : loaded.problems.map(({ file, code }) => `${file} ${code}`);
}

function withFile(path: string, text: string): readonly HandbookFile[] {
  return [...minimalFiles({ [path]: undefined }), { path, text }];
}

describe("paths", () => {
  test.each([
    "../handbook.yaml",
    "parts/../../secret.yaml",
    "/etc/handbook.yaml",
    "C:/handbook.yaml",
    "parts\\rear.yaml",
    "parts/a\0.yaml",
    "./handbook.yaml",
  ])("%j leads out of the folder", (path) => {
    expect(codesOf(withFile(path, "id: x"))).toEqual([expect.stringContaining("file-path")]);
  });

  test.each([
    ["notes.txt", "a handbook holds"],
    ["handbok.yaml", "did you mean handbook.yaml?"],
    ["parts/door-mirror.yml", "rename it to end in .yaml"],
    ["parts/deep/door-mirror.yaml", "a handbook holds"],
    ["drawings/foot.png", "a handbook holds"],
    ["__proto__", "a handbook holds"],
    ["parts/", "a handbook holds"],
    ["", "a handbook holds"],
  ])("%j has no place in a handbook", (path, mend) => {
    const loaded = loadHandbook(withFile(path, "x"));
    const [problem] = loaded.ok ? [] : loaded.problems;
    expect(problem?.code).toBe("file-unknown");
    expect(problem?.mend).toContain(mend);
  });

  test("a path with escape codes is not printed as it is", () => {
    const loaded = loadHandbook(withFile("\u001b[31mred.yaml", "x"));
    expect(loaded.ok ? "" : loaded.problems.map(problemText).join()).not.toContain("\u001b");
  });

  test("README.md and LICENSE may stand beside the handbook", () => {
    expect(codesOf([...withFile("README.md", "Hello"), { path: "LICENSE", text: "" }])).toEqual([]);
  });

  test("one path twice is refused", () => {
    const cover = minimalHandbook["handbook.yaml"] ?? "";
    expect(codesOf([...minimalFiles(), { path: "handbook.yaml", text: cover }])).toContain(
      "handbook.yaml file-twice",
    );
  });
});

describe("sizes", () => {
  test("a file over the limit is refused before it is read", () => {
    const text = `# ${"x".repeat(2_000_001)}`;
    expect(codesOf(withFile("parts/large.yaml", text))).toEqual(["parts/large.yaml file-too-large"]);
  });

  test("a drawing that cannot be read is not said to be missing as well", () => {
    expect(codesOf(withFile("drawings/spoiler.svg", "\0"))).toEqual(["drawings/spoiler.svg file-not-text"]);
  });

  test("a size is counted in bytes, not in letters", () => {
    const text = `# ${"é".repeat(1_100_000)}`;
    expect(codesOf(withFile("parts/large.yaml", text))).toEqual(["parts/large.yaml file-too-large"]);
  });

  test("files that are too large together are refused", () => {
    const text = `# ${"x".repeat(1_900_000)}`;
    const many = Array.from({ length: 11 }, (_, index) => ({ path: `parts/p${index}.yaml`, text }));
    expect(codesOf([...minimalFiles(), ...many])).toEqual([". folder-too-large"]);
  });

  test("more than 500 files are refused", () => {
    const many = Array.from({ length: 501 }, (_, index) => ({ path: `parts/p${index}.yaml`, text: "" }));
    expect(codesOf(many)).toEqual([". too-many-files"]);
  });

  test("no files at all: what is missing is named", () => {
    expect(codesOf([])).toEqual([
      "cars.yaml file-missing",
      "handbook.yaml file-missing",
      "parts file-missing",
      "sources.yaml file-missing",
    ]);
  });
});

describe("texts", () => {
  const bomb = [
    "a: &a [x, x, x, x, x, x, x, x, x, x]",
    ...["b", "c", "d", "e", "f", "g", "h", "i"].map((name, index) => {
      const former = String.fromCharCode(97 + index);
      return `${name}: &${name} [${Array.from({ length: 10 }, () => `*${former}`).join(", ")}]`;
    }),
  ].join("\n");

  test.each([
    ["an alias bomb", bomb, "yaml-alias"],
    ["a mapping that contains itself", "a: &a\n  b: *a\n", "yaml-alias"],
    ["a merge key", "a: &a { b: 1 }\nc:\n  <<: *a\n", "yaml-alias"],
    ["a binary tag", "id: !!binary aGVsbG8=\n", "yaml-tag"],
    ["a made-up tag", "id: !run ls\n", "yaml-tag"],
    ["a set of machine types", "id: !!set { a, b }\n", "yaml-tag"],
    ["lists 100,000 deep", "[".repeat(100_000), "yaml-depth"],
    ["records 20,000 deep", "{a: ".repeat(20_000), "yaml-depth"],
    ["explicit keys 20,000 deep", "? ".repeat(20_000), "yaml-depth"],
    ["block lists 20,000 deep", "- ".repeat(20_000), "yaml-depth"],
    ["a machine's prototype", "__proto__: { id: x }\n", "yaml-key"],
    ["a NUL", "id: a\0b\n", "file-not-text"],
    ["half a letter", "id: \ud800\n", "file-not-text"],
    ["the sign for undecodable bytes", "id: \ufffd\n", "file-not-text"],
    ["nothing", "", "file-empty"],
    ["blanks", " \n\n", "file-empty"],
    ["a comment alone", "# soon\n", "value-missing"],
    ["a single word", "hello\n", "value-type"],
    ["a list", "- a\n- b\n", "value-type"],
    ["a number", "12\n", "value-type"],
    ["another directive", "%YAML 9.9\n---\nid: x\n", "key-missing"],
  ])("%s is refused with a clear line", (_name, text, code) => {
    const found = codesOf(withFile("parts/hostile.yaml", text));
    expect(found).toContain(`parts/hostile.yaml ${code}`);
  });

  test.each([
    ["unknown keys", Array.from({ length: 15_000 }, (_, index) => `k${index}: 1`).join("\n")],
    ["entries of one list", `also: [${"a,".repeat(90_000)}]`],
    ["opened brackets", "{[".repeat(90_000)],
    ["question marks", "? ".repeat(90_000)],
    ["hyphens", "- ".repeat(90_000)],
    ["quotes", '"'.repeat(190_000)],
    ["colons", ": ".repeat(90_000)],
    ["blanks", `a:${" ".repeat(190_000)}b`],
    ["blanks inside text", `a: b${" ".repeat(190_000)}c`],
    ["ampersands", "&a ".repeat(60_000)],
    ["line ends", `a:${"\n".repeat(190_000)}b`],
  ])(
    "two hundred thousand letters of %s are answered within seconds",
    (_name, text) => {
      expect(codesOf(withFile("parts/hostile.yaml", text)).length).toBeGreaterThan(0);
    },
    10_000,
  );

  test.each([
    ["opened comments", "<!--".repeat(40_000)],
    ["opened tags", "<a ".repeat(50_000)],
    ["opened quotes", `<svg ${"a='".repeat(50_000)}`],
    ["letters without end", `<svg ${"a".repeat(190_000)}>`],
    ["attributes without value", `<svg ${"a ".repeat(90_000)}>`],
    ["ampersands", `<svg>${"&".repeat(190_000)}</svg>`],
  ])(
    "a drawing of %s is answered within seconds",
    (_name, text) => {
      expect(codesOf(withFile("drawings/spoiler.svg", text))).toContain(
        "drawings/spoiler.svg drawing-unsafe",
      );
    },
    5_000,
  );
});

describe("whatever a file holds", () => {
  const paths = Object.keys(minimalHandbook);
  const snippets = fc.constantFrom(
    ..."[]{}:,-?&*!|>'\"%@`#~\t\n ".split(""),
    "\n  ",
    ": ",
    "- ",
    "id: ",
    "tells: ",
    "null",
    "0777",
    "1e999",
    "__proto__",
    "<svg>",
    "é",
    "\u2028",
  );
  const texts = fc.oneof(
    fc.string({ unit: "binary", maxLength: 60 }),
    fc.array(snippets, { maxLength: 30 }).map((pieces) => pieces.join("")),
  );

  test("an arbitrary text as any file never throws, and is refused", () => {
    fc.assert(
      fc.property(fc.constantFrom(...paths), texts, (path, text) => {
        const loaded = loadHandbook(minimalFiles({ [path]: text }));
        expect(loaded.ok).toBe(false);
        for (const problem of loaded.ok ? [] : loaded.problems) {
          expect(problemCodes).toContain(problem.code);
          expect(problem.line).toBeGreaterThan(0);
          expect(problem.column).toBeGreaterThan(0);
          expect(problemText(problem)).not.toMatch(/[\n\r]/);
        }
      }),
      { seed: 17, numRuns: 600 },
    );
  });

  test("a few letters changed anywhere never throw, and every problem lies inside the text", () => {
    const changes = fc.tuple(fc.constantFrom(...paths), fc.nat(), fc.nat({ max: 12 }), texts);
    fc.assert(
      fc.property(changes, ([path, at, cut, text]) => {
        const sound = minimalHandbook[path] ?? "";
        const from = at % sound.length;
        const changed = sound.slice(0, from) + text + sound.slice(from + cut);
        const loaded = loadHandbook(minimalFiles({ [path]: changed }));
        const lines = changed.split("\n");
        for (const { file, line, column } of loaded.ok ? loaded.warnings : loaded.problems) {
          if (file !== path) continue;
          expect(line).toBeLessThanOrEqual(lines.length);
          expect(column).toBeLessThanOrEqual((lines[line - 1] ?? "").length + 1);
        }
      }),
      { seed: 18, numRuns: 300 },
    );
  });
});
