/** cars.yaml against itself: models, trims and markets, and a serial scheme whose anchors rise. */
import { parseDateText } from "../calendar/date-text.ts";
import type { Interval } from "../calendar/interval.ts";
import { yearInterval } from "../calendar/interval.ts";
import { type CheckSheet, checkAllKnown, checkUnique, fault } from "./check-sheet.ts";
import type { Cars } from "./schema.ts";
import { checkPeriod } from "./variant-check.ts";

/** Checks cars.yaml; its sources are checked by the caller. */
export function checkCars(sheet: CheckSheet, cars: Cars): void {
  const models = checkUnique(sheet, "model", cars.models, ["models"]);
  checkUnique(sheet, "trim", cars.trims, ["trims"]);
  checkUnique(sheet, "market", cars.markets, ["markets"]);
  for (const [index, model] of cars.models.entries()) checkPeriod(sheet, model, ["models", index]);
  for (const [index, trim] of cars.trims.entries()) {
    checkPeriod(sheet, trim, ["trims", index]);
    checkAllKnown(sheet, "model", trim.models, models, ["trims", index, "models"]);
  }
  if (cars.serials !== undefined) checkSerials(sheet, cars.serials);
}

/** The years in which cars were made, by the models and by the yearly figures. */
export function productionYears(cars: Cars): Interval {
  const made = Object.entries(cars.production).filter(([, count]) => count > 0);
  const spans = [
    ...made.map(([year]) => yearInterval(Number(year))),
    ...cars.models.flatMap((model) => [parseDateText(model.from), parseDateText(model.to)]),
  ].filter((span) => span !== undefined);
  return {
    from: Math.min(...spans.map(({ from }) => from)),
    to: Math.max(...spans.map(({ to }) => to)),
  };
}

function checkSerials(sheet: CheckSheet, serials: NonNullable<Cars["serials"]>): void {
  if (!serials.form.includes("#")) {
    const message = `the serial form "${serials.form}" has no place for figures`;
    const mend = "write # for each figure, such as WS-####";
    fault(sheet, { code: "serial-form", path: ["serials", "form"], message, mend });
  }
  for (const [index, anchor] of serials.anchors.entries()) {
    const former = serials.anchors[index - 1];
    if (former === undefined) continue;
    const path = ["serials", "anchors", index];
    if (anchor.serial <= former.serial) {
      const message = `serial ${anchor.serial} does not rise above the one before it, ${former.serial}`;
      const mend = "list the anchors from the lowest serial to the highest, each once";
      fault(sheet, { code: "serial-order", path: [...path, "serial"], message, mend });
    }
    const built = parseDateText(anchor.built);
    const formerBuilt = parseDateText(former.built);
    if (built === undefined || formerBuilt === undefined || built.to > formerBuilt.from) continue;
    const message = `serial ${anchor.serial} was built (${anchor.built}) before ${former.serial} (${former.built})`;
    fault(sheet, {
      code: "serial-order",
      path: [...path, "built"],
      message,
      mend: "correct one of the two dates",
    });
  }
}
