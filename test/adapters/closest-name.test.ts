import fc from "fast-check";
import { expect, test } from "vitest";
import { closestName, slipsBetween } from "../../adapters/closest-name.ts";

test("each of the four slips counts one", () => {
  expect(slipsBetween("mirror", "miror")).toBe(1);
  expect(slipsBetween("mirror", "mirrror")).toBe(1);
  expect(slipsBetween("mirror", "mirrir")).toBe(1);
  expect(slipsBetween("mirror", "mirorr")).toBe(1);
});

test("the textbook pair kitten and sitting is three slips apart", () => {
  // Wagner & Fischer 1974's distance, the usual worked example; no swap occurs in it.
  expect(slipsBetween("kitten", "sitting")).toBe(3);
});

test("the distance is the same both ways and zero only for the same word", () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 8 }), fc.string({ maxLength: 8 }), (one, other) => {
      expect(slipsBetween(one, other)).toBe(slipsBetween(other, one));
      expect(slipsBetween(one, other) === 0).toBe(one === other);
    }),
    { seed: 11 },
  );
});

test("a near name is named, a far one and a tie are not", () => {
  const commands = ["chat", "converse", "model", "check"];
  expect(closestName("convrese", commands)).toBe("converse");
  expect(closestName("spoiler", commands)).toBeUndefined();
  expect(closestName("chet", ["chat", "chit"])).toBeUndefined();
});
