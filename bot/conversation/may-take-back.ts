/** Who may take a step of a case back: whoever's case it is; somebody else only what they said themselves. */
import { takenBack } from "./case.ts";
import type { Change } from "./change.ts";
import type { Speaker } from "./speaker.ts";

export function mayTakeBack({ kept, facts }: Change, speaker: Speaker): boolean {
  if (speaker.isOwner) return true;
  const before = takenBack(kept);
  if (before === undefined) return true;
  const told = (reports: typeof facts.reports) => new Set(reports.map((report) => JSON.stringify(report)));
  const earlier = told(before.facts.reports);
  const later = told(facts.reports);
  const changed = [
    ...facts.reports.filter((report) => !earlier.has(JSON.stringify(report))),
    ...before.facts.reports.filter((report) => !later.has(JSON.stringify(report))),
  ];
  const rest = ({ part, goal, car }: typeof facts) => JSON.stringify([part, goal, car]);
  return rest(before.facts) === rest(facts) && changed.every(({ by }) => by === speaker.id);
}
