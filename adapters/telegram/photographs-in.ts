/** The photographs that came along with a message, an album or the post that is asked about, taken in without their metadata. */
import type { Message } from "grammy/types";
import type { Door } from "./door.ts";

/** As many as the bot takes with one message. */
const mostPhotographs = 20;

export interface PhotographsIn {
  readonly ids: readonly string[];
  /** What to tell the sender when one of them could not be taken; the others and the words count. */
  readonly problem?: string;
}

export async function photographsIn(
  { takePhotograph }: Pick<Door, "takePhotograph">,
  messages: readonly Message[],
  quoted: Message | undefined,
  by: string,
): Promise<PhotographsIn> {
  const files = [...messages, ...(quoted === undefined ? [] : [quoted])]
    .flatMap(fileOf)
    .slice(0, mostPhotographs);
  const ids: string[] = [];
  const problems: string[] = [];
  for (const file of files) {
    const taken = await takePhotograph(file, by);
    if (taken.ok) ids.push(taken.id);
    else problems.push(taken.problem);
  }
  const [problem] = problems;
  return { ids, ...(problem === undefined ? {} : { problem }) };
}

/** The largest size of a photograph, or a picture that was sent as a file. */
function fileOf({ photo, document }: Message): readonly string[] {
  const largest = photo?.reduce((one, other) =>
    other.width * other.height > one.width * one.height ? other : one,
  );
  if (largest !== undefined) return [largest.file_id];
  return document?.mime_type?.startsWith("image/") === true ? [document.file_id] : [];
}
