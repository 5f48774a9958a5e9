/** Kinds that followed each other in a row, all their changes at once: dates, suspects, cars wanted between the kinds, and one drawing. */
import { formatInterval, type PartKind, sayProbability } from "../../../knowledge/index.ts";
import * as words from "../../conversation/phrases/changeovers.ts";
import { listed, withThe } from "../../conversation/phrases/grammar.ts";
import type { ChainChart } from "../../conversation/saying/chain-chart.ts";
import type { Block } from "../../reply.ts";
import { aside } from "../../text-blocks.ts";
import * as phrases from "../phrases/dating.ts";
import type { ChainOfPart } from "./chain-of-part.ts";
import { legendOf, nameOf, spanOf, tableOf, wordsOf } from "./changeover-chart.ts";
import { isSuspect } from "./changeover-findings.ts";
import { saySuspects } from "./say-suspects.ts";

const mostWanted = 3;
/** A month that tells less than this is not asked for. */
const leastBits = 0.02;

export function sayChain(part: PartKind, chain: ChainOfPart): readonly Block[] {
  const { variants, setting, seen, judged } = chain;
  const names = variants.map((variant) => nameOf(part, variant));
  const pairs = pairsOf(part, chain);
  return [
    { kind: "text", text: phrases.inARow(listed(names.map(withThe)), part.name), tone: "answer" },
    {
      kind: "list",
      lead: "",
      items: pairs.map(({ change, old, fresh }) => {
        const interval = words.wholeMonths(change.interval, setting.window);
        if (change.month === undefined) return phrases.changedNoMonth(old, fresh, interval);
        const { month, chance } = change.month;
        return phrases.changed(old, fresh, formatInterval(month), sayProbability(chance), interval);
      }),
    },
    { kind: "text", text: phrases.bySightings(seen) },
    {
      kind: "list",
      lead: "",
      items: [
        ...saySuspects(part, judged),
        ...pairs.flatMap(({ change, old, fresh }) => {
          const months = change.wanted
            .filter(({ informationBits }) => informationBits >= leastBits)
            .slice(0, mostWanted)
            .map(({ built }) => formatInterval(built));
          return months.length === 0 ? [] : [phrases.wantedBetween(old, fresh, listed(months, "or"))];
        }),
      ],
    },
    chainTimelineBlock(part, chain),
    aside(phrases.chainAssumptions(formatInterval(setting.window), setting.production !== undefined)),
    aside(phrases.moreOfOne(names[1] ?? "")),
  ];
}

export function chainTimelineBlock(part: PartKind, chain: ChainOfPart): Block {
  return { kind: "timeline", chart: chartOf(part, chain), table: tableOf(part, chain.judged) };
}

function pairsOf(part: PartKind, { variants, changes }: ChainOfPart) {
  const name = (at: number): string => nameOf(part, variants[at] ?? "");
  return changes.map((change, at) => ({ change, old: name(at), fresh: name(at + 1) }));
}

function chartOf(part: PartKind, chain: ChainOfPart): ChainChart {
  const { variants, judged, setting, seen } = chain;
  const pairs = pairsOf(part, chain);
  const title = words.changeTitle(part.name);
  const changes = pairs.map(({ change: { interval } }) => ({
    interval,
    words: words.pictureWords.intervalLine(words.wholeMonths(interval, setting.window)),
  }));
  const suspects = judged.filter(isSuspect).map(({ id }) => id);
  return {
    title,
    description: [
      title,
      ...pairs.map(({ old, fresh }, at) => words.labelledFor(`${old} – ${fresh}`, changes[at]?.words ?? "")),
      words.pictureWords.sightings(seen),
      ...(suspects.length === 0 ? [] : [words.labelledFor(words.pictureWords.suspect, listed(suspects))]),
    ].join("; "),
    heading: [title],
    lanes: variants.map((variant) => ({
      name: nameOf(part, variant),
      marks: judged
        .filter((one) => one.variant === variant)
        .map((one) => ({
          built: one.built,
          grade: one.grade,
          isSuspect: isSuspect(one),
          words: wordsOf(part, one),
        })),
    })),
    changes,
    span: changes.reduce(
      (whole, { interval }) => ({
        from: Math.min(whole.from, interval.from),
        to: Math.max(whole.to, interval.to),
      }),
      spanOf(judged, changes[0]?.interval ?? setting.window),
    ),
    legend: legendOf(judged, false),
  };
}
