// After a deliberate change: holds every conversation anew and writes the replies down, for somebody to read in the diff
// before it is kept. The messages stay; nothing here runs in the tests. `npx node test/conversations/redraft.ts`
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { emptyConversation, plainText, step } from "../../bot/index.ts";
import { communityTalk, withKeepersPlace } from "../support/community-talk.ts";
import { demoKnowledge, demoToday } from "../support/demo-knowledge.ts";
import { asKept, parseGolden } from "../support/golden-conversation.ts";

const folder = import.meta.dirname;
const { edition } = demoKnowledge().handbook;

for (const name of readdirSync(folder).filter((file) => file.endsWith(".txt"))) {
  const path = join(folder, name);
  const text = readFileSync(path, "utf8");
  const remarks = text.split("\n").filter((line) => line.startsWith("# "));
  let conversation = emptyConversation;
  const turns = parseGolden(text).map(({ message, said }) => {
    const taken = step(demoKnowledge(), conversation, message, demoToday);
    conversation = taken.conversation;
    return `> ${said}\n${asKept(plainText(taken.reply), edition)}\n`;
  });
  writeFileSync(path, `${[...remarks, turns.join("\n")].join("\n")}`);
}

const community = join(folder, "community");
for (const name of readdirSync(community).filter((file) => file.endsWith(".txt"))) {
  const path = join(community, name);
  const text = readFileSync(path, "utf8");
  const remarks = text.split("\n").filter((line) => line.startsWith("# "));
  const talk = await withKeepersPlace(communityTalk());
  const turns: string[] = [];
  for (const { said } of parseGolden(text)) turns.push(`> ${said}\n${await talk.say(said)}\n`);
  writeFileSync(path, [...remarks, turns.join("\n")].join("\n"));
}
