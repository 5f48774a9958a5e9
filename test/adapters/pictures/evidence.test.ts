import fc from "fast-check";
import { expect, test } from "vitest";
import { type Evidence, evidenceBalance } from "../../../adapters/pictures/evidence.ts";
import { pngOf } from "../../../adapters/pictures/png.ts";
import { collisions, textBoxes } from "../../support/drawn-boxes.ts";
import { greyPixelsOf } from "../../support/pixels.ts";
import { elementsOf } from "../../support/well-formed.ts";

const fact = (words: string, bans: number, strength = "strong") => ({ words, bans, strength });

function drawn(items: Evidence["items"], changes: Partial<Evidence> = {}): string {
  const names = { first: "first-type mirror with nylon ball", rival: "American long-foot mirror" };
  const scale = { oneBan: "10:1", twoBans: "100:1" };
  return evidenceBalance({ title: "balance", description: "described", ...names, scale, items, ...changes });
}

/** Ink in the left and in the right half of each row of pixels that holds a bar, as shares of the half. */
async function barInk(svg: string): Promise<{ readonly left: number; readonly right: number }> {
  const silent = svg.replaceAll(/<text.*?<\/text>/gu, "");
  const { width, height, grey } = await greyPixelsOf(await pngOf(silent));
  const ink = { left: 0, right: 0 };
  for (let y = 110; y < height - 70; y += 1) {
    for (let x = 0; x < width; x += 1) {
      if (Math.abs(x - width / 2) < 8 || (grey[y * width + x] ?? 255) > 140) continue;
      ink[x < width / 2 ? "left" : "right"] += 1;
    }
  }
  return ink;
}

const anyItem = fc.record({
  words: fc.string({ unit: "binary", maxLength: 200 }),
  bans: fc.double({ min: -20, max: 20, noNaN: true }),
  strength: fc.constantFrom("weak", "very strong"),
});

test("whatever the facts say, the drawing is well-formed and nothing written leaves it", () => {
  fc.assert(
    fc.property(fc.array(anyItem, { maxLength: 20 }), fc.string({ unit: "binary" }), (items, name) => {
      const svg = drawn(items, { first: name, title: name, description: name });
      const [root] = elementsOf(svg);
      expect(root?.attributes.role).toBe("img");
      expect(svg).not.toMatch(/NaN|Infinity|undefined/u);
    }),
    { seed: 12, numRuns: 80 },
  );
});

const usual = [
  fact("gasket groove: square-cut", 1.4),
  fact("casting mark: no casting mark", -0.31, "weak"),
  fact("thickness of the mirror glass at its edge, measured with a caliper: 1.9 mm, perhaps misread", 2.8),
  fact("Spiegelgehäuseinnenseitenoberflächenbeschaffenheit: rauhfaserig", -2.9, "very strong"),
];

test("words lie within the drawing and not upon each other", () => {
  const long = "Wexcombe American long-foot mirror of the second series with heated glass, service part";
  for (const svg of [drawn(usual), drawn(usual, { first: long, rival: long }), drawn([])]) {
    const boxes = textBoxes(svg);
    expect(boxes.length).toBeGreaterThan(5);
    expect(collisions(boxes)).toEqual([]);
    for (const { words, left, right } of boxes) {
      expect(left, words).toBeGreaterThanOrEqual(0);
      expect(right, words).toBeLessThanOrEqual(320);
    }
  }
});

test("a fact for the first draws to the right, one for the rival to the left, as long as it weighs", async () => {
  const [one, two, against] = await Promise.all([
    barInk(drawn([fact("groove", 1)])),
    barInk(drawn([fact("groove", 2)])),
    barInk(drawn([fact("groove", -2)])),
  ]);
  expect(one.left).toBe(0);
  expect(two.right / one.right).toBeGreaterThan(1.9);
  expect(two.right / one.right).toBeLessThan(2.2);
  expect(against.right).toBe(0);
  expect(against.left).toBeGreaterThan(0);
});

test("in black and white what speaks against is hatched: some ink, and far less than a solid bar", async () => {
  const [forIt, against] = await Promise.all([
    barInk(drawn([fact("groove", 2)])),
    barInk(drawn([fact("groove", -2)])),
  ]);
  expect(against.left / forIt.right).toBeGreaterThan(0.15);
  expect(against.left / forIt.right).toBeLessThan(0.7);
});

test("a fact of more than two bans fills its side, and its bar is broken off", () => {
  const outline = (bans: number) =>
    elementsOf(drawn([fact("groove", bans)])).filter(({ name }) => name === "path");
  expect(outline(9).length).toBe(outline(2).length + 1);
});

test("a word that is wider than the drawing is broken, and none of its letters lost", () => {
  const written = textBoxes(drawn([fact("m".repeat(90), 1)])).map(({ words }) => words);
  expect(written.join("")).toContain("m".repeat(90));
  expect(written.every((words) => words.length < 40)).toBe(true);
});
