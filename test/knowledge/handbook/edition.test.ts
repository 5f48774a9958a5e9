import fc from "fast-check";
import { expect, test } from "vitest";
import { editionOf, shortEdition } from "../../../knowledge/handbook/edition.ts";
import { minimalFiles } from "../../support/minimal-handbook.ts";

test("the edition of two short files is the SHA-256 of their listing", () => {
  // Computed by Python's hashlib over: path, NUL, length, NUL, text of each file in turn.
  const files = [
    { path: "handbook.yaml", text: "x" },
    { path: "cars.yaml", text: "a: 1\n" },
  ];
  expect(editionOf(files)).toBe("4f8348e64d40f37367e59fce679af11842d74add75dbd4b7b17cc9e8bae6dbe7");
});

test("the order in which files come changes nothing", () => {
  const files = minimalFiles();
  fc.assert(
    fc.property(fc.shuffledSubarray([...files], { minLength: files.length }), (shuffled) => {
      expect(editionOf(shuffled)).toBe(editionOf(files));
    }),
    { seed: 5, numRuns: 20 },
  );
});

test("line ends and a byte order mark change nothing", () => {
  const files = minimalFiles().map(({ path, text }) => ({
    path,
    text: `\uFEFF${text.replaceAll("\n", "\r\n")}`,
  }));
  expect(editionOf(files)).toBe(editionOf(minimalFiles()));
});

test("any other letter changed, moved to another file or renamed changes the edition", () => {
  const sound = editionOf(minimalFiles());
  const files = minimalFiles();
  const [first, second, ...rest] = files;
  if (first === undefined || second === undefined) throw new Error("the handbook has two files at least");
  const moved = [
    { path: first.path, text: first.text + second.text.slice(0, 1) },
    { path: second.path, text: second.text.slice(1) },
    ...rest,
  ];
  const renamed = files.map((file) =>
    file.path.startsWith("drawings/") ? { ...file, path: "drawings/other.svg" } : file,
  );
  const commented = files.map((file, index) =>
    index === 0 ? { ...file, text: `${file.text}# seen\n` } : file,
  );
  const editions = [moved, renamed, commented, rest].map(editionOf);
  expect(new Set([sound, ...editions]).size).toBe(5);
});

test("a README beside the handbook is no part of the edition", () => {
  const files = [...minimalFiles(), { path: "README.md", text: "How to write to us" }];
  expect(editionOf(files)).toBe(editionOf(minimalFiles()));
});

test("the short form is the first eight figures", () => {
  expect(shortEdition(editionOf(minimalFiles()))).toMatch(/^[0-9a-f]{8}$/);
  expect(shortEdition("0123456789abcdef")).toBe("01234567");
});
