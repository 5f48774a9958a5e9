/** Mountings: those that nothing has, and those that go on nothing. */
import type { PartKind } from "../handbook/schema.ts";
import { type Margin, note } from "./remark.ts";

export function remarkMountings(margin: Margin, part: PartKind): void {
  const worn = new Set(part.variants.map(({ mounting }) => mounting));
  for (const [index, { id }] of part.mountings.entries()) {
    const path = ["mountings", index, "id"];
    const fits = part.fits.filter((fit) => fit.part === id);
    const isOnCar = part.fits.some((fit) => fit.car === id);
    if (!worn.has(id) && !isOnCar) {
      note(margin, {
        severity: "doubt",
        code: "mounting-unused",
        path,
        message: `no variant has the mounting ${id}, and nothing is said to fit it`,
        mend: "name it on a variant (mounting:) or in fits:, or delete it",
      });
      continue;
    }
    if (!worn.has(id) || part.fits.length === 0 || fits.some(({ fit }) => fit !== "no")) continue;
    note(margin, {
      severity: "doubt",
      code: "mounting-fits-nothing",
      path,
      message: `parts with the mounting ${id} fit nothing, not even what they came on`,
      mend: `add { part: ${id}, car: ${id}, fit: direct, how: … } to fits:`,
    });
  }
}
