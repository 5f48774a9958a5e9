/** "how many were built: 12, 45, 300" from serials that survive; "how many had the second spoiler" from what members saw. */
import {
  type NumbersBuilt,
  numbersBuilt,
  type Refusal,
  type Result,
  shareOfVariant,
} from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";
import { text } from "../../text-blocks.ts";
import type { CommunityScene, Handled } from "../affair.ts";
import { datedSightings } from "../observations/observations-view.ts";
import * as phrases from "../phrases/dating.ts";
import { nameOf } from "./changeover-chart.ts";
import { type PartAsked, partAsked, tallyOfPart } from "./part-asked.ts";

export function sayHowMany(scene: CommunityScene, about: string): Handled {
  const serials = [...about.matchAll(/\d+/gu)].map(([figures]) => Number(figures));
  const isList = about !== "" && /^[\d\s,;.and]+$/iu.test(about);
  if (isList && serials.length > 0) return { blocks: fromSerials(serials) };
  const asked = about === "" ? undefined : partAsked(scene, about);
  if (asked === undefined || asked.variants.length === 0) return { blocks: [text(phrases.howManyNeeds)] };
  return { blocks: asked.variants.flatMap((variant) => ofKind(scene, asked, variant)) };
}

function fromSerials(serials: readonly number[]): readonly Block[] {
  const found = numbersBuilt(serials);
  if (!found.ok) return [text(phrases.cannotSayAnything(found.problem.message))];
  const { seen, highest, unbiased, mean, deviation, quantile } = found.value;
  const limit = quantile(0.95);
  return [
    {
      kind: "list",
      lead: phrases.numbersLead(seen, highest),
      items: [
        phrases.numbersUnbiased(unbiased.toFixed(0)),
        limit.ok ? phrases.numbersLimit(limit.value) : phrases.cannotSay(limit.problem.message),
        sayMean(mean, deviation),
      ],
    },
    { kind: "text", text: phrases.numbersAssumption, tone: "aside" },
  ];
}

function sayMean(mean: NumbersBuilt["mean"], deviation: Result<number, Refusal>): string {
  if (!mean.ok) return phrases.cannotSay(mean.problem.message);
  if (!deviation.ok) return phrases.cannotSay(deviation.problem.message);
  return phrases.numbersMean(mean.value.toFixed(0), deviation.value.toFixed(0));
}

/** The kind's share of the cars seen, and of all that were built. */
function ofKind(scene: CommunityScene, { part }: PartAsked, variant: string): readonly Block[] {
  const sightings = datedSightings(tallyOfPart(scene, scene.knowledge, part));
  const seen = sightings.filter((one) => one.variant === variant).length;
  const found = shareOfVariant(seen, sightings.length);
  if (!found.ok) return [text(phrases.cannotSayAnything(found.problem.message))];
  const { share, wilson } = found.value;
  const years = Object.values(scene.knowledge.handbook.cars.production);
  const built = years.reduce((sum, cars) => sum + cars, 0);
  return [
    {
      kind: "list",
      lead: phrases.shareLead(nameOf(part, variant), seen, sightings.length),
      items: [
        phrases.shareInterval(percent(share), percent(wilson.low), percent(wilson.high)),
        ...(built === 0
          ? []
          : [
              phrases.shareOfCars(
                (built * wilson.low).toFixed(0),
                (built * wilson.high).toFixed(0),
                String(built),
              ),
            ]),
      ],
    },
    { kind: "text", text: phrases.shareAssumption, tone: "aside" },
  ];
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}
