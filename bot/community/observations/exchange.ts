/** "export observations", "import observations: …": all of a community's observations as rows for a spreadsheet, and rows back in. */
import { writeCommaSeparated } from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";
import { aside, text } from "../../text-blocks.ts";
import type { CommunityScene, Handled } from "../affair.ts";
import { reaches } from "../keepers/standing.ts";
import { notForYou } from "../phrases/keepers.ts";
import * as phrases from "../phrases/observations.ts";
import { newRecord } from "../record-change.ts";
import { say } from "../say.ts";
import { readRows } from "./exchange-read.ts";
import { columns, rowOf } from "./exchange-row.ts";
import { kindsOf } from "./kinds-of.ts";
import type { Observation } from "./observation.ts";
import { observationKind } from "./observations-view.ts";
import { readJson } from "./read-json.ts";

const mostFaults = 20;
/** A turn is one commit, and a commit has its limits; what is left is taken when the same text comes again. */
const mostTaken = 900;

/** Undefined when the words ask for neither. Rows are taken from the message as it was sent, line by line. */
export function exchange(scene: CommunityScene): Handled | undefined {
  const { text = "" } = scene.message;
  const asked = /^\s*export observations(?: as (csv|json))?[.!]?\s*$/iu.exec(text);
  const rows = /^\s*import observations:?([\s\S]*)$/iu.exec(text)?.[1];
  if (asked === null && rows === undefined) return undefined;
  if (!reaches(scene.speaker.standing, "keeper")) return say(notForYou("keeper"));
  if (rows === undefined) return exported(scene, asked?.[1]?.toLowerCase() === "json" ? "json" : "csv");
  return rows.trim() === "" ? say(phrases.howToImport) : imported(scene, rows.trimStart());
}

function exported({ memory }: CommunityScene, ending: "csv" | "json"): Handled {
  const all = [...memory.observations.byId].sort(([one], [other]) => (one < other ? -1 : 1));
  const written =
    ending === "json"
      ? `${JSON.stringify(
          all.map(([id, observation]) => ({ id, ...observation })),
          null,
          1,
        )}\n`
      : writeCommaSeparated([columns, ...all.map(([id, observation]) => rowOf(id, observation))]);
  return {
    blocks: [
      text(phrases.exported(all.length)),
      {
        kind: "file",
        name: phrases.exportName(ending),
        mediaType: ending === "json" ? "application/json" : "text/csv",
        text: written,
        alternative: phrases.exportName(ending),
      },
      ...(ending === "csv" ? [aside(phrases.exportNote)] : []),
    ],
    isPrivate: true,
    isMadeAnew: true,
  };
}

function imported(scene: CommunityScene, written: string): Handled {
  const { rows, faults } = written.startsWith("[") ? readJson(scene, written) : readRows(scene, written);
  const { byId } = scene.memory.observations;
  // What is there twice in one text is taken in once.
  const all = [...new Map(rows.map((one) => [one.id, one])).values()].filter(({ id }) => !byId.has(id));
  const fresh = all.slice(0, mostTaken);
  const known = rows.length - all.length;
  const records = fresh.map(({ id, observation }) => ({ id, observation: settled(scene, observation) }));
  const waiting = records.filter(({ observation }) => observation.stands === "waiting").length;
  const shown = faults.slice(0, mostFaults).map(({ place, fault }) => phrases.rowFault(place, fault));
  const left = faults.length - shown.length;
  const items = [...shown, ...(left > 0 ? [phrases.moreFaults(left)] : [])];
  const list: readonly Block[] =
    items.length === 0 ? [] : [{ kind: "list", lead: phrases.rowsNotRead, items }];
  return {
    blocks: [
      text(phrases.imported(records.length, waiting, known)),
      ...(all.length > fresh.length ? [text(phrases.leftToImport(all.length - fresh.length))] : []),
      ...list,
    ],
    changes: records.map(({ id, observation }) =>
      newRecord(observationKind, id, phrases.whyImported(id), observation),
    ),
    isPrivate: true,
  };
}

/** An accepted one counts with the kinds it was accepted with; without any, with those that today's handbook gives it. */
function settled(scene: CommunityScene, observation: Observation): Observation {
  return observation.stands === "accepted" && observation.kinds.length === 0
    ? { ...observation, kinds: kindsOf(scene, observation.saw) }
    : observation;
}

/** Whether more of the text is to be taken in by saying it again. */
export function isImportToGoOn(blocks: readonly Block[]): boolean {
  return blocks.some((block) => block.kind === "text" && phrases.isLeftToImport(block.text));
}
