/** The cars against themselves: serials, trims and yearly figures outside the years of production. */
import { parseDateText } from "../calendar/date-text.ts";
import { yearInterval } from "../calendar/interval.ts";
import type { Handbook } from "../handbook/schema.ts";
import { productionSpan, spanOfTexts } from "../identification/eras.ts";
import { type Margin, note } from "./remark.ts";

/** Cars finished a little before or after the years given are no reason to doubt, in months. */
const SLACK = 2;

export function remarkCars(margin: Margin, handbook: Handbook): void {
  remarkAnchors(margin, handbook);
  remarkTrims(margin, handbook);
  remarkStrangeYears(margin, handbook);
  remarkFarAbove(margin, handbook);
  const { production } = handbook.cars;
  const span = productionSpan(handbook);
  for (let year = Math.floor(span.from / 12); year * 12 < span.to; year += 1) {
    if (Object.hasOwn(production, String(year))) continue;
    note(margin, {
      severity: "wish",
      code: "production-year-missing",
      path: ["production"],
      at: "key",
      message: `production has no figure for ${year}`,
      mend: `add ${year}: with the number made, a rough one is better than none`,
    });
  }
}

/** A figure so many times the middle one is a slip of the pen (noughts too many, or a serial): common practice, no source. */
const FAR_ABOVE = 20;

function remarkFarAbove(margin: Margin, handbook: Handbook): void {
  const figures = Object.entries(handbook.cars.production).filter(([, made]) => made > 0);
  const middle =
    figures.map(([, made]) => made).toSorted((one, other) => one - other)[figures.length >> 1] ?? 0;
  if (figures.length < 4) return;
  for (const [year, made] of figures) {
    if (made <= FAR_ABOVE * middle) continue;
    note(margin, {
      severity: "doubt",
      code: "production-year-strange",
      path: ["production", year],
      message: `${made} in ${year} is ${Math.round(made / middle)} times what was made in the middle year (${middle})`,
      mend: "correct the figure: every answer leans on it for cars of that year",
    });
  }
}

/** A figure for 1877 among models of 1970 to 1979 is a slip of the pen, and one that goes unseen: the right year then has none. */
function remarkStrangeYears(margin: Margin, handbook: Handbook): void {
  const span = productionSpan(handbook);
  for (const [year, made] of Object.entries(handbook.cars.production)) {
    const { from, to } = yearInterval(Number(year));
    if (made === 0 || (to > span.from - SLACK && from < span.to + SLACK)) continue;
    note(margin, {
      severity: "doubt",
      code: "production-year-strange",
      path: ["production", year],
      at: "key",
      message: `production has a figure for ${year}, when no model was made`,
      mend: "correct the year, or the years of the models",
    });
  }
}

function remarkAnchors(margin: Margin, handbook: Handbook): void {
  const { serials } = handbook.cars;
  const span = productionSpan(handbook);
  for (const [index, anchor] of (serials?.anchors ?? []).entries()) {
    const built = parseDateText(anchor.built);
    if (built === undefined || (built.to > span.from - SLACK && built.from < span.to + SLACK)) continue;
    note(margin, {
      severity: "doubt",
      code: "built-outside-production",
      path: ["serials", "anchors", index, "built"],
      message: `serial ${anchor.serial} was built ${anchor.built}, when no model was made`,
      mend: "correct the date, or the years of the models",
    });
  }
}

/** A trim cannot be older or younger than the models it was sold in. */
function remarkTrims(margin: Margin, handbook: Handbook): void {
  const { models, trims } = handbook.cars;
  for (const [index, trim] of trims.entries()) {
    const own = models.filter(({ id }) => trim.models.length === 0 || trim.models.includes(id));
    const spans = own.flatMap(({ from, to }) => spanOfTexts(from, to) ?? []);
    const made = spanOfTexts(trim.from, trim.to);
    const first = Math.min(...spans.map(({ from }) => from));
    const last = Math.max(...spans.map(({ to }) => to));
    if (made === undefined || (made.from >= first - SLACK && made.to <= last + SLACK)) continue;
    note(margin, {
      severity: "doubt",
      code: "period-beyond-model",
      path: ["trims", index, made.from < first - SLACK ? "from" : "to"],
      message: `the trim ${trim.id} (${trim.from} to ${trim.to}) goes beyond the years of its models`,
      mend: "correct the years of the trim or of the model",
    });
  }
}
