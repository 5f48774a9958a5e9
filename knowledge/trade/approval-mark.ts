// Approval marks: E and a number in a circle (1958 Agreement), e and a number in a rectangle (EC directives), the
// UN regulation and the approval number beside it. The number is the country that approved, not the maker's; an
// approval cannot be older than that country's accession nor than the regulation.
import { formatInterval, parseDateText } from "../calendar/date-text.ts";
import type { Interval } from "../calendar/interval.ts";
import { APPROVAL_AUTHORITIES, type ApprovalAuthority } from "./tables/approval-authorities.ts";
import { UN_REGULATIONS, type UnRegulation } from "./tables/un-regulations.ts";
import { basisOf, type TradeReading } from "./trade-reading.ts";

/** One approval mark found in a text. `notBefore` is the first day (or year) it can have been granted. */
export interface ApprovalMark {
  readonly written: string;
  readonly authority: ApprovalAuthority | undefined;
  readonly regulation: UnRegulation | undefined;
  readonly regulationNumber: number | undefined;
  readonly notBefore: Interval | undefined;
  readonly readings: readonly TradeReading[];
}

const AGREEMENT_BEGINS = "1959-06-20";
// Numbers whose earlier holder approved before the present authority's date; the earlier day is not in the table.
const HELD_BEFORE = new Set([8, 10, 15]);

const AUTHORITY = String.raw`(?<![A-Za-z0-9])\(?([Ee])\s?(\d{1,2})\)?(?![\dA-Za-z-]|\s?mm|\.\d)`;
const REGULATION = String.raw`(?<![\dA-Za-z/])(\d{1,3})\s?R(?![A-Za-z])(?:\s{0,2}[-*–]?\s{0,2}(\d{2})(\d{0,6}))?(?!\d)`;

interface ApprovalNumber {
  readonly regulation: number;
  readonly series: string | undefined;
  readonly approval: string | undefined;
}

function findRegulation(text: string): ApprovalNumber | undefined {
  for (const match of text.matchAll(new RegExp(REGULATION, "g"))) {
    const regulation = Number(match[1]);
    const isKnown = UN_REGULATIONS.some((row) => row.number === regulation);
    if (isKnown) return { regulation, series: match[2], approval: match[3] === "" ? undefined : match[3] };
  }
  return undefined;
}

function accession(authority: ApprovalAuthority | undefined): Interval | undefined {
  if (authority === undefined) return undefined;
  if (HELD_BEFORE.has(authority.number) || authority.earliest === "") {
    return HELD_BEFORE.has(authority.number) ? parseDateText(AGREEMENT_BEGINS) : undefined;
  }
  return parseDateText(authority.earliest);
}

/** The later of two beginnings; either may be missing. */
function later(one: Interval | undefined, other: Interval | undefined): Interval | undefined {
  if (one === undefined || other === undefined) return one ?? other;
  return one.from >= other.from ? one : other;
}

function authorityReading(authority: ApprovalAuthority): TradeReading {
  const holder = authority.earlierHolder === "" ? "" : ` (${authority.earlierHolder})`;
  const since = accession(authority);
  const date =
    since === undefined ? "no day of joining in my table" : `no approval before ${formatInterval(since)}`;
  const isVacant = authority.authority === "not assigned";
  const whose = isVacant ? `not assigned${holder}` : `approved by ${authority.authority}${holder}`;
  return {
    reading: `E${authority.number}: ${whose}; ${date}`,
    why: "the number in the circle is the country that approved, not of manufacture nor of sale",
    basis: basisOf(authority),
  };
}

function directiveReading(authority: ApprovalAuthority): TradeReading {
  return {
    reading: `e${authority.number} in a rectangle: EC approval by ${authority.authority}`,
    why: "a small e in a rectangle means an EC directive, in use since 1970; for glass since Directive 92/22/EEC of 1992",
    basis: basisOf(authority),
  };
}

function regulationReadings(row: UnRegulation, number: ApprovalNumber): readonly TradeReading[] {
  const since = parseDateText(row.inForce);
  const begins = since === undefined ? row.inForce : formatInterval(since);
  const rule: TradeReading = {
    reading: `${row.number}R: UN Regulation ${row.number}, ${row.subject}; in force from ${begins}`,
    why: "a mark of a regulation cannot be older than the regulation",
    basis: basisOf(row),
  };
  if (number.series === undefined) return [rule];
  const approval = number.approval === undefined ? "" : `, approval number ${number.approval}`;
  const series: TradeReading = {
    reading: `series of amendments ${number.series}${approval}`,
    why: "the leading two figures are the series the type met; they date the type, loosely",
    basis: "1958 Agreement, approval markings; layout common practice, no source",
  };
  return [rule, series];
}

function circleReadings(
  letter: string,
  authority: ApprovalAuthority,
  isRectangle: boolean,
): readonly TradeReading[] {
  if (letter === "E") return [authorityReading(authority)];
  return isRectangle
    ? [directiveReading(authority)]
    : [directiveReading(authority), authorityReading(authority)];
}

/** The numbers of the countries a question names ("E number for Ireland"); empty when it names none. */
export function readAuthoritiesNamed(text: string): readonly TradeReading[] {
  const lower = text
    .slice(0, 2000)
    .toLowerCase()
    .replace(/\b(?:uk|britain|england)\b/, "united kingdom");
  return APPROVAL_AUTHORITIES.filter((row) => {
    const name = /^[a-z ]{4,40}/.exec(row.authority.toLowerCase())?.[0].trim() ?? "";
    return name !== "" && new RegExp(`\\b${name}\\b`).test(lower);
  }).map(authorityReading);
}

/**
 * The approval mark in a text: "E11 43R-001234", "(E4) 43 R - 00", "e1". A small e gives both readings unless
 * the words speak of a rectangle. Numbers nobody holds still read, as such. Undefined when there is no mark.
 */
export function readApprovalMark(text: string): ApprovalMark | undefined {
  const clipped = text.slice(0, 2000);
  const match = new RegExp(AUTHORITY).exec(clipped);
  const number = findRegulation(clipped);
  const authority = APPROVAL_AUTHORITIES.find((row) => row.number === Number(match?.[2]));
  if (authority === undefined && number === undefined) return undefined;
  const regulation = UN_REGULATIONS.find((row) => row.number === number?.regulation);
  const isRectangle = /rectang|square|\bbox\b/i.test(clipped) && !/circle|\bround\b/i.test(clipped);
  const letter = match?.[1] ?? "E";
  const circle = authority === undefined ? [] : circleReadings(letter, authority, isRectangle);
  const isDirective = letter === "e" && isRectangle;
  const ruleBegins = regulation === undefined ? undefined : parseDateText(regulation.inForce);
  return {
    written: [match?.[0].trim(), number === undefined ? undefined : `${number.regulation}R`]
      .filter(Boolean)
      .join(" "),
    authority,
    regulation,
    regulationNumber: number?.regulation,
    notBefore: isDirective ? parseDateText("1970") : later(accession(authority), ruleBegins),
    readings: [
      ...circle,
      ...(regulation !== undefined && number !== undefined ? regulationReadings(regulation, number) : []),
    ],
  };
}
