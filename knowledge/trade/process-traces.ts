// From traces to the process that leaves them: rough inside, ejector rings, hammer tracks. Each cue is one
// sentence of the process tables; a trace that is denied ("no ribs") is not counted for.
import { METAL_PROCESSES } from "./tables/metal-processes.ts";
import { MOULDING_PROCESSES } from "./tables/moulding-processes.ts";
import { basisOf, type TradeReading } from "./trade-reading.ts";

/** A process with the traces named that speak for it, strongest support first in a list of these. */
export interface ProcessReading extends TradeReading {
  readonly process: string;
  readonly traces: readonly string[];
}

interface TraceCue {
  readonly trace: string;
  readonly pattern: RegExp;
  readonly processes: readonly string[];
}

const HAND = "hand lay-up";
const SPRAY = "spray-up";
const COLD = "cold press (matched mould, low pressure)";
const RTM = "RTM (resin injection)";
const SMC = "hot-press SMC";
const RIM = "RIM / RRIM polyurethane";
const VACUUM = "vacuum forming";
const INJECTION = "injection moulding";
const BLOW = "blow or rotational moulding";
const PREPREG = "filament or woven pre-preg";
const SPLASH = "splash copy (mould off an original)";

const CUES: readonly TraceCue[] = [
  {
    trace: "rough inner face",
    pattern:
      /rough (?:on the )?(?:inside|inner|back|rear|underside)|(?:inside|inner face|back|underside) (?:is |face |looks )?rough/,
    processes: [HAND, SPRAY],
  },
  {
    trace: "smooth on both faces",
    pattern: /smooth (?:on )?both|both (?:sides|faces) (?:are )?smooth|smooth inside and out/,
    processes: [COLD, RTM, SMC, INJECTION],
  },
  {
    trace: "mat strands or overlaps",
    pattern: /\b(?:strands?|roller|brush marks|overlaps?|chopped strand mat|mat edges?|tissue)\b/,
    processes: [HAND],
  },
  {
    trace: "short random fibre",
    pattern: /short (?:random )?(?:chopped )?fib(?:re|er)|random fib(?:re|er)|\bno mat\b/,
    processes: [SPRAY],
  },
  {
    trace: "ground or sawn edge",
    pattern: /(?:ground|sawn|cut|trimmed) edges?|edges? (?:is |are )?(?:ground|sawn|cut)/,
    processes: [HAND, SPRAY, COLD],
  },
  {
    trace: "moulded edge",
    pattern: /mou?lded edges?|edges? (?:is |are )?mou?lded/,
    processes: [SMC, INJECTION, RIM],
  },
  { trace: "ribs or bosses", pattern: /\bribs?\b|\bboss(?:es)?\b/, processes: [SMC, INJECTION] },
  {
    trace: "ejector-pin rings",
    pattern: /ejector|pin rings?|round witness marks?/,
    processes: [SMC, INJECTION, "pressure die"],
  },
  {
    trace: "one colour right through",
    pattern: /(?:grey|gray|black) (?:all the way |right )?through/,
    processes: [SMC],
  },
  { trace: "swirl mat", pattern: /\bswirl/, processes: [RTM] },
  { trace: "injection spot", pattern: /injection (?:spot|port|point)|vent spots?/, processes: [RTM] },
  {
    trace: "flexes, dents with a nail",
    pattern: /\bflex(?:es|ible)?\b|fingernail|dents? with a nail|\brubbery\b/,
    processes: [RIM],
  },
  {
    trace: "thin at the corners",
    pattern: /thin(?:s|ner|ning)? (?:out )?(?:at|in|towards) (?:the )?corners?|stretch marks?|vent pips?/,
    processes: [VACUUM],
  },
  {
    trace: "gate, sink or weld lines",
    pattern: /\bgate (?:scar|mark)|\bsinks?(?: marks?)?\b|weld lines?|knit lines?|cavity number/,
    processes: [INJECTION],
  },
  { trace: "pinched-off seam, hollow", pattern: /pinch(?:ed)?[- ]off|\bhollow\b/, processes: [BLOW] },
  { trace: "even weave", pattern: /(?:even|straight|unbroken) weave|\bpre-?preg\b/, processes: [PREPREG] },
  {
    trace: "copied scratches or ghost marks",
    pattern:
      /\bghost|copied scratch|scratches (?:are )?(?:moulded|molded|copied|reproduced)|softened? (?:edges|detail)/,
    processes: [SPLASH],
  },
  {
    trace: "sandy grain or core vents",
    pattern: /\bsand(?:y)?(?: cast)?[- ]?(?:grain|texture|finish|skin)|grainy (?:skin|surface)|core vents?/,
    processes: ["sand casting"],
  },
  {
    trace: "straight parting line, chill marks",
    pattern: /straight parting line|chill marks?/,
    processes: ["gravity die (permanent mould)"],
  },
  {
    trace: "thin bright die-cast walls",
    pattern: /overflow stubs?|holes cast to size|bright skin/,
    processes: ["pressure die"],
  },
  {
    trace: "no parting line, sharp letters",
    pattern: /no parting line/,
    processes: ["investment casting", "machined from solid"],
  },
  {
    trace: "radial freeze lines",
    pattern: /freeze lines?|central gate/,
    processes: ["low-pressure wheel casting"],
  },
  {
    trace: "trimmed flash line",
    pattern: /flash line|rings? (?:bright|long) when struck/,
    processes: ["forging"],
  },
  {
    trace: "tool marks all over",
    pattern: /tool marks? all over|machined all over|no draft/,
    processes: ["machined from solid"],
  },
  {
    trace: "hammer or wheel tracks",
    pattern: /hammer (?:marks?|tracks?)|wheel(?:ing)? tracks?|wired edges?|gas[- ]weld/,
    processes: ["hand-formed sheet (wheel and hammer)"],
  },
  {
    trace: "dressed wrinkles, soft radii",
    pattern: /dressed wrinkles?|wrinkles? (?:dressed|at corners)|soft radii/,
    processes: ["rubber-die or drop-hammer pressing"],
  },
  {
    trace: "burr on one side, draw lines",
    pattern: /burr on one side|draw lines?|pierced holes?/,
    processes: ["matched-die pressing"],
  },
  {
    trace: "even round dimples",
    pattern: /(?:even|round) dimples?|spot[- ]welds?/,
    processes: ["spot weld, works gun"],
  },
  { trace: "ground-flush round fill", pattern: /plug[- ]weld|round fill/, processes: ["plug weld (repair)"] },
  {
    trace: "grey file-finished seam",
    pattern: /lead(?:ed)? seams?|tin halo|lead[- ]load/,
    processes: ["lead loading"],
  },
  {
    trace: "brushed or gunned sealer",
    pattern: /seam sealer|gun(?:ned)? bead|brushed sealer/,
    processes: ["seam sealer"],
  },
];

const DENIED = /(?:\bno|\bnot|\bwithout|\bnever|n't)(?: any| a)?$/;

function isDenied(text: string, at: number): boolean {
  return DENIED.test(text.slice(Math.max(0, at - 14), at).trimEnd());
}

function tracesIn(text: string): readonly TraceCue[] {
  const lower = text.toLowerCase();
  return CUES.filter((cue) => {
    const match = cue.pattern.exec(lower);
    return match !== null && !isDenied(lower, match.index);
  });
}

function explain(process: string): { readonly what: string; readonly basis: string } {
  const moulding = MOULDING_PROCESSES.find((row) => row.process === process);
  if (moulding !== undefined) return { what: moulding.traces, basis: basisOf(moulding) };
  const metal = METAL_PROCESSES.find((row) => row.process === process);
  return metal === undefined ? { what: "", basis: "" } : { what: metal.traces, basis: basisOf(metal) };
}

/**
 * The processes for which any trace named in the words speaks, most traces first, ties in table order. Empty
 * when no trace is recognised. A process with fewer traces is kept: one trace may have been misread.
 */
export function processesOfTraces(text: string): readonly ProcessReading[] {
  const found = tracesIn(text.slice(0, 2000));
  const order = [...MOULDING_PROCESSES, ...METAL_PROCESSES].map((row) => row.process);
  return order
    .map((process) => ({ process, cues: found.filter((cue) => cue.processes.includes(process)) }))
    .filter((entry) => entry.cues.length > 0)
    .toSorted((one, other) => other.cues.length - one.cues.length)
    .map(({ process, cues }) => {
      const traces = cues.map((cue) => cue.trace);
      const { what, basis } = explain(process);
      return {
        process,
        traces,
        reading: process,
        why: `${traces.join(", ")}; it usually shows ${what}`,
        basis,
      };
    });
}
