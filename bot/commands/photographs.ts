/** "what photographs should I ask the seller for?": the tells a photograph can show, the most telling first. */
import { type Feature, notThere, stateName } from "../../knowledge/index.ts";
import type { Assessed } from "../conversation/assessed.ts";
import { featuresNamed } from "../conversation/features-named.ts";
import {
  noPhotographs,
  photographOfDate,
  photographOfMass,
  photographOfSize,
  photographOfStates,
  photographsLead,
  photographsNeedPart,
  photographsWhole,
  photographWhen,
} from "../conversation/phrases/commands.ts";
import { listed } from "../conversation/phrases/grammar.ts";
import { byInformation } from "../conversation/question-worth.ts";
import { isOfMass } from "../conversation/saying/say-value.ts";
import type { Block } from "../reply.ts";
import type { Scene } from "./scene.ts";

const mostPhotographs = 6;
/** No seller takes a part off for a photograph. Ours, no source. */
const dismantled = 6;

export function photographs(scene: Scene): readonly Block[] {
  const { assessed } = scene;
  if (assessed === undefined) return [{ kind: "text", text: photographsNeedPart }];
  const lines = tellingFeatures(assessed).map((feature) => photographLine(assessed, feature));
  if (lines.length === 0) return [{ kind: "text", text: noPhotographs(assessed.part.name) }];
  return [{ kind: "list", lead: photographsLead(assessed.part.name), items: [...lines, photographsWhole] }];
}

/** Features that a photograph shows and that are not told yet, by expected information about the goal. */
function tellingFeatures(assessed: Assessed): readonly Feature[] {
  const ids = byInformation(assessed.table).map(({ question }) => question.id);
  return featuresNamed(assessed.part, ids)
    .filter((feature) => feature.photograph && feature.effort < dismantled)
    .slice(0, mostPhotographs);
}

function photographLine(assessed: Assessed, feature: Feature): string {
  const line = whatMustShow(feature);
  const isOpen = (id: string) => !assessed.facts.reports.some((report) => report.feature === id);
  const conditions = featuresNamed(assessed.part, Object.keys(feature.when).filter(isOpen)).map((other) =>
    listed(
      (feature.when[other.id] ?? []).map((state) => stateName(other, state)),
      "or",
    ),
  );
  return conditions.length === 0 ? line : photographWhen(line, conditions.join(", "));
}

function whatMustShow(feature: Feature): string {
  if (feature.kind === "measurement") {
    return isOfMass(feature) ? photographOfMass(feature.name) : photographOfSize(feature.name);
  }
  if (feature.kind === "date") return photographOfDate(feature.name);
  const names = feature.states.filter((state) => state.id !== notThere).map((state) => state.name);
  return photographOfStates(feature.name, names.join("; "));
}
