import { describe, expect, test } from "vitest";
import { processesOfTraces } from "../../../knowledge/trade/process-traces.ts";
import { METAL_PROCESSES } from "../../../knowledge/trade/tables/metal-processes.ts";
import { MOULDING_PROCESSES } from "../../../knowledge/trade/tables/moulding-processes.ts";

describe("traces of a process", () => {
  test.each([
    ["rough inside with mat strands and a ground edge", "hand lay-up"],
    ["short random fibre, no mat edges, rough inside", "spray-up"],
    ["ribs and ejector rings, grey right through, moulded edge", "hot-press SMC"],
    ["smooth both sides, swirl mat shows, injection spot", "RTM (resin injection)"],
    ["it flexes and dents with a nail", "RIM / RRIM polyurethane"],
    ["thins at the corners", "vacuum forming"],
    ["gate scar, sink marks and weld lines", "injection moulding"],
    ["ghost of the original mark and softened edges", "splash copy (mould off an original)"],
    ["hammer tracks and wired edges", "hand-formed sheet (wheel and hammer)"],
    ["burr on one side and draw lines", "matched-die pressing"],
    ["trimmed flash line", "forging"],
    ["straight parting line and chill marks", "gravity die (permanent mould)"],
    ["overflow stubs, ejector rings", "pressure die"],
    ["even dimples", "spot weld, works gun"],
    ["plug welds", "plug weld (repair)"],
  ])("%s: %s comes first", (words, process) => {
    expect(processesOfTraces(words)[0]?.process).toBe(process);
  });

  test("a rough inner face leaves both open-mould ways standing", () => {
    const found = processesOfTraces("rough inside").map((reading) => reading.process);
    expect(found).toEqual(["hand lay-up", "spray-up"]);
  });

  test("a denied trace is not counted", () => {
    const withRibs = processesOfTraces("ribs, grey through").map((reading) => reading.traces);
    const without = processesOfTraces("no ribs, grey through").map((reading) => reading.traces);
    expect(withRibs[0]).toContain("ribs or bosses");
    expect(without.flat()).not.toContain("ribs or bosses");
  });

  test("no trace, no process", () => {
    expect(processesOfTraces("it is red")).toEqual([]);
  });

  test("every process of the tables can be named by some trace", () => {
    const words =
      "rough inside strands short random fibre ground edge moulded edge ribs ejector grey through swirl injection spot fingernail thin at the corners gate scar hollow even weave ghost sandy grain, straight parting line, overflow stubs, no parting line, freeze lines, flash line, hammer tracks, soft radii, burr on one side, even dimples, plug weld, lead seam, seam sealer, smooth both sides";
    const named = new Set(processesOfTraces(words).map((reading) => reading.process));
    const all = [...MOULDING_PROCESSES, ...METAL_PROCESSES].map((row) => row.process);
    expect(all.filter((process) => !named.has(process))).toEqual([]);
  });
});
