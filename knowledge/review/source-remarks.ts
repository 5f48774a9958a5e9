/** Sources against what rests on them: nothing at all, something later than the source, or an edition from before it. */
import { parseDateText } from "../calendar/date-text.ts";
import { visitNamed } from "../handbook/named-places.ts";
import type { Handbook, PartKind } from "../handbook/schema.ts";
import type { Path } from "../handbook/yaml-reading.ts";
import { type Margin, note } from "./remark.ts";

/** What was written or seen at its own date cannot tell what came after; registers, papers and the like are kept up. */
const OF_ITS_DATE = new Set(["parts-list", "service-bulletin", "period-photograph", "brochure"]);

export interface PartMargin {
  readonly margin: Margin;
  readonly part: PartKind;
}

export function remarkSources(
  margin: Margin,
  parts: readonly PartMargin[],
  handbook: Handbook,
  cars: Margin | undefined,
): void {
  const used = new Set<string>();
  const collect = (value: unknown): void =>
    visitNamed(value, (place) => {
      if (place.key === "sources") for (const id of place.ids) used.add(id);
    });
  if (cars !== undefined) collect(handbook.cars);
  for (const { part } of parts) collect(part);
  const edited = parseDateText(handbook.cover.edited);
  for (const [index, { id, date }] of handbook.sources.entries()) {
    const dated = date === undefined ? undefined : parseDateText(date);
    if (dated !== undefined && edited !== undefined && dated.from >= edited.to) {
      note(margin, {
        severity: "doubt",
        code: "source-after-edition",
        path: ["sources", index, "date"],
        message: `${id} is dated ${date}, after this edition was closed (${handbook.cover.edited})`,
        mend: "correct the date, or edited: in handbook.yaml",
      });
    }
    if (used.has(id)) continue;
    note(margin, {
      severity: "wish",
      code: "source-unused",
      path: ["sources", index, "id"],
      message: `nothing rests on ${id}`,
      mend: "name it where it is the ground of a claim, or delete it",
    });
  }
  for (const one of parts) remarkEarlySources(one, handbook);
}

interface EarlySource {
  readonly date: string;
  readonly to: number;
}

/** A list or a photograph of 1978 is no ground for what began in 1981. */
function remarkEarlySources({ margin, part }: PartMargin, handbook: Handbook): void {
  const dated = new Map(
    handbook.sources.flatMap(({ id, kind, date = "" }) => {
      const span = OF_ITS_DATE.has(kind) ? parseDateText(date) : undefined;
      return span === undefined ? [] : [[id, { date, to: span.to }] as const];
    }),
  );
  for (const [index, variant] of part.variants.entries()) {
    for (const key of ["fitted", "sold"] as const) {
      for (const [position, period] of variant[key].entries()) {
        remarkPeriod(margin, period, dated, ["variants", index, key, position]);
      }
    }
  }
}

function remarkPeriod(
  margin: Margin,
  period: { readonly from: string; readonly sources: readonly string[] },
  dated: ReadonlyMap<string, EarlySource>,
  path: Path,
): void {
  const from = parseDateText(period.from);
  for (const [place, id] of period.sources.entries()) {
    const source = dated.get(id);
    if (source === undefined || from === undefined || from.from < source.to) continue;
    note(margin, {
      severity: "doubt",
      code: "source-too-early",
      path: [...path, "sources", place],
      message: `${id} is of ${source.date} and cannot know of a period that begins ${period.from}`,
      mend: "name a later source, or correct one of the two dates",
    });
  }
}
