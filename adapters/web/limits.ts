/** How much and how often: sizes in bytes, rates by what they protect. Common practice for a club's site, no source. */
import { type RateLimit, rateLimit } from "./rate-limit.ts";

export const formBytes = 64 * 1024;
export const photographBytes = 8 * 1024 * 1024;
export const mostPhotographs = 4;
/** A form with all its photographs. */
export const uploadBytes = mostPhotographs * photographBytes + formBytes;
export const mostStreams = 500;
export const mostStreamsOfOne = 6;

export interface Limits {
  /** Any request of one address. */
  readonly requests: RateLimit;
  /** What is said, whatever else writes, and what takes long to make. */
  readonly writing: RateLimit;
  readonly signIn: RateLimit;
  readonly webhook: RateLimit;
}

export function openLimits(milliseconds: () => number): Limits {
  const limit = (burst: number, perMinute: number) => rateLimit({ burst, perMinute }, milliseconds);
  return {
    requests: limit(3000, 30_000),
    writing: limit(120, 120),
    signIn: limit(10, 10),
    webhook: limit(120, 240),
  };
}
