/** Photographs that members attach: fetched from wherever Discord keeps them, and taken in without what else the file tells. */
import type { Attachment } from "discord.js";
import { UnavailableError } from "../errors.ts";
import type { Desk } from "./desk.ts";
import { trouble } from "./phrases.ts";

const MOST_BYTES = 25 * 1024 * 1024;
const MOST_PHOTOGRAPHS = 10;
const PATIENCE_MILLISECONDS = 20_000;

export interface Taken {
  readonly photographs: readonly string[];
  /** What could not be read, in words. */
  readonly remarks: readonly string[];
}

/** `by`: whose photographs they are. */
export async function takePhotographs(
  desk: Desk,
  attachments: Iterable<Attachment>,
  by: string,
): Promise<Taken> {
  const all = [...attachments].slice(0, MOST_PHOTOGRAPHS);
  const images = all.filter((one) => refusalOf(one) === undefined);
  const taken = await Promise.all(
    images.map(async ({ url, name }) => {
      try {
        const result = await desk.photographs.take(await fetched(url), by);
        return result.ok ? { id: result.id } : { lost: result.problem.message };
      } catch (failure) {
        // It can be read and not kept just now, which is no fault of the photograph.
        if (failure instanceof UnavailableError) throw failure;
        desk.log.warn({ err: failure }, "photograph left aside");
        return { lost: trouble.photographLost(name) };
      }
    }),
  );
  return {
    photographs: taken.flatMap(({ id }) => id ?? []),
    remarks: [...all.flatMap((one) => refusalOf(one) ?? []), ...taken.flatMap(({ lost }) => lost ?? [])],
  };
}

/** Why it is not even fetched, in words. */
function refusalOf({ contentType, size, name }: Attachment): string | undefined {
  const says = contentType?.startsWith("image/") ?? /\.(?:jpe?g|png|webp|heic|avif|gif)$/iu.test(name);
  if (!says) return trouble.photographLost(name);
  return size <= MOST_BYTES ? undefined : trouble.photographTooLarge(name);
}

async function fetched(url: string): Promise<Uint8Array> {
  const response = await fetch(url, { signal: AbortSignal.timeout(PATIENCE_MILLISECONDS) });
  if (!response.ok) throw new RangeError(`photograph: the server answered ${response.status}`);
  const bytes = new Uint8Array(await response.arrayBuffer());
  if (bytes.length > MOST_BYTES) throw new RangeError("photograph: larger than announced");
  return bytes;
}
