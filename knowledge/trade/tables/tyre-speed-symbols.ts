// Speed symbols, and the speed letters that stood inside early radial sizes.
import { FROM_MEMORY, type Sourced } from "./sourced.ts";

export interface TyreSpeedSymbol extends Sourced {
  readonly symbol: string;
  readonly kilometresPerHour: string;
  readonly place: string;
}

const SYMBOL_TABLES = { source: "Published speed symbol tables", basis: "standard" } as const;

export const TYRE_SPEED_SYMBOLS: readonly TyreSpeedSymbol[] = [
  {
    symbol: "A1",
    kilometresPerHour: "5",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "A2",
    kilometresPerHour: "10",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "A3",
    kilometresPerHour: "15",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "A4",
    kilometresPerHour: "20",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "A5",
    kilometresPerHour: "25",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "A6",
    kilometresPerHour: "30",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "A7",
    kilometresPerHour: "35",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "A8",
    kilometresPerHour: "40",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "B",
    kilometresPerHour: "50",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "C",
    kilometresPerHour: "60",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "D",
    kilometresPerHour: "65",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "E",
    kilometresPerHour: "70",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "F",
    kilometresPerHour: "80",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "G",
    kilometresPerHour: "90",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "J",
    kilometresPerHour: "100",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "K",
    kilometresPerHour: "110",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "L",
    kilometresPerHour: "120",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "M",
    kilometresPerHour: "130",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "N",
    kilometresPerHour: "140",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "P",
    kilometresPerHour: "150",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "Q",
    kilometresPerHour: "160",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "R",
    kilometresPerHour: "170",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "S",
    kilometresPerHour: "180",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "T",
    kilometresPerHour: "190",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "U",
    kilometresPerHour: "200",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "H",
    kilometresPerHour: "210",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "V",
    kilometresPerHour: "240",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "W",
    kilometresPerHour: "270",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "Y",
    kilometresPerHour: "300",
    place: "service description, after the load index",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "SR",
    kilometresPerHour: "to 180",
    place: "inside an early radial size, e.g. 165 SR 15",
    ...SYMBOL_TABLES,
  },
  { symbol: "HR", kilometresPerHour: "to 210", place: "inside an early radial size", ...SYMBOL_TABLES },
  {
    symbol: "VR",
    kilometresPerHour: "over 210",
    place: "inside the size; NOT the 240 of the later V",
    ...SYMBOL_TABLES,
  },
  {
    symbol: "ZR",
    kilometresPerHour: "over 240",
    place: "inside the size; W or Y may follow in the service description",
    ...SYMBOL_TABLES,
  },
  { symbol: "(Y)", kilometresPerHour: "over 300", place: "service description in brackets", ...FROM_MEMORY },
];
