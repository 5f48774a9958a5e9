import { expect, test } from "vitest";
import { givingWay } from "../../adapters/give-way.ts";
import { atOnce, type InPieces } from "../../knowledge/index.ts";

/** So many pieces of some milliseconds each. */
function* pieces(count: number, done: number[] = []): InPieces<number> {
  for (let piece = 0; piece < count; piece += 1) {
    const until = performance.now() + 8;
    while (performance.now() < until);
    done.push(piece);
    yield;
  }
  return count;
}

test("work in pieces comes to the same, whether others have their turn or not", async () => {
  let turns = 0;
  const timer = setInterval(() => {
    turns += 1;
  }, 1);
  expect(await givingWay(pieces(12))).toBe(12);
  clearInterval(timer);
  expect(turns).toBeGreaterThan(2);
  expect(atOnce(pieces(2))).toBe(2);
});

test("work that nobody wants any more is left where it stands", async () => {
  const ending = new AbortController();
  const done: number[] = [];
  const work = givingWay(pieces(1000, done), ending.signal);
  setTimeout(() => ending.abort(new Error("enough")), 20);
  await expect(work).rejects.toThrow("enough");
  expect(done.length).toBeLessThan(1000);
  await expect(givingWay(pieces(1), ending.signal)).rejects.toThrow("enough");
});

test("what the work throws is thrown", async () => {
  function* broken(): InPieces<never> {
    yield;
    throw new RangeError("no such thing");
  }
  await expect(givingWay(broken())).rejects.toThrow(RangeError);
});
