/**
 * Chance that repeats: xoshiro128** filled by SplitMix64, as its authors advise (Blackman & Vigna 2021, "Scrambled linear
 * pseudorandom number generators", ACM Trans. Math. Softw. 47:36; public domain code). The same number, the same draws everywhere.
 */

/** Gives the next number in [0, 1), in steps of 2⁻³². */
export type Chance = () => number;

export type FourWords = readonly [number, number, number, number];

/** The stream of draws that `seed` (a whole number, 0 to 2⁵³ − 1) stands for. */
export function chanceFrom(seed: number): Chance {
  const [first, second] = splitMix64(BigInt(seed), 2);
  const words = [first, second].flatMap((word = 0n) => [
    Number(BigInt.asUintN(32, word)),
    Number(BigInt.asUintN(32, word >> 32n)),
  ]);
  const [a = 1, b = 0, c = 0, d = 0] = words;
  const next = xoshiro128([a, b, c, d]);
  return () => next() / 2 ** 32;
}

/** The first `count` outputs of SplitMix64 (Steele, Lea & Flood 2014, OOPSLA 49:453) from a 64-bit state. */
export function splitMix64(state: bigint, count: number): readonly bigint[] {
  return Array.from({ length: count }, (_, index) => {
    const step = BigInt.asUintN(64, state + 0x9e3779b97f4a7c15n * BigInt(index + 1));
    const once = BigInt.asUintN(64, (step ^ (step >> 30n)) * 0xbf58476d1ce4e5b9n);
    const twice = BigInt.asUintN(64, (once ^ (once >> 27n)) * 0x94d049bb133111ebn);
    return twice ^ (twice >> 31n);
  });
}

/** xoshiro128** 1.1 from four 32-bit words, not all zero; each call gives a whole number from 0 to 2³² − 1. */
export function xoshiro128(words: FourWords): () => number {
  let [a, b, c, d] = words;
  return () => {
    const result = Math.imul(rotated(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotated(d, 11);
    return result;
  };
}

function rotated(word: number, bits: number): number {
  return (word << bits) | (word >>> (32 - bits));
}
