// Exact unit factors. Source: NIST Special Publication 811 (2008), Appendix B: inch 25.4 mm, pound
// 0.45359237 kg, standard gravity 9.80665 m/s², US gallon 231 in³, imperial gallon 4.54609 L; the rest follow
// by exact arithmetic from these and are written so.

type QuantityKind =
  | "length"
  | "mass"
  | "torque"
  | "force"
  | "pressure"
  | "power"
  | "volume"
  | "density"
  | "speed"
  | "temperature";

/** A unit: `value × factor` is the SI value; a temperature is first shifted by `offset`. */
export interface Unit {
  readonly id: string;
  readonly kind: QuantityKind;
  readonly factor: number;
  readonly offset?: number;
  readonly names: readonly string[];
}

const INCH = 0.0254;
const POUND = 0.45359237;
const GRAVITY = 9.80665;
const POUND_FORCE = POUND * GRAVITY;
const MERCURY_INCH = 3386.389; // conventional inch of mercury at 0 °C, NIST SP 811

export const UNITS: readonly Unit[] = [
  { id: "mm", kind: "length", factor: 0.001, names: ["mm", "millimetre", "millimeter"] },
  { id: "cm", kind: "length", factor: 0.01, names: ["cm", "centimetre", "centimeter"] },
  { id: "m", kind: "length", factor: 1, names: ["m", "metre", "meter"] },
  { id: "km", kind: "length", factor: 1000, names: ["km", "kilometre", "kilometer"] },
  { id: "in", kind: "length", factor: INCH, names: ["in", "inch", "inches", '"', "″", "”"] },
  { id: "thou", kind: "length", factor: INCH / 1000, names: ["thou"] },
  { id: "ft", kind: "length", factor: 12 * INCH, names: ["ft", "foot", "feet", "'"] },
  { id: "mile", kind: "length", factor: 63_360 * INCH, names: ["mile"] },
  { id: "g", kind: "mass", factor: 0.001, names: ["g", "gram", "gramme", "gr"] },
  { id: "kg", kind: "mass", factor: 1, names: ["kg", "kilo", "kilogram", "kilogramme"] },
  { id: "lb", kind: "mass", factor: POUND, names: ["lb", "pound"] },
  { id: "oz", kind: "mass", factor: POUND / 16, names: ["oz", "ounce"] },
  { id: "st", kind: "mass", factor: 14 * POUND, names: ["stone", "st"] },
  { id: "N", kind: "force", factor: 1, names: ["newton"] },
  { id: "lbf", kind: "force", factor: POUND_FORCE, names: ["lbf"] },
  { id: "N·m", kind: "torque", factor: 1, names: ["nm", "n·m", "n m", "newton metre", "newton meter"] },
  {
    id: "lbf·ft",
    kind: "torque",
    factor: POUND_FORCE * 12 * INCH,
    names: [
      "lbf·ft",
      "lbf ft",
      "lb ft",
      "lb-ft",
      "ft lb",
      "ft-lb",
      "ft lbs",
      "ft-lbs",
      "foot pound",
      "lbft",
      "ftlb",
    ],
  },
  {
    id: "lbf·in",
    kind: "torque",
    factor: POUND_FORCE * INCH,
    names: ["lbf·in", "lbf in", "lb in", "in lb", "in-lb", "inch pound"],
  },
  { id: "kgf·m", kind: "torque", factor: GRAVITY, names: ["kgf·m", "kgf m", "kgm", "kg m", "mkg"] },
  { id: "Pa", kind: "pressure", factor: 1, names: ["pa", "pascal"] },
  { id: "kPa", kind: "pressure", factor: 1000, names: ["kpa"] },
  { id: "bar", kind: "pressure", factor: 100_000, names: ["bar"] },
  { id: "psi", kind: "pressure", factor: POUND_FORCE / (INCH * INCH), names: ["psi", "lbf/in²", "lb/sq in"] },
  { id: "atm", kind: "pressure", factor: 101_325, names: ["atm", "atmosphere"] },
  { id: "inHg", kind: "pressure", factor: MERCURY_INCH, names: ["inhg", "in hg"] },
  { id: "W", kind: "power", factor: 1, names: ["watt"] },
  { id: "kW", kind: "power", factor: 1000, names: ["kw", "kilowatt"] },
  { id: "hp", kind: "power", factor: 550 * POUND_FORCE * 12 * INCH, names: ["hp", "bhp", "horsepower"] },
  { id: "metric hp", kind: "power", factor: 75 * GRAVITY, names: ["metric hp", "ps", "cv", "pk"] },
  { id: "L", kind: "volume", factor: 0.001, names: ["l", "litre", "liter"] },
  { id: "US gal", kind: "volume", factor: 231 * INCH ** 3, names: ["us gal", "us gallon"] },
  {
    id: "imp gal",
    kind: "volume",
    factor: 0.00454609,
    names: ["imp gal", "imperial gallon", "uk gallon", "gallon", "gal"],
  },
  { id: "US pt", kind: "volume", factor: (231 * INCH ** 3) / 8, names: ["us pint"] },
  { id: "imp pt", kind: "volume", factor: 0.00454609 / 8, names: ["imp pint", "imperial pint", "pint"] },
  { id: "cm³", kind: "volume", factor: 1e-6, names: ["cm³", "cm3", "cc", "ml"] },
  {
    id: "in³",
    kind: "volume",
    factor: INCH ** 3,
    names: ["in³", "in3", "cu in", "cubic inch", "cubic inches"],
  },
  { id: "g/cm³", kind: "density", factor: 1000, names: ["g/cm³", "g/cm3", "g/cc"] },
  { id: "kg/m³", kind: "density", factor: 1, names: ["kg/m³", "kg/m3"] },
  { id: "lb/in³", kind: "density", factor: POUND / INCH ** 3, names: ["lb/in³", "lb/in3"] },
  { id: "lb/ft³", kind: "density", factor: POUND / (12 * INCH) ** 3, names: ["lb/ft³", "lb/ft3"] },
  { id: "km/h", kind: "speed", factor: 1 / 3.6, names: ["km/h", "kmh", "kph"] },
  { id: "mph", kind: "speed", factor: (63_360 * INCH) / 3600, names: ["mph"] },
  {
    id: "°C",
    kind: "temperature",
    factor: 1,
    offset: 273.15,
    names: ["°c", "c", "celsius", "deg c", "degree c", "degrees c"],
  },
  {
    id: "°F",
    kind: "temperature",
    factor: 5 / 9,
    offset: 459.67,
    names: ["°f", "f", "fahrenheit", "deg f", "degree f", "degrees f"],
  },
];

/** The unit a word names, singular or plural; undefined when it names none. */
export function findUnit(word: string): Unit | undefined {
  const name = word.trim().toLowerCase().replace(/\.$/, "").replace(/\s+/g, " ");
  const exact = UNITS.find((unit) => unit.names.includes(name));
  if (exact !== undefined || name.length < 3 || !name.endsWith("s")) return exact;
  return UNITS.find((unit) => unit.names.includes(name.slice(0, -1)));
}

/** The value in another unit of the same kind; undefined for unknown units or unlike kinds. */
export function convertUnits(value: number, fromId: string, toId: string): number | undefined {
  const from = UNITS.find((unit) => unit.id === fromId);
  const to = UNITS.find((unit) => unit.id === toId);
  if (from === undefined || to === undefined || from.kind !== to.kind) return undefined;
  return ((value + (from.offset ?? 0)) * from.factor) / to.factor - (to.offset ?? 0);
}
