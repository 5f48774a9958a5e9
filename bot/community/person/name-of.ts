/** How a person is called who is known here by an id alone: the name of their role, else the one they recorded or pinned something under last. */
import type { CommunityMemory } from "../community-memory.ts";
import { keepersIn } from "../keepers/keepers-record.ts";

interface Named {
  readonly name: string;
  readonly at: number;
}

/** The id itself when no name is known. */
export function nameOf({ keepers, observations, pins }: CommunityMemory, person: string): string {
  const role = keepersIn(keepers).roles.find((one) => one.person === person);
  if (role !== undefined) return role.name;
  const own = [...(observations.byPerson.get(person) ?? [])].flatMap((id): readonly Named[] => {
    const one = observations.byId.get(id);
    return one === undefined ? [] : [{ name: one.byName, at: one.at }];
  });
  const pinned = [...pins.byId.values()].flatMap(({ author, authorName, at }): readonly Named[] =>
    author === person ? [{ name: authorName, at }] : [],
  );
  const [latest] = [...own, ...pinned].sort(
    (one, other) => other.at - one.at || (one.name < other.name ? -1 : 1),
  );
  return latest?.name ?? person;
}
