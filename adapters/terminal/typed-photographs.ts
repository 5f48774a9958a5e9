/** Photographs that are typed by their path: "photograph ./spoiler.jpg", alone or among words. Pure: nothing is opened here. */

export interface TypedPhotographs {
  /** What was typed beside them. */
  readonly text: string;
  readonly paths: readonly string[];
}

/** A path says that it is one: it begins as one, or ends as a picture does. Others are words: "photograph of the mirror". */
const path = String.raw`"[^"]+"|'[^']+'|(?:\.{0,2}|~)/\S+|\S+\.(?:jpe?g|png|webp|avif|hei[cf]|gif|tiff?)`;
const named = new RegExp(
  String.raw`(?:^|[\s,;:.]+)(?:and )?photo(?:graph)?s?:? +((?:${path})(?:(?:,? +and +|, *| +)(?:${path}))*)(?=$|[\s,;.])`,
  "giu",
);

export function typedPhotographs(line: string): TypedPhotographs {
  const paths: string[] = [];
  const text = line.replace(named, (_, list: string) => {
    for (const [found] of list.matchAll(new RegExp(path, "giu"))) paths.push(plain(found));
    return "";
  });
  return { text: text.replace(/^[\s,;:.]+/u, (start) => (paths.length > 0 ? "" : start)).trim(), paths };
}

/** Without its quotation marks, or the stop or comma of the sentence. */
function plain(found: string): string {
  const [, inQuotes] = /^["'](.*)["']$/u.exec(found) ?? [];
  return inQuotes ?? found.replace(/[,;.]+$/u, "");
}
