// How metal parts are made, and the traces each way leaves.
import { FROM_MEMORY, type Sourced } from "./sourced.ts";

export interface MetalProcess extends Sourced {
  readonly process: string;
  readonly traces: string;
  readonly finish: string;
  readonly wallMillimetres: string;
  readonly use: string;
}

export const METAL_PROCESSES: readonly MetalProcess[] = [
  {
    process: "sand casting",
    traces: "rough, grain 0.1-0.5 mm; parting line wandering 0.5-1.5 mm; core vents; hand-cut gates",
    finish: "machined only where it mates",
    wallMillimetres: "3-8",
    use: "prototype to medium",
    ...FROM_MEMORY,
  },
  {
    process: "gravity die (permanent mould)",
    traces: "smoother, faint flow lines, straight parting line, chill marks",
    finish: "machined mates",
    wallMillimetres: "3-6",
    use: "hundreds to thousands",
    ...FROM_MEMORY,
  },
  {
    process: "pressure die",
    traces: "smooth bright skin, thin walls 1-3 mm, ejector-pin rings, overflow stubs",
    finish: "holes cast to size",
    wallMillimetres: "1-3",
    use: "thousands up",
    ...FROM_MEMORY,
  },
  {
    process: "investment casting",
    traces: "no parting line, fine skin, sharp letters",
    finish: "small parts",
    wallMillimetres: "2-5",
    use: "small series",
    ...FROM_MEMORY,
  },
  {
    process: "low-pressure wheel casting",
    traces: "fine skin, central gate, radial freeze lines",
    finish: "turned rim and hub face",
    wallMillimetres: "4-12",
    use: "wheels",
    ...FROM_MEMORY,
  },
  {
    process: "forging",
    traces: "smooth scale, trimmed flash line 1-4 mm wide, letters raised, ring bright and long",
    finish: "machined mates",
    wallMillimetres: "",
    use: "stressed parts",
    ...FROM_MEMORY,
  },
  {
    process: "machined from solid",
    traces: "tool marks all over, no draft",
    finish: "all faces",
    wallMillimetres: "",
    use: "prototypes, competition, modern copies",
    ...FROM_MEMORY,
  },
  {
    process: "hand-formed sheet (wheel and hammer)",
    traces: "hammer or wheel tracks, gas-welded joins planished, thickness spread 0.2-0.3 mm, wired edges",
    finish: "file marks under paint",
    wallMillimetres: "0.9-1.6",
    use: "ones to hundreds",
    ...FROM_MEMORY,
  },
  {
    process: "rubber-die or drop-hammer pressing",
    traces: "soft radii over 5 mm, wrinkles dressed at corners",
    finish: "hand trimmed",
    wallMillimetres: "0.9-1.6",
    use: "tens to hundreds",
    ...FROM_MEMORY,
  },
  {
    process: "matched-die pressing",
    traces: "radii 2-4 mm, draw lines, trimmed square with burr one side, pierced holes",
    finish: "none",
    wallMillimetres: "0.7-1.0",
    use: "thousands",
    ...FROM_MEMORY,
  },
  {
    process: "spot weld, works gun",
    traces: "round dimples 4-7 mm at even pitch 25-60 mm",
    finish: "",
    wallMillimetres: "",
    use: "",
    ...FROM_MEMORY,
  },
  {
    process: "plug weld (repair)",
    traces: "round fill 6-10 mm, ground flush, uneven pitch, heat blue",
    finish: "",
    wallMillimetres: "",
    use: "repair",
    ...FROM_MEMORY,
  },
  {
    process: "lead loading",
    traces: "file-finished grey metal seam, tin halo; soft under a point",
    finish: "",
    wallMillimetres: "",
    use: "works before about 1980, careful repair after",
    ...FROM_MEMORY,
  },
  {
    process: "seam sealer",
    traces: "brushed, wide, hard and cracked when old; gun bead even with tooled ends when new",
    finish: "",
    wallMillimetres: "",
    use: "period and repair",
    ...FROM_MEMORY,
  },
];
