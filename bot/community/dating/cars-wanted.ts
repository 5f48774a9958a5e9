/** "cars wanted": which build months would narrow the date of a change most, for every sighting that comes in. */
import { formatInterval, type PartKind, sayProbability } from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";
import type { CommunityScene, Handled } from "../affair.ts";
import * as phrases from "../phrases/dating.ts";
import { nameOf } from "./changeover-chart.ts";
import { partAsked, tallyOfPart } from "./part-asked.ts";
import { wantedOf } from "./wanted-cars.ts";

const mostOfAll = 3;

export function sayCarsWanted(scene: CommunityScene, about: string): Handled {
  const asked = about === "" ? undefined : partAsked(scene, about);
  const blocks = asked === undefined ? overview(scene) : ofPart(scene, asked.part, asked.variants);
  if (blocks.length === 0) return { blocks: [{ kind: "text", text: phrases.nothingWanted }] };
  return { blocks: [...blocks, { kind: "text", text: phrases.wantedHow, tone: "aside" }] };
}

/** Every change of every part, a row each. */
function overview(scene: CommunityScene): readonly Block[] {
  const { handbook } = scene.knowledge;
  const rows = handbook.parts.flatMap((part) =>
    wantedOf(handbook, part, tallyOfPart(scene, scene.knowledge, part))
      .filter(({ wanted }) => wanted.length > 0)
      .map(({ succession, wanted }) => [
        part.name,
        nameOf(part, succession.old),
        nameOf(part, succession.new),
        wanted
          .slice(0, mostOfAll)
          .map(({ built }) => formatInterval(built))
          .join(", "),
      ]),
  );
  if (rows.length === 0) return [];
  return [{ kind: "table", caption: phrases.wantedCaption, head: phrases.wantedHead, rows }];
}

function ofPart(scene: CommunityScene, part: PartKind, variants: readonly string[]): readonly Block[] {
  const { knowledge } = scene;
  return wantedOf(knowledge.handbook, part, tallyOfPart(scene, knowledge, part))
    .filter(
      ({ succession: { old, new: fresh }, wanted }) =>
        wanted.length > 0 && (variants.length === 0 || variants.includes(old) || variants.includes(fresh)),
    )
    .map(({ succession, wanted }) => ({
      kind: "list",
      lead: phrases.wantedLead(part.name, nameOf(part, succession.old), nameOf(part, succession.new)),
      items: wanted
        .slice(0, mostOfAll)
        .map(({ built, reportedNew }) =>
          phrases.wantedLine(formatInterval(built), sayProbability(reportedNew)),
        ),
    }));
}
