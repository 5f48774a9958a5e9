/** Which units a reader thinks in: as the page around the ask box says, else as the language of the browser suggests. */
import type { Units } from "./render/rendering.ts";

/** The United States, Liberia and Myanmar; everybody else measures cars in millimetres (from memory). */
const imperialRegions = /^[a-z]{2,3}-(?:US|LR|MM)\b/iu;

/** `asked`: "imperial", "metric" or a language tag such as en-US. */
export function unitsOf(asked: string | undefined, acceptLanguage: string | undefined): Units {
  if (asked === "imperial" || asked === "metric") return asked;
  const tag = asked ?? acceptLanguage?.split(",")[0]?.trim();
  return tag !== undefined && imperialRegions.test(tag) ? "imperial" : "metric";
}
