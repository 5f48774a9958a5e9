/**
 * How often one address, or one visitor, may ask: a bucket of tokens each that fills again with time. In memory: every process
 * has its own, which is what protects it.
 */

export interface Rate {
  /** So many at once. */
  readonly burst: number;
  readonly perMinute: number;
}

export interface RateLimit {
  /** Takes one token of `who`; false when there is none. */
  take(who: string): boolean;
}

/** Buckets beyond this are forgotten, the fullest soonest: somebody new is let in rather than memory filled. */
const MOST_BUCKETS = 20_000;

/** `milliseconds`: the clock. */
export function rateLimit({ burst, perMinute }: Rate, milliseconds: () => number): RateLimit {
  const buckets = new Map<string, { tokens: number; at: number }>();
  return {
    take(who) {
      const now = milliseconds();
      const bucket = buckets.get(who) ?? { tokens: burst, at: now };
      const tokens = Math.min(burst, bucket.tokens + (Math.max(0, now - bucket.at) / 60_000) * perMinute);
      const isLeft = tokens >= 1;
      // Put in again at the end, so that the first of the map is the one not seen for longest.
      buckets.delete(who);
      buckets.set(who, { tokens: isLeft ? tokens - 1 : tokens, at: now });
      if (buckets.size > MOST_BUCKETS) {
        const [oldest] = buckets.keys();
        if (oldest !== undefined) buckets.delete(oldest);
      }
      return isLeft;
    },
  };
}
