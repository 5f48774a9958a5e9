// The line to show before a step that can hurt, by the identifier that handbooks and answers carry.
import { CAUTIONS, type Caution } from "./tables/cautions.ts";

/** The words that end every caution: who decides in the end. */
export const CAUTION_TAIL = "Follow the maker's manual, local codes and licensed practice.";

/** The caution of an identifier such as "grp-dust"; undefined when there is none. */
export function cautionById(id: string): Caution | undefined {
  return CAUTIONS.find((caution) => caution.id === id);
}
