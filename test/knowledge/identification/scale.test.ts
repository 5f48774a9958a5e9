import { expect, test } from "vitest";
import { largeHandbook, turnTimes } from "../../bench/identification-at-scale.ts";

// Aimed at: 15 ms a turn for 2,000 and 300 on an idle machine (test/bench). The bound is loose because tests share the machine with others.
test("a turn over 1,000 variants and 150 features takes milliseconds, not seconds", {
  timeout: 120_000,
}, () => {
  const handbook = largeHandbook(1000, 150);
  for (const goal of ["which-variant", "right-for-car"] as const) {
    const { turnMilliseconds, compileMilliseconds } = turnTimes(handbook, goal, 1);
    const median = [...turnMilliseconds].sort((one, other) => one - other)[turnMilliseconds.length >> 1] ?? 0;
    expect(median).toBeLessThan(150);
    expect(compileMilliseconds).toBeLessThan(10_000);
  }
});
