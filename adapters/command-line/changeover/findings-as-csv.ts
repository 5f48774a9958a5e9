/**
 * The findings as comma-separated text for a spreadsheet: one kind of row for everything, told apart by its first column, so that one
 * filter shows the estimates and another the cars. Dates are ISO 8601 and both ends of a stretch belong to it; chances are numbers.
 */
import {
  type EndsOfUse,
  type GroupedChangeovers,
  type Interval,
  type UseEnd,
  writeCommaSeparated,
} from "../../../knowledge/index.ts";
import type { ChainFindings, ChangeOfChain } from "./chain-findings.ts";
import { type ChangeoverFindings, isSuspect, type Judged } from "./findings.ts";
import { day, stretch } from "./findings-as-json.ts";
import type { ChangeoverQuestion } from "./question.ts";
import { useMethods } from "./say-use.ts";

const columns = [
  "row",
  "old",
  "new",
  "variant",
  "name",
  "from",
  "to",
  "middle",
  "chance",
  "sightings",
  "suspect",
] as const;
type Cells = Partial<Readonly<Record<(typeof columns)[number], string>>>;
type Told = Pick<ChangeOfChain, "old" | "new" | "month" | "interval" | "median" | "ends" | "wanted">;

/**
 * Rows: change (`from` to `to` holds it with `chance`), month (the likeliest), last-old, first-new (`chance` of being as built),
 * wanted (a build month; `chance` of the new one on it), group, end and beginning (by a method), sighting (`chance` of being not
 * the type the car was built with).
 */
export function findingsAsCsv(
  question: ChangeoverQuestion,
  findings: ChangeoverFindings | ChainFindings,
): string {
  const { judged } = findings;
  const sides = { old: question.old.join(" "), new: question.new.join(" ") };
  const rows = [...estimates(findings, sides), ...judged.map(sightingRow)];
  return writeCommaSeparated([columns, ...rows.map((row) => columns.map((column) => row[column] ?? ""))]);
}

function estimates(
  findings: ChangeoverFindings | ChainFindings,
  sides: Pick<Told, "old" | "new">,
): readonly Cells[] {
  switch (findings.kind) {
    case "chain":
      return findings.changes.flatMap((change) => [
        ...changeRows(change, findings.judged),
        ...groupRows(change.grouped, { old: change.old, new: change.new }),
      ]);
    case "change": {
      const { change, month, wanted, judged } = findings;
      const { interval, median, ends } = change;
      return [
        ...changeRows({ ...sides, month, interval, median, ends, wanted }, judged),
        ...groupRows(findings.grouped, sides),
      ];
    }
    case "one-variant":
      return [...useRows("beginning", sides, findings.beginning), ...useRows("end", sides, findings.end)];
  }
}

function changeRows(
  { old, new: fresh, month, interval, median, ends, wanted }: Told,
  judged: readonly Judged[],
): readonly Cells[] {
  const sides = { old, new: fresh };
  const seen = judged.filter(({ sighting }) =>
    `${old} ${fresh}`.split(" ").includes(sighting.variant),
  ).length;
  return [
    {
      row: "change",
      ...sides,
      ...dates(interval),
      middle: day(median),
      chance: "0.9",
      sightings: String(seen),
    },
    ...(month === undefined
      ? []
      : [{ row: "month", ...sides, ...dates(month.month), chance: number(month.chance) }]),
    ...endRows(ends, sides),
    ...wanted.map(({ built, reportedNew }) => ({
      row: "wanted",
      ...sides,
      ...dates(built),
      chance: number(reportedNew),
    })),
  ];
}

function endRows(ends: EndsOfUse, sides: Pick<Told, "old" | "new">): readonly Cells[] {
  const named = [
    ["last-old", ends.lastOld],
    ["last-old-unsuspected", ends.lastOldUnsuspected],
    ["first-new", ends.firstNew],
    ["first-new-unsuspected", ends.firstNewUnsuspected],
  ] as const;
  return named.flatMap(([row, end]) =>
    end === undefined
      ? []
      : [{ row, ...sides, name: end.id, middle: day(end.at), chance: number(end.asBuilt) }],
  );
}

function groupRows(
  grouped: readonly GroupedChangeovers[],
  sides: Pick<Told, "old" | "new">,
): readonly Cells[] {
  return grouped.flatMap(({ by, groups }) =>
    groups.map(({ market, trim, interval, median, sightings }) => ({
      row: by,
      ...sides,
      name: trim === undefined ? market : `${trim} ${market}`,
      ...dates(interval),
      middle: day(median),
      chance: "0.9",
      sightings: String(sightings),
    })),
  );
}

function useRows(row: string, sides: Pick<Told, "old" | "new">, use: UseEnd | undefined): readonly Cells[] {
  if (use === undefined) return [];
  return useMethods.flatMap(([method, name]): readonly Cells[] => {
    const limit = use[method];
    if (!limit.ok) return [];
    const { estimate, limit: outer, sightings } = limit.value;
    const [from, to] = row === "end" ? [undefined, day(outer)] : [day(outer), undefined];
    return [
      {
        row,
        ...sides,
        name,
        ...(from === undefined ? {} : { from }),
        ...(to === undefined ? {} : { to }),
        middle: day(estimate),
        chance: "0.95",
        sightings: number(sightings),
      },
    ];
  });
}

function sightingRow(one: Judged): Cells {
  const { id, variant, built } = one.sighting;
  return {
    row: "sighting",
    variant,
    name: id,
    ...dates(built),
    chance: number(one.notAsBuilt),
    suspect: isSuspect(one) ? "yes" : "no",
  };
}

function dates(interval: Interval): Pick<Cells, "from" | "to"> {
  return stretch(interval);
}

/** To the fourth place after the point, which is more than the sightings know. */
function number(value: number): string {
  return String(Number(value.toFixed(4)));
}
