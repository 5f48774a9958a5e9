/** What goes along with the words: drawings and charts as pictures, members' photographs, files. */
import type { Log } from "../../bot/index.ts";
import { UnavailableError } from "../errors.ts";
import type { Posted } from "./post.ts";
import type { Rendered } from "./render.ts";
import type { Photographs } from "./take-photograph.ts";

export interface Attaching {
  readonly pictureOf: (svg: string) => Promise<Uint8Array>;
  readonly photographs: Pick<Photographs, "read">;
  readonly log: Log;
}

const mostInAlbum = 10;

/** In the order in which they are sent; several pictures travel as one album. */
export async function attachments(
  attaching: Attaching,
  { pictures, photographs, files }: Rendered,
): Promise<readonly Posted[]> {
  const items: { readonly bytes: Uint8Array; readonly caption: string }[] = [];
  for (const { svg, caption } of pictures) {
    const bytes = await bytesOf(attaching, caption, () => attaching.pictureOf(svg));
    if (bytes !== undefined) items.push({ bytes, caption });
  }
  for (const { photograph, caption } of photographs) {
    const read = async () => (await attaching.photographs.read(photograph))?.bytes;
    const bytes = await bytesOf(attaching, caption, read);
    if (bytes !== undefined) items.push({ bytes, caption });
  }
  const posted: Posted[] = [];
  for (let from = 0; from < items.length; from += mostInAlbum) {
    posted.push({ kind: "photographs", items: items.slice(from, from + mostInAlbum) });
  }
  for (const { name, text, caption } of files) {
    posted.push({ kind: "file", name, bytes: new TextEncoder().encode(text), caption });
  }
  return posted;
}

/** A picture that cannot be made is left out: the words stand without it. A store that is away for now is waited for. */
async function bytesOf(
  { log }: Attaching,
  caption: string,
  make: () => Promise<Uint8Array | undefined>,
): Promise<Uint8Array | undefined> {
  try {
    return await make();
  } catch (failure) {
    if (failure instanceof UnavailableError) throw failure;
    log.error({ err: failure, caption }, "picture left out");
    return undefined;
  }
}
