/** A community's accepted observations as data to take along: what was seen on which car, without numbers of chassis, and names only where they may stand. */
import { civilDayAt, type Interval } from "../../../knowledge/index.ts";
import type { ObservationsView } from "../observations/observations-view.ts";

export interface ExportedObservation {
  readonly id: string;
  readonly handbook: string;
  readonly part: string;
  /** The likeliest kind; null: none is likely. */
  readonly variant: string | null;
  readonly chance: number | null;
  /** As sightings are written: 1981-10, 1981, or two days with / between; null: not told. */
  readonly built: string | null;
  readonly model: string | null;
  readonly trim: string | null;
  readonly market: string | null;
  readonly grade: string;
  readonly seen: readonly { readonly feature: string; readonly value: unknown; readonly certainty: number }[];
  readonly by: string | null;
}

/** By id, so that the same observations give the same file. */
export function exportedObservations({ byId }: ObservationsView): readonly ExportedObservation[] {
  return [...byId]
    .filter(([, { stands }]) => stands === "accepted")
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([id, { saw, kinds, byName }]) => {
      const { built, model = null, trim = null, market = null } = saw.car;
      const [first] = kinds;
      return {
        id,
        handbook: saw.handbook,
        part: saw.part,
        variant: first?.variant ?? null,
        chance: first?.chance ?? null,
        built: built === undefined ? null : builtText(built),
        model,
        trim,
        market,
        grade: saw.grade,
        seen: saw.reports.map(({ feature, value, certainty }) => ({ feature, value, certainty })),
        by: saw.credit ? byName : null,
      };
    });
}

const NEARLY = 1e-6;

/** A whole month or year by its name, else its first and last day. */
function builtText({ from, to }: Interval): string {
  const year = String(Math.floor((from + NEARLY) / 12));
  const isAt = (instant: number, unit: number) =>
    Math.abs(instant / unit - Math.round(instant / unit)) * unit < NEARLY;
  if (isAt(from, 12) && Math.abs(to - from - 12) < NEARLY) return year;
  if (isAt(from, 1) && Math.abs(to - from - 1) < NEARLY) {
    return `${year}-${twoFigures((Math.round(from) % 12) + 1)}`;
  }
  return `${dayText(from + NEARLY)}/${dayText(to - NEARLY)}`;
}

function dayText(instant: number): string {
  const { year, month, day } = civilDayAt(instant);
  return `${year}-${twoFigures(month)}-${twoFigures(day)}`;
}

function twoFigures(number: number): string {
  return String(number).padStart(2, "0");
}
