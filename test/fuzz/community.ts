// What members and keepers may say in a community: whole talks of the kind that is kept in test/conversations/community, with lines left
// out, doubled, out of order, from other talks, said by others, and broken.
import { readdirSync, readFileSync } from "node:fs";
import { communityTalk, withKeepersPlace } from "../support/community-talk.ts";
import { pick } from "../support/draws.ts";
import type { Chance } from "../support/random-tables.ts";
import { brokenText, hostilePieces, wellFormed } from "./pieces.ts";
import { processorMilliseconds, SLOW_MILLISECONDS, shown, type Target } from "./target.ts";

const talks = new URL("../conversations/community/", import.meta.url);
const LINES = 12;
const SPEAKERS = [
  "(ann)",
  "(bert)",
  "(kim, keeper)",
  "(olga, owner)",
  "(carl, contributor)",
  "(constructor)",
];
const RECORDS = ["<1>", "<2>", "<3>", "<99>", "__proto__", "aaaa-aaaa"];

export const community: Target = {
  name: "community",
  about: `${LINES} lines of talk in a community, in and out of order, some of them broken`,
  async open() {
    const scripts = readdirSync(talks)
      .toSorted()
      .map((name) => spokenIn(readFileSync(new URL(name, talks), "utf8")));
    // The handbook is read and made ready with the first question, which is nobody's fault.
    await communityTalk().say("which rear spoiler is this?");
    return {
      close: async () => undefined,
      async attempt(chance) {
        const talk = await withKeepersPlace(communityTalk());
        let script = pick(chance, scripts);
        let at = Math.floor(script.length * chance());
        const said: string[] = [];
        while (said.length < LINES) {
          if (chance() < 0.1) script = pick(chance, scripts);
          at = chance() < 0.75 ? at + 1 : Math.floor(script.length * chance());
          const line = otherwise(chance, script[at % script.length] ?? "", script);
          said.push(line);
          const from = processorMilliseconds();
          const answer = await talk.say(line);
          const took = processorMilliseconds() - from;
          if (answer === "") return `no answer to ${shown(said)}`;
          if (took > SLOW_MILLISECONDS) return `took ${took.toFixed(0)} ms: ${shown(said)}`;
        }
        return undefined;
      },
    };
  },
};

function spokenIn(script: string): readonly string[] {
  return script
    .split("\n")
    .filter((line) => line.startsWith("> "))
    .map((line) => line.slice(2));
}

/** Mostly as it is; else by somebody else, about another record, or broken. */
function otherwise(chance: Chance, line: string, script: readonly string[]): string {
  const luck = chance();
  const [, speaker = "", words = line] = /^(\(.*?\)) (.*)$/u.exec(line) ?? [];
  if (luck < 0.55) return line;
  if (luck < 0.65) return `${pick(chance, SPEAKERS)} ${words}`;
  if (luck < 0.75) return line.replace(/<\d+>/u, pick(chance, RECORDS));
  const changed =
    luck < 0.9
      ? brokenText(chance, words, script.join("\n"))
      : `${words.split(" ").slice(0, 2).join(" ")} ${pick(chance, hostilePieces)}`;
  return `${speaker === "" ? "(ann)" : speaker} ${wellFormed(changed).replaceAll("\n", " ").slice(0, 4000)}`;
}
