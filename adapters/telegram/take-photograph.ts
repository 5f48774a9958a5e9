/** A file of the platform into the keeper of photographs, which takes its metadata away. Hosts are never assumed: the root of the API is told. */
import type { Api } from "grammy";
import type { PhotographTaken } from "./door.ts";
import { patiently } from "./patiently.ts";
import { photographNotRead, photographTooLarge } from "./phrases.ts";

/** What is needed of the keeper of photographs. */
export interface Photographs {
  take(
    bytes: Uint8Array,
    by: string,
  ): Promise<
    | { readonly ok: true; readonly id: string }
    | { readonly ok: false; readonly problem: { readonly message: string } }
  >;
  read(id: string): Promise<{ readonly bytes: Uint8Array } | undefined>;
}

export interface FilePlace {
  readonly root: string;
  readonly token: string;
}

/** The platform hands over no more. */
const mostBytes = 20 * 1024 * 1024;
const tries = 3;
const patienceMilliseconds = 30_000;

export function photographTaker(
  api: Api,
  place: FilePlace,
  photographs: Photographs,
): (file: string, by: string) => Promise<PhotographTaken> {
  return async (file, by) => {
    const found = await pathOf(api, file);
    if (!found.ok) return found;
    const bytes = await downloaded(`${place.root}/file/bot${place.token}/${found.path}`);
    if (bytes === undefined) return { ok: false, problem: photographNotRead };
    if (bytes.length > mostBytes) return { ok: false, problem: photographTooLarge };
    const taken = await photographs.take(bytes, by);
    return taken.ok ? taken : { ok: false, problem: taken.problem.message };
  };
}

type Path = { readonly ok: true; readonly path: string } | { readonly ok: false; readonly problem: string };

async function pathOf(api: Api, file: string): Promise<Path> {
  try {
    const { file_path: path } = await patiently(() => api.getFile(file));
    return path === undefined ? { ok: false, problem: photographNotRead } : { ok: true, path };
  } catch (failure) {
    if (`${failure}`.includes("file is too big")) return { ok: false, problem: photographTooLarge };
    if (`${failure}`.includes("wrong file_id")) return { ok: false, problem: photographNotRead };
    throw failure;
  }
}

/** Undefined when the file is not there, or not to be had after a few tries. The address carries the token, so no failure is passed on. */
async function downloaded(address: string): Promise<Uint8Array | undefined> {
  for (let left = tries; left > 0; left -= 1) {
    const response = await fetch(address, { signal: AbortSignal.timeout(patienceMilliseconds) }).catch(
      () => undefined,
    );
    if (response?.ok === true) {
      const bytes = await response.bytes().catch(() => undefined);
      if (bytes !== undefined) return bytes;
    } else if (response?.status === 404) return undefined;
  }
  return undefined;
}
