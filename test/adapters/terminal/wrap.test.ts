import fc from "fast-check";
import { expect, test } from "vitest";
import { clean, textWidth, wrapped } from "../../../adapters/terminal/wrap.ts";

test("no line is wider than the page, whatever was said", () => {
  fc.assert(
    fc.property(
      fc.string({ unit: "binary", maxLength: 300 }),
      fc.integer({ min: 24, max: 100 }),
      (text, width) => {
        for (const line of wrapped(text, width, "  - ")) expect(textWidth(line)).toBeLessThanOrEqual(width);
      },
    ),
    { seed: 5, numRuns: 60 },
  );
});

test("wrapping loses and adds no letter", () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 300 }), (text) => {
      const letters = (words: string) => clean(words).replaceAll(/\s/gu, "");
      expect(letters(wrapped(text, 30).join("\n"))).toBe(letters(text));
    }),
    { seed: 6 },
  );
});

test("lines after the first hang under its text", () => {
  expect(wrapped("the groove is cast in and has a rounded bottom", 24, "  - ")).toEqual([
    "  - the groove is cast",
    "    in and has a rounded",
    "    bottom",
  ]);
});

test("nothing that a terminal would obey is let through", () => {
  expect(clean("red\u001b[31m alert\u001b]0;title\u0007 \u202etxet\u0000\r\nnext")).toBe(
    "red alert txet\nnext",
  );
});

test("wide and combining characters are measured in columns", () => {
  expect(textWidth("鏡")).toBe(2);
  expect(textWidth("e\u0301")).toBe(1);
});

test("a figure and its per cent sign stay together", () => {
  expect(wrapped("very unlikely (6 %)", 17)).toEqual(["very unlikely", "(6 %)"]);
});
