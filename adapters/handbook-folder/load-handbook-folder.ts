// From a folder on disk to a sound handbook in one call, for whoever starts the bot or checks a handbook.
import {
  type HandbookLimits,
  handbookLimits,
  type LoadedHandbook,
  loadHandbook,
} from "../../knowledge/index.ts";
import { readHandbookFolder } from "./read-handbook-folder.ts";

/** Reads and checks a folder; what cannot be read is told before anything is checked. */
export async function loadHandbookFolder(
  folder: string,
  limits: HandbookLimits = handbookLimits,
): Promise<LoadedHandbook> {
  const reading = await readHandbookFolder(folder, limits);
  return reading.ok ? loadHandbook(reading.files, limits) : reading;
}
