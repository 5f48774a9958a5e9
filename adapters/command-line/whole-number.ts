/** Whole numbers as options. */
import { UsageError } from "./options.ts";

export interface WholeNumberRange {
  readonly from: number;
  readonly to: number;
  /** When the option is not given. */
  readonly otherwise: number;
}

/** The number written for an option, within its range; throws UsageError for anything else. */
export function wholeNumber(
  command: string,
  option: string,
  written: string | undefined,
  { from, to, otherwise }: WholeNumberRange,
): number {
  if (written === undefined) return otherwise;
  const value = /^\d{1,16}$/u.test(written) ? Number(written) : Number.NaN;
  if (value >= from && value <= to) return value;
  throw new UsageError(`--${option}: a whole number from ${from} to ${to} is needed`, command);
}
