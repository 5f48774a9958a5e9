/** The marque's cars (cars.yaml): models, trims, markets, yearly production, and the serial scheme with its anchors. */
import { z } from "zod";
import { Also, DateText, Id, Name, SourceIds, Text } from "./written-forms.ts";

const CarName = z.strictObject({ id: Id, name: Name, also: Also, from: DateText, to: DateText });
/** cars.yaml */
export const Cars = z.strictObject({
  models: z.array(CarName).min(1),
  trims: z.array(z.strictObject({ ...CarName.shape, models: z.array(Id).default([]) })).default([]),
  markets: z.array(z.strictObject({ id: Id, name: Name, also: Also })).default([]),
  /** Cars finished in each calendar year. */
  production: z.record(z.string().regex(/^\d{4}$/, "a year of four figures"), z.number().nonnegative()),
  serials: z
    .strictObject({
      /** What the plate looks like: letters stand for themselves, # for a figure ("WS-####"). */
      form: Name,
      /** Documented pairs of serial and build date, rising. */
      anchors: z
        .array(
          z.strictObject({ serial: z.number().int().nonnegative(), built: DateText, sources: SourceIds }),
        )
        .min(2),
      remark: Text.optional(),
    })
    .optional(),
});
export type Cars = z.output<typeof Cars>;
