/** "observers": how often each is right, from cars that several people recorded; keepers alone see it. */
import { groupedBy, type Label, observerReliability } from "../../../knowledge/index.ts";
import type { CommunityScene, Handled } from "../affair.ts";
import { reaches } from "../keepers/standing.ts";
import { notForYou } from "../phrases/keepers.ts";
import * as phrases from "../phrases/observations.ts";
import type { Observation } from "./observation.ts";

/** Before anything is known of somebody (common practice, no source). */
const startsRight = 9;
const mostListed = 50;

interface Seen extends Label {
  readonly part: string;
  readonly name: string;
}

export function listObservers(scene: CommunityScene): Handled {
  if (!reaches(scene.speaker.standing, "keeper"))
    return { blocks: [{ kind: "text", text: notForYou("keeper") }] };
  const rows = [...groupedBy(seenTwice(scene), ({ part }) => part).values()].flatMap(ofPart);
  const byObserver = [...groupedBy(rows, ({ observer }) => observer).values()].flatMap(together);
  if (byObserver.length === 0) return { blocks: [{ kind: "text", text: phrases.noObservers }] };
  const items = byObserver
    .sort((one, other) => other.cars - one.cars || (one.name < other.name ? -1 : 1))
    .slice(0, mostListed)
    .map(({ name, right, cars }) => phrases.observerLine(name, phrases.percent(right), cars));
  return {
    blocks: [
      { kind: "list", lead: phrases.observersLead, items },
      { kind: "text", text: phrases.observersHow, tone: "aside" },
    ],
    isPrivate: true,
  };
}

/** What was said of parts of cars that at least two people recorded. */
function seenTwice({ memory, served }: CommunityScene): readonly Seen[] {
  const { bySerial, byId } = memory.observations;
  const kindsOf = (saw: Observation["saw"]) =>
    served
      .find(({ handbook }) => handbook.cover.id === saw.handbook)
      ?.handbook.parts.find(({ id }) => id === saw.part)
      ?.variants.map(({ id }) => id) ?? [];
  const cars = [...bySerial].sort(([one], [other]) => (one < other ? -1 : 1));
  const all = cars.flatMap(([serial, ids]) =>
    [...ids].sort().flatMap((id): readonly Seen[] => {
      const one = byId.get(id);
      const kind = one?.saw.variant ?? one?.kinds[0]?.variant;
      if (one === undefined || kind === undefined || one.stands === "withdrawn") return [];
      const label = kindsOf(one.saw).indexOf(kind);
      const part = `${one.saw.handbook} ${one.saw.part} ${kindsOf(one.saw).length}`;
      if (label < 0) return [];
      return [{ item: `${serial} ${part}`, observer: one.by, name: one.byName, label, part }];
    }),
  );
  return [...groupedBy(all, ({ item }) => item).values()]
    .filter((said) => new Set(said.map(({ observer }) => observer)).size > 1)
    .flat();
}

interface Rated {
  readonly observer: string;
  readonly name: string;
  readonly right: number;
  readonly cars: number;
}

function ofPart(seen: readonly Seen[]): readonly Rated[] {
  const kinds = Number(seen[0]?.part.split(" ").at(-1) ?? 0);
  const wrong = 1 / Math.max(1, kinds - 1);
  const { shares, errorRates } = observerReliability(seen, kinds, { right: startsRight, wrong });
  return [...groupedBy(seen, ({ observer }) => observer)].map(([observer, said]) => {
    const rates = errorRates.get(observer) ?? [];
    const right = shares.reduce((sum, share, at) => sum + share * (rates[at]?.[at] ?? 0), 0);
    return { observer, name: said[0]?.name ?? observer, right, cars: said.length };
  });
}

/** Over all parts, each by how many cars it rests on. */
function together(rated: readonly Rated[]): readonly Rated[] {
  const [first] = rated;
  if (first === undefined) return [];
  const cars = rated.reduce((sum, one) => sum + one.cars, 0);
  return [{ ...first, cars, right: rated.reduce((sum, one) => sum + one.right * one.cars, 0) / cars }];
}
