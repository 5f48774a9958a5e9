import fc from "fast-check";
import { expect, test } from "vitest";
import {
  type Timeline,
  type TimelineMark,
  timeline,
  timelineLineLength,
} from "../../../adapters/pictures/timeline.ts";
import { provenanceGrades } from "../../../knowledge/index.ts";
import { elementsOf } from "../../support/well-formed.ts";

const JANUARY_1980 = 12 * 1980;

function mark(month: number, changes: Partial<TimelineMark> = {}): TimelineMark {
  const built = { from: JANUARY_1980 + month, to: JANUARY_1980 + month + 1 };
  return { side: "old", built, grade: "one-owner", isSuspect: false, words: "seen", ...changes };
}

function drawn(marks: readonly TimelineMark[], changes: Partial<Timeline> = {}): string {
  return timeline({
    title: "The change",
    description: "described",
    heading: ["The change"],
    old: ["old"],
    new: ["new"],
    span: { from: JANUARY_1980, to: JANUARY_1980 + 60 },
    marks,
    legend: [],
    ...changes,
  });
}

const anyMark: fc.Arbitrary<TimelineMark> = fc.record({
  side: fc.constantFrom("old", "new"),
  built: fc
    .tuple(fc.integer({ min: -30, max: 90 }), fc.integer({ min: 1, max: 30 }))
    .map(([from, length]) => ({ from: JANUARY_1980 + from, to: JANUARY_1980 + from + length })),
  grade: fc.constantFrom(...provenanceGrades),
  isSuspect: fc.boolean(),
  words: fc.string({ unit: "binary" }),
});

test("whatever the list says, the drawing is well-formed and has a mark for every sighting", () => {
  fc.assert(
    fc.property(fc.array(anyMark, { maxLength: 40 }), fc.string({ unit: "binary" }), (marks, words) => {
      const svg = drawn(marks, { title: words, heading: [words], old: [words] });
      const elements = elementsOf(svg);
      expect(elements.filter(({ attributes }) => attributes.class === "sighting")).toHaveLength(marks.length);
      expect(svg).not.toMatch(/NaN|Infinity|undefined/u);
    }),
    { seed: 11, numRuns: 60 },
  );
});

test("nothing of a mark leaves the drawing at the sides", () => {
  const svg = drawn([mark(-500), mark(900), mark(0, { isSuspect: true }), mark(59, { isSuspect: true })]);
  const rings = elementsOf(svg).filter(({ name }) => name === "circle");
  expect(rings.length).toBeGreaterThan(0);
  for (const { attributes } of rings) {
    const [x, radius] = [Number(attributes.cx), Number(attributes.r)];
    expect(x - radius).toBeGreaterThanOrEqual(0);
    expect(x + radius).toBeLessThanOrEqual(320);
  }
});

test("marks of one month stand above each other, and none covers another", () => {
  const svg = drawn(Array.from({ length: 12 }, () => mark(20)));
  const heights = elementsOf(svg).flatMap(({ name, attributes }) =>
    name === "circle" ? [attributes.cy] : [],
  );
  expect(new Set(heights).size).toBe(12);
});

test("every grade has its own shape, and no colour but ink and paper is used", () => {
  const shapes = provenanceGrades.map((grade) => {
    const [, shape] = /<circle class="paper"[^>]*\/>(.*?)<\/g>/u.exec(drawn([mark(20, { grade })])) ?? [];
    return shape;
  });
  expect(new Set(shapes).size).toBe(provenanceGrades.length);
  expect(shapes).not.toContain(undefined);
  const colours = drawn([]).match(/#[0-9a-f]+/gu) ?? [];
  expect(colours.length).toBeGreaterThan(0);
  for (const colour of colours) {
    const pairs = colour.length === 4 ? colour.slice(1).split("") : (colour.slice(1).match(/../gu) ?? []);
    const [red = 0, green = 0, blue = 0] = pairs.map((pair) => Number.parseInt(pair, 16));
    expect(Math.max(red, green, blue) - Math.min(red, green, blue), colour).toBeLessThan(16);
  }
});

test("it is an image with title and description, one line weight, and text of 12 units on a width of 320", () => {
  const svg = drawn([mark(3)], { band: { from: JANUARY_1980 + 10, to: JANUARY_1980 + 12 } });
  const [root, title, description] = elementsOf(svg);
  expect(root?.attributes).toMatchObject({ role: "img", viewBox: expect.stringMatching(/^0 0 320 /u) });
  expect([title?.name, description?.name]).toEqual(["title", "desc"]);
  expect(svg.match(/stroke-width/gu)).toHaveLength(1);
  expect(svg.match(/font[^;}]*/gu)).toEqual(["font:12px sans-serif"]);
});

test("a line longer than the drawing is wide is cut", () => {
  const svg = drawn([], { heading: ["m".repeat(200)] });
  expect(svg).toContain(`>${"m".repeat(timelineLineLength - 1)}…<`);
});

test("a month in which hundreds were seen is no taller than two dozen marks, and every mark stands in it", () => {
  const heightOf = (svg: string) => Number(/viewBox="0 0 320 ([\d.]+)"/u.exec(svg)?.[1]);
  const few = heightOf(drawn(Array.from({ length: 24 }, () => mark(7))));
  const many = drawn(Array.from({ length: 400 }, () => mark(7)));
  expect(heightOf(many) - few).toBeLessThan(14);
  expect(elementsOf(many).filter(({ attributes }) => attributes.class === "sighting")).toHaveLength(400);
  // Telegram takes no photograph whose width and height are more together.
  expect(2 * (320 + heightOf(many))).toBeLessThan(10_000);
});
