import fc from "fast-check";
import { expect, test } from "vitest";
import { textLines, textWidth } from "../../../adapters/pictures/letter-widths.ts";
import { pngOf } from "../../../adapters/pictures/png.ts";
import { greyPixelsOf } from "../../support/pixels.ts";

/** Where the words end when they are drawn, in units, to the pixel. */
async function drawnEnd(words: string, weight: string): Promise<number> {
  const text = `<text x="10" y="20" font-size="12" font-weight="${weight}">${words}</text>`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 30">${text}</svg>`;
  const { width, grey } = await greyPixelsOf(await pngOf(svg));
  const end = grey.reduce(
    (last, brightness, at) => (brightness < 200 ? Math.max(last, at % width) : last),
    0,
  );
  return end / 2 - 10;
}

test.each(["gasket groove: square-cut", "Moulded, 1.9 mm (Wexcombe)", "illicit till", "MMMM WWWW"])(
  "%s is drawn as wide as it was reckoned, and no wider in bold",
  async (words) => {
    // The margin of the last letter, and pairs of letters that are drawn closer together.
    expect(Math.abs((await drawnEnd(words, "normal")) - textWidth(words))).toBeLessThan(2.5);
    expect(await drawnEnd(words, "bold")).toBeLessThan(textWidth(words, true) + 0.5);
  },
);

test("no line is wider than asked for, and without a limit no letter is lost", () => {
  fc.assert(
    fc.property(
      fc.string({ unit: "binary", maxLength: 300 }),
      fc.integer({ min: 30, max: 300 }),
      (text, width) => {
        const lines = textLines(text, width, { mostLines: 1000 });
        for (const line of lines) expect(textWidth(line)).toBeLessThanOrEqual(width);
        expect(lines.join("").replaceAll(/\s/gu, "")).toBe(text.replaceAll(/\s/gu, ""));
      },
    ),
    { seed: 21, numRuns: 100 },
  );
});

test("what has no room ends in three dots that fit", () => {
  const lines = textLines("one two three four five six seven", 60, { mostLines: 2 });
  expect(lines).toHaveLength(2);
  expect(lines[1]).toMatch(/…$/u);
  expect(textWidth(lines[1] ?? "")).toBeLessThanOrEqual(60);
});
