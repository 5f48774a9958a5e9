/** The fields and photographs of a form, within their bounds. */
import type { Context } from "hono";
import { mostPhotographs, photographBytes } from "./limits.ts";
import { chat } from "./phrases.ts";
import type { Photographs } from "./site.ts";

export interface Form {
  readonly fields: Readonly<Record<string, string>>;
  readonly files: readonly File[];
}

/** The form of a request: the last of fields of one name, the files named "photographs" that hold anything. One that is torn is empty. */
export async function formOf(context: Context): Promise<Form> {
  const body = await bodyOf(context);
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

/** A body that is not what its type says is a fault of who sent it: it carries no token either, and is refused for that. */
async function bodyOf(context: Context): Promise<Record<string, unknown>> {
  try {
    return await context.req.parseBody({ all: true });
  } catch (failure) {
    if (failure instanceof TypeError) return {};
    throw failure;
  }
}

export type TakenIn =
  | { readonly ok: true; readonly ids: readonly string[] }
  /** A sentence for whoever sent it. */
  | { readonly ok: false; readonly message: string };

/** Ids of the photographs taken in, all of them or none that is spoken of. */
export async function takenIn(
  keeper: Photographs | undefined,
  files: readonly File[],
  by: string,
): Promise<TakenIn> {
  const isFit = files.length <= mostPhotographs && files.every(({ size }) => size <= photographBytes);
  if (!isFit || (keeper === undefined && files.length > 0)) {
    return { ok: false, message: chat.tooManyPhotographs };
  }
  const ids: string[] = [];
  for (const file of files) {
    const taken = await keeper?.take(new Uint8Array(await file.arrayBuffer()), by);
    if (taken?.ok === false) return { ok: false, message: taken.problem.message };
    if (taken !== undefined) ids.push(taken.id);
  }
  return { ok: true, ids };
}
