// The instrument that a size was read from, where its sentence names one that can give such a size.
import type { Instrument, MeasurementUnit } from "../evidence/report.ts";

const instruments: readonly (readonly [RegExp, Instrument])[] = [
  [/\b(?:call?ipers?|vernier|micrometer|mic)\b/i, "caliper"],
  [/\b(?:scales?|weighed)\b/i, "kitchen-scale"],
  [/\btape\b/i, "tape"],
  [/\bruler?\b/i, "rule"],
  [/\b(?:by eye|eyeball(?:ed|ing)?|guess(?:ing|timate)?|estimate)\b/i, "guess"],
];

/** The instrument named in the same sentence that can give such a reading. */
export function instrumentNear(
  text: string,
  start: number,
  end: number,
  unit: MeasurementUnit | null,
): Instrument | undefined {
  const before =
    text
      .slice(Math.max(0, start - 50), start)
      .split(/[!?;\n]|\.\s/)
      .at(-1) ?? "";
  const after = text.slice(end, end + 50).split(/[!?;\n]|\.(?:\s|$)/, 1)[0] ?? "";
  const isMass = unit !== null && !/^(?:mm|cm|in)$/.test(unit);
  const found = instruments.find(([cue]) => cue.test(`${before}|${after}`))?.[1];
  const suits = found === "guess" || unit === null || (found === "kitchen-scale") === isMass;
  return suits ? found : undefined;
}
