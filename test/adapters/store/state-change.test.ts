import fc from "fast-check";
import { expect, test } from "vitest";
import { changeBetween, changed } from "../../../adapters/store/state-change.ts";

test("a text and its change give the text after", () => {
  const text = fc.oneof(
    fc.string({ unit: "grapheme" }),
    fc.string({ unit: fc.constantFrom("a", "b", "🜨", "🜩") }),
  );
  fc.assert(
    fc.property(text, text, text, text, (start, one, other, end) => {
      const after = start + other + end;
      expect(changed(start + one + end, changeBetween(start + one + end, after))).toBe(after);
    }),
    { seed: 21 },
  );
});

test("long texts are compared as exactly as short ones, wherever they differ", () => {
  const length = fc.integer({ min: 0, max: 1600 });
  fc.assert(
    fc.property(length, length, length, (start, end, between) => {
      const one = `${"a".repeat(start)}b${"a".repeat(end)}`;
      const other = `${"a".repeat(start)}${"c".repeat(between)}${"a".repeat(end)}`;
      const change = changeBetween(one, other);
      expect(changed(one, change)).toBe(other);
      expect(change.between).toBe("c".repeat(between));
    }),
    { seed: 23 },
  );
});

test("a change holds whole characters, so that it survives UTF-8", () => {
  const change = changeBetween("x🜨y", "x🜩y");
  expect(change).toEqual({ keptStart: 1, keptEnd: 1, between: "🜩" });
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), fc.string({ unit: "binary" }), (before, after) => {
      const { between } = changeBetween(before, after);
      expect(Buffer.from(between, "utf8").toString("utf8")).toBe(between);
    }),
    { seed: 22 },
  );
});

test("what was added is all that is kept of a text that grew", () => {
  expect(changeBetween('{"cases":[1,2]}', '{"cases":[1,2,3]}').between).toBe(",3");
});

test("a change that does not fit the text is found out", () => {
  expect(changed("short", { keptStart: 4, keptEnd: 2, between: "" })).toBeUndefined();
  expect(changed("short", { keptStart: -1, keptEnd: 0, between: "" })).toBeUndefined();
});
