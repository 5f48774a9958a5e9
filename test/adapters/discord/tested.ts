// Each test of the door ends with the double having nothing to complain of.
import { afterEach, expect } from "vitest";
import { type Served, type ServedOptions, served } from "./served.ts";

/** Gives what opens the door for a test; after it the door is closed, and nothing may have broken Discord's rules. */
export function eachServed(): (options?: ServedOptions) => Promise<Served> {
  let running: Served | undefined;
  afterEach(async () => {
    const violations = running?.double.world.violations ?? [];
    await running?.close();
    running = undefined;
    expect(violations).toEqual([]);
  });
  return async (options) => {
    running = await served(options);
    return running;
  };
}
