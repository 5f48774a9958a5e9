/** The fields and photographs of a form, within their bounds. */
import type { Context } from "hono";
import { mostPhotographs, photographBytes } from "./limits.ts";
import type { Photographs } from "./site.ts";

export interface Form {
  readonly fields: Readonly<Record<string, string>>;
  readonly files: readonly File[];
}

/** The form of a request: the last of fields of one name, the files named "photographs" that hold anything. */
export async function formOf(context: Context): Promise<Form> {
  const body = await context.req.parseBody({ all: true });
  const fields: Record<string, string> = {};
  for (const [name, value] of Object.entries(body)) {
    const last = Array.isArray(value) ? value.at(-1) : value;
    if (typeof last === "string") fields[name] = last;
  }
  const sent = body.photographs;
  const all = Array.isArray(sent) ? sent : [sent];
  const files = all.filter((file) => file instanceof File && file.size > 0) as File[];
  return { fields, files };
}

/** Ids of the photographs taken in; "refused" when one is too large, or is no photograph. */
export async function takenIn(
  keeper: Photographs | undefined,
  files: readonly File[],
): Promise<readonly string[] | "refused"> {
  if (files.length === 0) return [];
  const isFit = files.length <= mostPhotographs && files.every(({ size }) => size <= photographBytes);
  if (keeper === undefined || !isFit) return "refused";
  const ids: string[] = [];
  for (const file of files) {
    try {
      ids.push(await keeper.take(new Uint8Array(await file.arrayBuffer())));
    } catch {
      // The keeper refuses what it cannot read; that is said to whoever sent it.
      return "refused";
    }
  }
  return ids;
}
