/** Fitted and sale periods: times for which no variant is known, two variants on the same cars, dates out of production. */
import { formatInterval } from "../calendar/date-text.ts";
import { type Interval, intersect } from "../calendar/interval.ts";
import type { FittedPeriod, Handbook, PartKind } from "../handbook/schema.ts";
import { productionSpan, spanOfTexts } from "../identification/eras.ts";
import {
  type CarKind,
  carKinds,
  type Gap,
  gapsOf,
  type PlacedPeriod,
  periodsFor,
  placedPeriods,
} from "./fitted-coverage.ts";
import { type Margin, note } from "./remark.ts";
import { crowdsOf, noteCrowd } from "./share-remarks.ts";

/** How far an end may be off, in months; as surely as identification takes it. */
const endMonths: Readonly<Record<FittedPeriod["start"], number>> = { exact: 0.5, about: 2, rough: 6 };
/** Both kinds lay on the shelf for some weeks at a running change: so long an overlap is ordinary, in months. */
const ORDINARY_OVERLAP = 6;
/** Shares are rounded: two that pass the whole by less than this are no contradiction. */
const SHARE_SLACK = 0.05;

export function remarkPeriods(margin: Margin, handbook: Handbook, part: PartKind): void {
  const periods = placedPeriods(part);
  const kinds = carKinds(handbook);
  remarkGaps(margin, handbook, periods, kinds);
  remarkOverlaps(margin, part, periods, kinds);
  for (const placed of periods) remarkBeyond(margin, handbook, part, placed);
  remarkSales(margin, handbook, part);
}

interface SharedGap {
  gap: Gap;
  readonly kinds: CarKind[];
}

/** One remark a gap between the same two periods, however many kinds of car it concerns. */
function remarkGaps(
  margin: Margin,
  handbook: Handbook,
  periods: readonly PlacedPeriod[],
  kinds: readonly CarKind[],
): void {
  const shared = new Map<string, SharedGap>();
  for (const kind of kinds) {
    for (const gap of gapsOf(kind, periodsFor(periods, kind)).filter(isLong)) {
      const ends = [gap.before, gap.after].map((end) => `${end?.variant} ${end?.position}`);
      const key = ends.join(" ");
      const known = shared.get(key);
      if (known === undefined) shared.set(key, { gap, kinds: [kind] });
      else {
        known.kinds.push(kind);
        const { from, to } = known.gap;
        known.gap = { ...known.gap, from: Math.min(from, gap.from), to: Math.max(to, gap.to) };
      }
    }
  }
  for (const { gap, kinds: affected } of shared.values()) {
    noteGap(margin, gap, wordsOf(handbook, affected, kinds));
  }
}

function isLong({ from, to, before, after }: Gap): boolean {
  const slackBefore = before === undefined ? 1 : endMonths[before.period.end];
  const slackAfter = after === undefined ? 1 : endMonths[after.period.start];
  return to - from > slackBefore + slackAfter;
}

function noteGap(margin: Margin, gap: Gap, whom: string): void {
  const place = gap.before ?? gap.after;
  const path =
    place === undefined
      ? ["variants"]
      : ["variants", place.variant, "fitted", place.position, place === gap.before ? "to" : "from"];
  note(margin, {
    severity: "doubt",
    code: "period-gap",
    path,
    message: `no variant is known for those built ${formatInterval({ from: gap.from, to: gap.to })}${whom}`,
    mend: "lengthen a period, mark its end rough, or add what was fitted then, if only as one of unknown make",
  });
}

/** Which cars, in names, when it is not all of them: " (Touring, America; …)". */
function wordsOf(handbook: Handbook, affected: readonly CarKind[], all: readonly CarKind[]): string {
  if (affected.length === all.length) return "";
  const { models, trims, markets } = handbook.cars;
  const nameIn = (list: readonly { readonly id: string; readonly name: string }[], id: string | undefined) =>
    list.find((one) => one.id === id)?.name;
  const names = affected.map((kind) =>
    [
      models.length > 1 ? nameIn(models, kind.model) : undefined,
      nameIn(trims, kind.trim),
      nameIn(markets, kind.market),
    ]
      .filter((name) => name !== undefined)
      .join(", "),
  );
  const shown = names.slice(0, 3).join("; ");
  return names.length > 3 ? ` (${shown}; and ${names.length - 3} more)` : ` (${shown})`;
}

function remarkOverlaps(
  margin: Margin,
  part: PartKind,
  periods: readonly PlacedPeriod[],
  kinds: readonly CarKind[],
): void {
  const noted = new Set<string>();
  for (const kind of kinds) {
    const own = periodsFor(periods, kind);
    for (const [index, one] of own.entries()) {
      for (const other of own.slice(index + 1)) {
        const key = [one.variant, one.position, other.variant, other.position].join(" ");
        if (noted.has(key) || !contradict(one, other, kind)) continue;
        noted.add(key);
        noteOverlap(margin, part, one, other);
      }
    }
    remarkCrowds(margin, part, kind, own, noted);
  }
}

function remarkCrowds(
  margin: Margin,
  part: PartKind,
  kind: CarKind,
  own: readonly PlacedPeriod[],
  noted: Set<string>,
): void {
  for (const crowd of crowdsOf(kind, own, surely)) {
    const key = crowd.periods.map(({ variant, position }) => `${variant} ${position}`).join();
    const isLong = crowd.to - crowd.from > ORDINARY_OVERLAP;
    if (noted.has(key) || !isLong || hasPair(crowd.periods, kind)) continue;
    noted.add(key);
    noteCrowd(margin, part, crowd);
  }
}

/** A period as far as it is sure of its ends. */
function surely({ from, to, period }: PlacedPeriod): Interval {
  return { from: from + endMonths[period.start], to: to - endMonths[period.end] };
}

/** Whether two of them are remarked on already. */
function hasPair(periods: readonly PlacedPeriod[], kind: CarKind): boolean {
  return periods.some((one, index) => periods.slice(index + 1).some((other) => contradict(one, other, kind)));
}

function contradict(one: PlacedPeriod, other: PlacedPeriod, kind: CarKind): boolean {
  const common = intersect(one, other);
  const made = common && intersect(common, kind.made);
  if (made === undefined) return false;
  if (one.variant === other.variant) return true;
  if (one.period.share + other.period.share <= 1 + SHARE_SLACK) return false;
  const slack = endMonths[one.period.end] + endMonths[other.period.start];
  return made.to - made.from > ORDINARY_OVERLAP + slack;
}

function noteOverlap(margin: Margin, part: PartKind, one: PlacedPeriod, other: PlacedPeriod): void {
  const common = intersect(one, other) ?? one;
  const [first, second] = [one, other].map(({ variant }) => part.variants[variant]?.id ?? "");
  const when = formatInterval({ from: common.from, to: common.to });
  const path = ["variants", other.variant, "fitted", other.position];
  if (one.variant === other.variant) {
    note(margin, {
      severity: "doubt",
      code: "period-twice",
      path,
      message: `two periods of ${first} overlap, ${when}`,
      mend: "make them one, or give them different models, trims or markets",
    });
    return;
  }
  note(margin, {
    severity: "doubt",
    code: "period-overlap",
    path,
    message: `${first} and ${second} are both on all of the same cars, ${when}`,
    mend: "give each its share: (0.7 and 0.3), or its models, trims or markets, or correct the dates",
  });
}

function remarkBeyond(margin: Margin, handbook: Handbook, part: PartKind, placed: PlacedPeriod): void {
  const { period, variant, position } = placed;
  const made = madeFor(handbook, period);
  if (made === undefined || intersect(placed, productionSpan(handbook)) === undefined) return;
  const path = ["variants", variant, "fitted", position];
  const id = part.variants[variant]?.id ?? "";
  const early = made.from - placed.from > endMonths[period.start] + 1;
  const late = placed.to - made.to > endMonths[period.end] + 1;
  if (!early && !late) return;
  note(margin, {
    severity: "doubt",
    code: "period-beyond-model",
    path: [...path, early ? "from" : "to"],
    message: `${id} is fitted ${period.from} to ${period.to}, but what it is fitted to was made ${formatInterval(made)}`,
    mend: "correct the date, or name the models and trims it belongs to",
  });
}

/** When the models and trims that a period names were made, together. */
function madeFor(handbook: Handbook, period: FittedPeriod): Interval | undefined {
  const kinds = carKinds(handbook).filter(
    ({ model, trim }) =>
      (period.models.length === 0 || period.models.includes(model)) &&
      (period.trims.length === 0 || trim === undefined || period.trims.includes(trim)),
  );
  if (kinds.length === 0) return undefined;
  return {
    from: Math.min(...kinds.map(({ made }) => made.from)),
    to: Math.max(...kinds.map(({ made }) => made.to)),
  };
}

/** A service part or a reproduction cannot be older than what it serves or copies. */
function remarkSales(margin: Margin, handbook: Handbook, part: PartKind): void {
  const production = productionSpan(handbook);
  for (const [index, { id, origin, sold }] of part.variants.entries()) {
    if (origin === "other-maker") continue;
    for (const [position, period] of sold.entries()) {
      const span = spanOfTexts(period.from, period.to);
      if (span === undefined || span.from >= production.from - 1) continue;
      note(margin, {
        severity: "doubt",
        code: "sale-before-production",
        path: ["variants", index, "sold", position, "from"],
        message: `${id} was sold from ${period.from}, before production began (${formatInterval(production)})`,
        mend: "correct the date, or write origin: other-maker",
      });
    }
  }
}
