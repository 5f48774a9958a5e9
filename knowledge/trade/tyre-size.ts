// Tyre sizes as written over the eras. Rolling diameter of a new tyre = rim × 25.4 + 2 × width × ratio; where no
// ratio is written: 82 % for metric radials, and for inch sizes 92 % if the width ends in 0, else 82 %.
import { sayNumber } from "./plain-numbers.ts";
import { TYRE_SIZE_FORMATS } from "./tables/tyre-size-formats.ts";
import { basisOf, type TradeReading } from "./trade-reading.ts";

/** One way to read a size. Millimetres for the tyre, inches for the rim unless `rimMillimetres` is given. */
export interface TyreSize extends TradeReading {
  readonly system: string;
  readonly written: string;
  readonly widthMillimetres: number | undefined;
  readonly aspectRatio: number | undefined;
  readonly diameterMillimetres: number | undefined;
  readonly speedLetter: string | undefined;
  readonly service: string | undefined;
}

interface SizeParts {
  readonly width?: number;
  readonly ratio?: number;
  readonly rim?: number;
  readonly speed?: string | undefined;
  readonly service?: string | undefined;
  readonly remark: string;
}

interface SizePattern {
  readonly system: string;
  readonly pattern: RegExp;
  readonly read: (groups: readonly string[]) => SizeParts;
}

const INCH = 25.4;
const START = String.raw`(?<![\w.,/])`;
const END = String.raw`(?![\w/]|[.,]\d)`;

function compile(source: string): RegExp {
  return new RegExp(`${START}${source}${END}`, "i");
}

function serviceIn(load: string | undefined, speed: string | undefined): string | undefined {
  return load === undefined || load === "" ? undefined : `${load} ${speed ?? ""}`.trim();
}

const PATTERNS: readonly SizePattern[] = [
  {
    system: "temporary spare",
    pattern: compile(String.raw`T(\d{3})\/(\d{2}) ?[RDB]? ?-?(\d{2})`),
    read: ([width, ratio, rim]) => ({
      width: Number(width),
      ratio: Number(ratio) / 100,
      rim: Number(rim) * INCH,
      remark: "T: temporary use only, for a short way at low speed",
    }),
  },
  {
    system: "P-metric",
    pattern: compile(String.raw`P(\d{3})\/(\d{2}) ?([RBD]) ?(\d{2})`),
    read: ([width, ratio, , rim]) => ({
      width: Number(width),
      ratio: Number(ratio) / 100,
      rim: Number(rim) * INCH,
      remark: "P: passenger car; R radial, B bias-belted, D diagonal",
    }),
  },
  {
    system: "millimetric",
    pattern: compile(String.raw`(\d{3})\/(\d{2}) ?([SHVZ]?)R ?([34]\d{2})`),
    read: ([width, ratio, speed, rim]) => ({
      width: Number(width),
      ratio: Number(ratio) / 100,
      rim: Number(rim),
      speed: speed || undefined,
      remark: "rim diameter in millimetres: fits only its own rim",
    }),
  },
  {
    system: "ISO metric",
    pattern: compile(String.raw`(\d{3})\/(\d{2}) ?([RBD]) ?(\d{2}) \(?(\d{2,3}(?:\/\d{2,3})?) ?([A-Y])\)?`),
    read: ([width, ratio, , rim, load, speed]) => ({
      width: Number(width),
      ratio: Number(ratio) / 100,
      rim: Number(rim) * INCH,
      service: serviceIn(load, speed),
      remark: "size with a service description after it",
    }),
  },
  {
    system: "metric radial with ratio",
    pattern: compile(String.raw`(\d{3})\/(\d{2}) ?([SHVZ]?)R ?-?(1\d|2[0-4])`),
    read: ([width, ratio, speed, rim]) => ({
      width: Number(width),
      ratio: Number(ratio) / 100,
      rim: Number(rim) * INCH,
      speed: speed || undefined,
      remark: "section, ratio and rim; a letter before R is the speed letter of its day",
    }),
  },
  {
    system: "metric radial, no ratio",
    pattern: compile(String.raw`(1\d{2}|2\d{2}) ?([SHV]?)R ?-?(1\d)`),
    read: ([width, speed, rim]) => ({
      width: Number(width),
      ratio: 0.82,
      rim: Number(rim) * INCH,
      speed: speed || undefined,
      remark: "no ratio written: the 82 series (80 in later lists)",
    }),
  },
  {
    system: "alpha-numeric",
    pattern: compile(String.raw`([A-N])(R?)(\d{2})-(1[3-7])`),
    read: ([load, radial, ratio]) => ({
      ratio: Number(ratio) / 100,
      remark: `load letter ${load?.toUpperCase()}, ${radial === "" ? "not radial" : "radial"}; the width stands in no figure`,
    }),
  },
  {
    system: "cross-ply with speed",
    pattern: compile(String.raw`(\d{1,2}[.,]\d{2}) ?([SHV]) ?(1\d)`),
    read: ([width, speed, rim]) =>
      inchSize(width ?? "", rim ?? "", "S up to 175, H up to 200, V over 200 km/h on cross-ply", speed),
  },
  {
    system: "low-pressure inch",
    pattern: compile(String.raw`(\d{1,2}[.,]\d{2}) ?(?:-|x| ) ?(1\d|2[01])`),
    read: ([width, rim]) => inchSize(width ?? "", rim ?? "", "section inches and rim inches", undefined),
  },
  {
    system: "light truck flotation",
    pattern: compile(String.raw`(\d{2})x(\d{1,2}[.,]\d{1,2}) ?[R-] ?(\d{2}) ?(?:LT)?`),
    read: ([overall, width]) => ({
      width: decimal(width ?? "") * INCH,
      remark: `overall diameter ${overall} inches is in the size itself`,
    }),
  },
  {
    system: "large-section inch",
    pattern: compile(String.raw`(\d{3}) ?[x×] ?(\d{2,3})`),
    read: ([overall, section]) => ({
      width: Number(section),
      remark: `overall diameter ${overall} mm is in the size itself`,
    }),
  },
];

function decimal(text: string): number {
  return Number(text.replace(",", "."));
}

function inchSize(width: string, rim: string, remark: string, speed: string | undefined): SizeParts {
  const ratio = width.endsWith("0") ? 0.92 : 0.82;
  return { width: decimal(width) * INCH, ratio, rim: Number(rim) * INCH, speed, remark };
}

function diameterOf(parts: SizeParts): number | undefined {
  const { width, ratio, rim } = parts;
  return width === undefined || ratio === undefined || rim === undefined
    ? undefined
    : rim + 2 * width * ratio;
}

function toTyreSize(pattern: SizePattern, match: RegExpExecArray): TyreSize | undefined {
  const row = TYRE_SIZE_FORMATS.find((format) => format.system === pattern.system);
  if (row === undefined) return undefined;
  const parts = pattern.read(match.slice(1));
  const diameter = diameterOf(parts);
  const said = diameter === undefined ? "" : `; rolling diameter new about ${sayNumber(diameter, 1)} mm`;
  return {
    system: pattern.system,
    written: match[0],
    widthMillimetres: parts.width,
    aspectRatio: parts.ratio,
    diameterMillimetres: diameter,
    speedLetter: parts.speed?.toUpperCase(),
    service: parts.service,
    reading: `${match[0]}: ${pattern.system} size, ${row.era}${said}`,
    why: parts.remark,
    basis: basisOf(row),
  };
}

/** Every system by which a size in the text can be read, the most exact first; empty when there is no size. */
export function readTyreSizes(text: string): readonly TyreSize[] {
  const clean = text.slice(0, 2000).replace(/\s{1,20}/g, " ");
  const found = PATTERNS.flatMap((pattern) => {
    const match = pattern.pattern.exec(clean);
    const size = match === null ? undefined : toTyreSize(pattern, match);
    return size === undefined ? [] : [size];
  });
  const best = found.find((size) => size.system === "ISO metric");
  return best === undefined ? found : found.filter((size) => size.system !== "metric radial with ratio");
}
