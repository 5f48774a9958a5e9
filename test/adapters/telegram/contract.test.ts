// The conversations that every door holds, held in a group on the double; what is read is what the chat shows.
import { expect } from "vitest";
import { contractSuite } from "../../contract/contract-suite.ts";
import type { Harness, OpenHarness, Seen } from "../../contract/harness.ts";
import type { Kept } from "../../doubles/telegram/world.ts";
import { group, openClub } from "./club.ts";

contractSuite("Telegram", open);

async function open(bot: Parameters<OpenHarness>[0]): Promise<Harness> {
  const club = await openClub({ bot });
  const { people, world } = club.double;
  const ids = new Map<string, number>();
  const idOf = (name: string): number => {
    const id = ids.get(name) ?? 200 + ids.size;
    if (!ids.has(name)) {
      people.person(id, name);
      people.join(group, id);
      ids.set(name, id);
    }
    return id;
  };
  const stands = () => new Map(club.written(group).map((kept) => [kept.id, kept.edits] as const));

  async function seenAfter(act: () => void): Promise<Seen> {
    const before = stands();
    act();
    await club.settled();
    const written = club.written(group).filter(({ id, edits }) => before.get(id) !== edits);
    // A question that stays open where it stands can be read and pressed there.
    const open = club.written(group).filter((kept) => kept.buttons.length > 0 && !written.includes(kept));
    const shown = [...written, ...open];
    return {
      texts: shown.map(({ text, caption }) => text ?? caption ?? ""),
      controls: shown.flatMap(({ buttons }) => buttons.flat().map(({ text }) => text)),
    };
  }

  return {
    say: (person, text) => seenAfter(() => people.say(group, idOf(person), `@${world.bot.username} ${text}`)),
    press: (person, label) =>
      seenAfter(() => people.press(group, withButton(club.written(group), label).id, idOf(person), label)),
    async close() {
      await club.close();
      expect(club.double.violations).toEqual([]);
      expect(club.double.rung).toEqual([]);
    },
  };
}

function withButton(written: readonly Kept[], label: string): Kept {
  const found = written.findLast(({ buttons }) => buttons.flat().some(({ text }) => text === label));
  if (found === undefined) throw new RangeError(`no button ${label}`);
  return found;
}
