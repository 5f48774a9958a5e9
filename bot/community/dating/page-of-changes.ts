/** The changes of a part on its page: a drawing each with its table, and the cars that would narrow them, as blocks. */
import {
  formatInterval,
  type Handbook,
  type PartKind,
  sayProbability,
  successionsOf,
  variantById,
} from "../../../knowledge/index.ts";
import { carsFittedTo } from "../../conversation/saying/cars-fitted-to.ts";
import type { Block } from "../../reply.ts";
import type { PartTally } from "../observations/observations-view.ts";
import * as phrases from "../phrases/dating.ts";
import { chainsOfPart } from "./chain-of-part.ts";
import { nameOf, timelineBlock } from "./changeover-chart.ts";
import { changeFindings } from "./changeover-findings.ts";
import { chainTimelineBlock } from "./say-chain.ts";
import { wantedOf } from "./wanted-cars.ts";

export interface PageOfChanges {
  readonly timelines: readonly Block[];
  readonly wanted: readonly Block[];
}

const mostMonths = 3;
/** Fewer cars than these are no picture of a change. */
const leastCars = 5;

const kept = new WeakMap<
  PartKind,
  WeakMap<PartTally, { readonly version: number; readonly page: PageOfChanges }>
>();

/** Worked out when first asked for, and again after something of the part was accepted, changed or withdrawn. */
export function pageOfChanges(handbook: Handbook, part: PartKind, tally: PartTally): PageOfChanges {
  const ofPart = kept.get(part) ?? new WeakMap();
  kept.set(part, ofPart);
  const known = ofPart.get(tally);
  if (known?.version === tally.version) return known.page;
  const page = { timelines: timelinesOf(handbook, part, tally), wanted: wantedBlocks(handbook, part, tally) };
  ofPart.set(tally, { version: tally.version, page });
  return page;
}

/** One for each row of kinds, and one for each change beside them of which both kinds were seen. */
function timelinesOf(handbook: Handbook, part: PartKind, tally: PartTally): readonly Block[] {
  const chains = chainsOfPart(handbook, part, tally).filter(({ seen }) => seen >= leastCars);
  const isInChain = (old: string, fresh: string): boolean =>
    chains.some(({ variants }) => variants.includes(old) && variants[variants.indexOf(old) + 1] === fresh);
  const single = successionsOf(handbook, part)
    .filter(({ old, new: fresh }) => !isInChain(old, fresh))
    .flatMap((succession) => changeFindings(handbook, succession, tally) ?? [])
    .filter(({ seen, change }) => seen >= leastCars && change.reported === "both");
  return [
    ...chains.map((chain) => chainTimelineBlock(part, chain)),
    ...single.map((findings) => timelineBlock(part, findings)),
  ];
}

function wantedBlocks(handbook: Handbook, part: PartKind, tally: PartTally): readonly Block[] {
  const lists = wantedOf(handbook, part, tally)
    .filter(({ wanted }) => wanted.length > 0)
    .map(({ succession, wanted }): Block => {
      const kinds = [succession.old, succession.new].flatMap((id) => variantById(part, id) ?? []);
      const cars = carsFittedTo(handbook, kinds);
      const lead = phrases.wantedOnPage(nameOf(part, succession.old), nameOf(part, succession.new), cars);
      const items = wanted
        .slice(0, mostMonths)
        .map(({ built, reportedNew }) =>
          phrases.wantedLine(formatInterval(built), sayProbability(reportedNew)),
        );
      return { kind: "list", lead, items };
    });
  if (lists.length === 0) return [{ kind: "text", text: phrases.nothingWantedOfPart }];
  return [...lists, { kind: "text", text: phrases.wantedHow, tone: "aside" }];
}
