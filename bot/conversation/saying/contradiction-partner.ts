/** The fact that does not go with a doubted one: without it the doubted fact would be believed. */
import type { Identified } from "../doubt.ts";

/** Feature id of the partner; undefined when no single fact is at odds with the doubted one. */
export function partnerOf(
  { identification }: Pick<Identified, "identification">,
  doubted: string,
): string | undefined {
  return identification.contradictions.find((one) => one.feature === doubted)?.against ?? undefined;
}
