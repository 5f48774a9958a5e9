/**
 * Cautions stand before the step they concern. The first time in a case a caution is given whole, with who decides;
 * after that in short, because a line read for the third time is not read at all.
 */
import { CAUTION_TAIL, cautionById, type Feature } from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";
import { sentence } from "../phrases/grammar.ts";
import { asSaidBefore } from "../phrases/question.ts";

/** The cautions of checking this feature; `warned`: those given before. Undefined when it needs none. */
export function sayCautions(feature: Feature, warned: readonly string[]): Block | undefined {
  const whole = cautionLines(feature.cautions.filter((id) => !warned.includes(id)));
  const short = feature.cautions
    .filter((id) => warned.includes(id))
    .flatMap((id) => cautionById(id) ?? [])
    .map(({ line }) => asSaidBefore(openingOf(line)));
  return whole.length + short.length === 0 ? undefined : { kind: "cautions", lines: [...short, ...whole] };
}

/** The cautions in full, and last who decides; empty when none of the ids is known. */
export function cautionLines(ids: readonly string[]): readonly string[] {
  const lines = [...new Set(ids)].flatMap((id) => cautionById(id)?.line ?? []).map(sentence);
  return lines.length === 0 ? [] : [...lines, CAUTION_TAIL];
}

/** The cautions as one block; undefined when there is nothing to caution. */
export function cautionsBlock(ids: readonly string[]): Block | undefined {
  const lines = cautionLines(ids);
  return lines.length === 0 ? undefined : { kind: "cautions", lines };
}

function openingOf(line: string): string {
  return (line.split(/[:;(]/)[0] ?? line).trim();
}
