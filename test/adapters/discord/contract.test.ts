import type { Bot } from "../../../bot/index.ts";
import { contractSuite } from "../../contract/contract-suite.ts";
import type { Harness, Seen } from "../../contract/harness.ts";
import type { Message, User } from "../../doubles/discord/wire-shapes.ts";
import { asRead, labelsOn } from "./as-read.ts";
import { served } from "./served.ts";

async function openHarness(bot: Bot): Promise<Harness> {
  const s = await served({ around: () => bot });
  const { people, world } = s.double;
  const members = new Map<string, User>();
  let current: Message | undefined;

  function person(name: string): User {
    const known = members.get(name) ?? s.member(name);
    members.set(name, known);
    return known;
  }

  /** What this turn wrote or edited, the last of it being what can be pressed. */
  async function seenAfter(act: () => void): Promise<Seen> {
    const before = new Map([...world.messages.values()].map(({ id, edits }) => [id, edits]));
    act();
    await s.settled();
    const changed = [...world.messages.values()].filter(
      ({ id, edits, author }) => author.id === world.bot.id && before.get(id) !== edits,
    );
    const withControls = changed.filter((message) => labelsOn(message).length > 0);
    current = withControls.at(-1) ?? current;
    return {
      texts: changed.map(({ content }) => asRead(content)),
      controls: withControls.flatMap(labelsOn),
    };
  }

  return {
    say: (name, text) => seenAfter(() => people.mention(person(name), s.channel, text)),
    press: (name, label) =>
      seenAfter(() => {
        if (current === undefined) throw new Error("nothing to press");
        const isOption = current.components.some(({ components }) => components?.[0]?.options !== undefined);
        const isButton = current.components.some(({ components }) =>
          components?.some((one) => one.label === label),
        );
        if (isOption && !isButton) people.choose(person(name), current, label);
        else people.press(person(name), current, label);
      }),
    async close() {
      const { violations } = world;
      await s.close();
      if (violations.length > 0) throw new Error(violations.join("\n"));
    },
  };
}

contractSuite("Discord", openHarness);
