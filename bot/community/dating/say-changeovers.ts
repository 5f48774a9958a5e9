/** When the kinds of a part gave way to each other: in sentences, as a list of what it rests on, and as a timeline. */
import {
  type Changeover,
  formatInterval,
  type GroupedChangeovers,
  type PartKind,
  type Succession,
  sayProbability,
  successionsOf,
} from "../../../knowledge/index.ts";
import * as words from "../../conversation/phrases/changeovers.ts";
import type { Block } from "../../reply.ts";
import { aside, text } from "../../text-blocks.ts";
import type { CommunityScene, Handled } from "../affair.ts";
import * as phrases from "../phrases/dating.ts";
import { type ChainOfPart, chainsOfPart } from "./chain-of-part.ts";
import { nameOf, timelineBlock } from "./changeover-chart.ts";
import { type ChangeFindings, changeFindings } from "./changeover-findings.ts";
import { type PartAsked, partAsked, tallyOfPart } from "./part-asked.ts";
import { sayChain } from "./say-chain.ts";
import { saySuspects } from "./say-suspects.ts";

/** "likely" on the published scale: from here one of the two ways is named. */
const likely = 0.66;
const worthSaying = 0.05;
const mostWhole = 2;

export function sayChangeovers(scene: CommunityScene, about: string): Handled {
  const asked = partAsked(scene, about);
  return { blocks: asked === undefined ? overview(scene) : ofPart(scene, asked) };
}

/** Every change of every part, a row each. */
function overview(scene: CommunityScene): readonly Block[] {
  const { handbook } = scene.knowledge;
  const rows = handbook.parts.flatMap((part) =>
    findingsOf(scene, { part, variants: [] }).map(({ succession, change, seen }) => [
      part.name,
      nameOf(part, succession.old),
      nameOf(part, succession.new),
      words.wholeMonths(change.interval, succession.setting.window),
      String(seen),
    ]),
  );
  if (rows.length === 0) return [text(phrases.noChangesAtAll)];
  const [first] = rows[0] ?? [];
  return [
    { kind: "table", caption: phrases.changesCaption, head: phrases.changesHead, rows },
    aside(phrases.howToNarrow(first ?? "")),
  ];
}

/** Those of which both kinds were seen whole, those most was seen of first; of the others one line each. */
function ofPart(scene: CommunityScene, asked: PartAsked): readonly Block[] {
  const { part } = asked;
  const chains =
    asked.variants.length > 0
      ? []
      : chainsOfPart(scene.knowledge.handbook, part, tallyOfPart(scene, scene.knowledge, part));
  const all = findingsOf(scene, asked).filter(({ succession }) => !isInChain(succession, chains));
  if (chains.length === 0 && all.length === 0) return [text(phrases.noChanges(part.name))];
  const bySeen = all
    .filter(({ change }) => change.reported === "both")
    .sort((one, other) => other.seen - one.seen)
    .slice(0, asked.variants.length > 0 ? all.length : mostWhole);
  const rest = all.filter((findings) => !bySeen.includes(findings));
  const items = rest.map((findings) => `${sayDate(part, findings)} ${sayBasis(part, findings)}`);
  return [
    ...chains.flatMap((chain) => sayChain(part, chain)),
    ...bySeen.flatMap((findings) => sayWhole(part, findings)),
    ...(items.length === 0 ? [] : [{ kind: "list", lead: phrases.changesLead(part.name), items } as const]),
    ...(bySeen.length + chains.length === 0 ? [aside(phrases.howToAdd)] : []),
  ];
}

function isInChain({ old, new: fresh }: Succession, chains: readonly ChainOfPart[]): boolean {
  return chains.some(
    ({ variants }) => variants.includes(old) && variants[variants.indexOf(old) + 1] === fresh,
  );
}

function findingsOf(scene: CommunityScene, { part, variants }: PartAsked): readonly ChangeFindings[] {
  const { knowledge } = scene;
  const tally = tallyOfPart(scene, knowledge, part);
  return successionsOf(knowledge.handbook, part)
    .filter(
      ({ old, new: fresh }) => variants.length === 0 || variants.includes(old) || variants.includes(fresh),
    )
    .flatMap((succession) => changeFindings(knowledge.handbook, succession, tally) ?? []);
}

function sayWhole(part: PartKind, findings: ChangeFindings): readonly Block[] {
  const { setting } = findings.succession;
  return [
    { kind: "text", text: sayDate(part, findings), tone: "answer" },
    text(sayBasis(part, findings)),
    { kind: "list", lead: "", items: details(part, findings) },
    timelineBlock(part, findings),
    aside(phrases.changeAssumptions(formatInterval(setting.window), setting.production !== undefined)),
  ];
}

function sayDate(part: PartKind, { succession, change, month }: ChangeFindings): string {
  const [old, fresh] = [nameOf(part, succession.old), nameOf(part, succession.new)];
  const interval = words.wholeMonths(change.interval, succession.setting.window);
  if (month === undefined) return phrases.changedNoMonth(old, fresh, interval);
  return phrases.changed(old, fresh, formatInterval(month.month), sayProbability(month.chance), interval);
}

function sayBasis(part: PartKind, { succession, change, seen }: ChangeFindings): string {
  switch (change.reported) {
    case "none":
      return phrases.byHandbookAlone;
    case "old-only":
      return phrases.onlyOneSeen(nameOf(part, succession.old));
    case "new-only":
      return phrases.onlyOneSeen(nameOf(part, succession.new));
    case "both":
      return phrases.bySightings(seen);
  }
}

function details(part: PartKind, findings: ChangeFindings): readonly string[] {
  const { change, shapes, grouped, succession } = findings;
  const [first, second] = shapes?.shapes ?? [];
  const shape = first && `${words.shapeWords[first.shape]}: ${sayProbability(first.chance)}`;
  const other =
    second && shapes?.runnerUp
      ? `; ${words.runnerUpWords(words.shapeWords[second.shape], sayProbability(second.chance))}`
      : "";
  return [
    phrases.howItChanged(saySpeed(change)),
    ...(shape === undefined ? [] : [phrases.shapeOfIt(`${shape}${other}`)]),
    ...(first === undefined || first.shape === "change" ? [] : [words.notOneChange]),
    ...throughout(part, findings),
    ...(change.statedOutside ? [words.statedOutside] : []),
    ...ends(part, findings),
    ...saySuspects(part, findings.judged),
    ...(change.moreSwapsThanGraded > likely
      ? [words.gradesTooHopeful(sayProbability(change.moreSwapsThanGraded))]
      : []),
    ...grouped.flatMap((one) => sayGroups(one, succession)),
  ];
}

function sayGroups({ by, groups }: GroupedChangeovers, { setting }: Succession): readonly string[] {
  return [
    ...groups.map(({ market, median, interval, sightings, onCommonDate }) =>
      phrases.groupLine(
        market,
        words.groupWords(words.monthWords(median), words.wholeMonths(interval, setting.window), sightings) +
          words.commonDateWords(sayProbability(onCommonDate)),
      ),
    ),
    words.groupsLean[by],
  ];
}

/** The overlap itself is hardly known below 60 sightings; only two sums of it are said. */
function saySpeed({ withinWeeks, overMonths }: Changeover): string {
  const [weeks, months] = [sayProbability(withinWeeks), sayProbability(overMonths)];
  if (withinWeeks > likely) return words.speedWords.weeks(weeks);
  return overMonths > likely ? words.speedWords.months(months) : words.speedWords.unclear(weeks, months);
}

function throughout(part: PartKind, { succession, change }: ChangeFindings): readonly string[] {
  const { oldThroughout, newThroughout } = change;
  return [
    ...(oldThroughout < worthSaying
      ? []
      : [words.throughoutWords(nameOf(part, succession.old), sayProbability(oldThroughout))]),
    ...(newThroughout < worthSaying
      ? []
      : [words.throughoutWords(nameOf(part, succession.new), sayProbability(newThroughout))]),
  ];
}

function ends(part: PartKind, { succession, change, judged }: ChangeFindings): readonly string[] {
  const { lastOld, firstNew, lastOldUnsuspected, firstNewUnsuspected } = change.ends;
  const line = (
    end: Changeover["ends"]["lastOld"],
    say: typeof phrases.lastOld,
    kind: string,
  ): readonly string[] => {
    const sighting = judged.find(({ id }) => id === end?.id);
    if (end === undefined || sighting === undefined) return [];
    const name = sighting.count === 1 ? end.id : words.sightingsCounted(sighting.count);
    return [say(nameOf(part, kind), name, formatInterval(sighting.built), sayProbability(end.asBuilt))];
  };
  const trusted = (end: typeof lastOld, all: typeof lastOld) => (end?.id === all?.id ? undefined : end);
  return [
    ...line(lastOld, phrases.lastOld, succession.old),
    ...line(trusted(lastOldUnsuspected, lastOld), phrases.lastOld, succession.old).map(
      phrases.withoutSuspects,
    ),
    ...line(firstNew, phrases.firstNew, succession.new),
    ...line(trusted(firstNewUnsuspected, firstNew), phrases.firstNew, succession.new).map(
      phrases.withoutSuspects,
    ),
  ];
}
