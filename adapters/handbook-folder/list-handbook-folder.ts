// The names in a handbook folder: the folder itself, parts/ and drawings/, no deeper. Hidden entries (.git, what an
// editor leaves behind) are passed over. Listing stops at the limit, so a folder given by mistake is not walked through.
import type { Dirent } from "node:fs";
import { opendir } from "node:fs/promises";
import { join } from "node:path";
import { fileProblem, type HandbookLimits, type Problem, tooManyFiles } from "../../knowledge/index.ts";

const SUBFOLDERS = new Set(["parts", "drawings"]);

export interface FolderListing {
  /** Paths relative to the folder, with forward slashes, in no particular order. */
  readonly paths: string[];
  readonly problems: Problem[];
}

/** Lists the files; a subfolder that a handbook does not have is a problem. Throws what the file system throws. */
export async function listHandbookFolder(folder: string, limits: HandbookLimits): Promise<FolderListing> {
  const listing: FolderListing = { paths: [], problems: [] };
  const subfolders = await listInto(listing, folder, "", limits);
  for (const subfolder of subfolders) await listInto(listing, folder, `${subfolder}/`, limits);
  return isOver(listing, limits) ? { paths: [], problems: [tooManyFiles(limits)] } : listing;
}

/** Adds the entries under a prefix and returns the subfolders that belong to a handbook. */
async function listInto(
  listing: FolderListing,
  folder: string,
  prefix: string,
  limits: HandbookLimits,
): Promise<readonly string[]> {
  const subfolders: string[] = [];
  for await (const entry of await opendir(join(folder, prefix))) {
    if (isOver(listing, limits)) break;
    if (entry.name.startsWith(".")) continue;
    const path = prefix + entry.name;
    if (!entry.isDirectory()) listing.paths.push(path);
    else if (prefix === "" && SUBFOLDERS.has(entry.name)) subfolders.push(entry.name);
    else listing.problems.push(strangeFolder(path, entry));
  }
  return subfolders.toSorted();
}

function isOver(listing: FolderListing, limits: HandbookLimits): boolean {
  return listing.paths.length + listing.problems.length > limits.files;
}

function strangeFolder(path: string, entry: Dirent): Problem {
  const message = `a handbook has no folder ${entry.name}`;
  return fileProblem("file-unknown", path, message, "keep part kinds in parts/ and drawings in drawings/");
}
