// Wire colours (BS AU 7, DIN 72551) and terminal numbers (DIN 72552).
import { FROM_MEMORY, type Sourced } from "./sourced.ts";

export interface Wire extends Sourced {
  readonly standard: string;
  readonly colour: string;
  readonly letter: string;
  readonly use: string;
}

const AU7_TABLES = { source: "Published BS AU 7 tables", basis: "standard" } as const;
const DIN_TABLES = {
  source: "Two published DIN 72551 tables and a DIN 72552 list",
  basis: "standard",
} as const;

export const WIRING: readonly Wire[] = [
  { standard: "BS AU 7", colour: "brown", letter: "N", use: "main battery feed, unfused", ...AU7_TABLES },
  { standard: "BS AU 7", colour: "white", letter: "W", use: "ignition circuits", ...AU7_TABLES },
  {
    standard: "BS AU 7",
    colour: "green",
    letter: "G",
    use: "auxiliaries through the ignition switch, fused",
    ...AU7_TABLES,
  },
  {
    standard: "BS AU 7",
    colour: "purple",
    letter: "P",
    use: "auxiliaries not through the ignition switch, fused (horn, interior lamp)",
    ...AU7_TABLES,
  },
  {
    standard: "BS AU 7",
    colour: "blue",
    letter: "U",
    use: "headlamps; blue/white main, blue/red dip",
    ...AU7_TABLES,
  },
  { standard: "BS AU 7", colour: "red", letter: "R", use: "side and tail lamps", ...AU7_TABLES },
  { standard: "BS AU 7", colour: "black", letter: "B", use: "earth", ...AU7_TABLES },
  {
    standard: "BS AU 7",
    colour: "light green",
    letter: "LG",
    use: "instruments, wipers, indicators (varies)",
    ...FROM_MEMORY,
  },
  {
    standard: "BS AU 7",
    colour: "yellow",
    letter: "Y",
    use: "overdrive, fuel injection (later: door locks, other)",
    ...FROM_MEMORY,
  },
  { standard: "BS AU 7", colour: "slate", letter: "S", use: "window lifts", ...FROM_MEMORY },
  {
    standard: "BS AU 7",
    colour: "orange",
    letter: "O",
    use: "wiper circuits, later edition",
    ...FROM_MEMORY,
  },
  { standard: "BS AU 7", colour: "pink", letter: "K", use: "ballast ignition (white/pink)", ...FROM_MEMORY },
  { standard: "DIN 72551", colour: "brown", letter: "br", use: "EARTH", ...DIN_TABLES },
  {
    standard: "DIN 72551",
    colour: "red",
    letter: "rt",
    use: "terminal 30: starter to generator, ignition and light switch, unswitched loads",
    ...DIN_TABLES,
  },
  {
    standard: "DIN 72551",
    colour: "black",
    letter: "sw",
    use: "battery to starter; ignition generally (terminal 15)",
    ...DIN_TABLES,
  },
  { standard: "DIN 72551", colour: "green", letter: "gn", use: "coil to contact breaker", ...DIN_TABLES },
  {
    standard: "DIN 72551",
    colour: "grey",
    letter: "gr",
    use: "tail, side and plate lamps; grey/black left, grey/red right",
    ...DIN_TABLES,
  },
  {
    standard: "DIN 72551",
    colour: "yellow",
    letter: "ge",
    use: "dipped beam; yellow/black right",
    ...DIN_TABLES,
  },
  {
    standard: "DIN 72551",
    colour: "white",
    letter: "ws",
    use: "main beam; white/black right",
    ...DIN_TABLES,
  },
  { standard: "DIN 72551", colour: "light blue", letter: "hb", use: "warning lamps", ...DIN_TABLES },
  {
    standard: "DIN 72551",
    colour: "black/white; black/green",
    letter: "sw/ws; sw/gn",
    use: "left and right indicator",
    ...DIN_TABLES,
  },
  {
    standard: "DIN 72552 terminal",
    colour: "1",
    letter: "",
    use: "coil negative, to contact breaker",
    ...DIN_TABLES,
  },
  { standard: "DIN 72552 terminal", colour: "4", letter: "", use: "coil high tension", ...DIN_TABLES },
  {
    standard: "DIN 72552 terminal",
    colour: "15",
    letter: "",
    use: "ignition-switched positive",
    ...DIN_TABLES,
  },
  {
    standard: "DIN 72552 terminal",
    colour: "30",
    letter: "",
    use: "battery positive, direct",
    ...FROM_MEMORY,
  },
  { standard: "DIN 72552 terminal", colour: "31", letter: "", use: "earth", ...FROM_MEMORY },
  {
    standard: "DIN 72552 terminal",
    colour: "31b",
    letter: "",
    use: "switched earth (wiper park)",
    ...FROM_MEMORY,
  },
  { standard: "DIN 72552 terminal", colour: "49", letter: "", use: "flasher unit in", ...FROM_MEMORY },
  { standard: "DIN 72552 terminal", colour: "49a", letter: "", use: "flasher unit out", ...FROM_MEMORY },
  { standard: "DIN 72552 terminal", colour: "50", letter: "", use: "starter solenoid", ...FROM_MEMORY },
  { standard: "DIN 72552 terminal", colour: "53", letter: "", use: "wiper motor", ...FROM_MEMORY },
  {
    standard: "DIN 72552 terminal",
    colour: "54",
    letter: "",
    use: "stop lamps (also trailer)",
    ...FROM_MEMORY,
  },
  { standard: "DIN 72552 terminal", colour: "56", letter: "", use: "headlamp switch out", ...FROM_MEMORY },
  { standard: "DIN 72552 terminal", colour: "56a", letter: "", use: "main beam", ...FROM_MEMORY },
  { standard: "DIN 72552 terminal", colour: "56b", letter: "", use: "dipped beam", ...FROM_MEMORY },
  { standard: "DIN 72552 terminal", colour: "57", letter: "", use: "parking lamps", ...FROM_MEMORY },
  {
    standard: "DIN 72552 terminal",
    colour: "58",
    letter: "",
    use: "side, tail, plate, instrument lamps",
    ...FROM_MEMORY,
  },
  { standard: "DIN 72552 terminal", colour: "61", letter: "", use: "charge lamp", ...FROM_MEMORY },
  {
    standard: "DIN 72552 terminal",
    colour: "85 / 86",
    letter: "",
    use: "relay coil, out / in",
    ...FROM_MEMORY,
  },
  {
    standard: "DIN 72552 terminal",
    colour: "87 / 87a",
    letter: "",
    use: "relay contact, made / broken",
    ...FROM_MEMORY,
  },
  {
    standard: "DIN 72552 terminal",
    colour: "B+ / B- / D+ / DF",
    letter: "",
    use: "generator battery, earth, charge, field",
    ...FROM_MEMORY,
  },
];
