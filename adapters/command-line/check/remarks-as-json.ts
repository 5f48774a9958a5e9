/** Remarks for scripts: one JSON object. */
import { type Review, severities } from "../../../knowledge/index.ts";
import { countOf } from "./remarks-as-text.ts";

export function remarksAsJson(folder: string, { loaded, remarks }: Review): string {
  const counts = Object.fromEntries(severities.map((severity) => [severity, countOf(remarks, severity)]));
  return JSON.stringify({
    handbook: loaded.ok ? loaded.handbook.cover.id : null,
    folder,
    sound: loaded.ok,
    edition: loaded.ok ? loaded.handbook.edition : null,
    counts,
    remarks,
  });
}
