import { expect, test } from "vitest";
import { openDiscordDouble } from "../../doubles/discord/index.ts";
import type { User } from "../../doubles/discord/wire-shapes.ts";
import { addChannel, addGuild } from "../../doubles/discord/world.ts";
import { mainProgram, newFolder, run, start } from "../program.ts";
import { asRead } from "./as-read.ts";

test("the program logs in with its token, prints the link that invites it, answers, and ends when asked to", async () => {
  const double = await openDiscordDouble();
  const owner: User = { id: double.world.nextId(), username: "Orla" };
  const guild = addGuild(double.world, "Shrike Register", owner);
  const channel = addChannel(double.world, guild, "parts");
  const environment = { PORT: "0", DISCORD_TOKEN: double.world.token, DISCORD_API_BASE: double.base };
  const running = start(mainProgram, [], { folder: newFolder(), environment });
  const lines = await running.lines(3);
  expect(lines.join("\n")).toMatch(/Discord as witness-mark; invite it with http\S+permissions=\d+/u);
  double.people.mention(owner, channel, "which rear spoiler is this? square tips");
  const message = await double.until("the answer", () => double.written(channel.id).at(-1), 60_000);
  expect(asRead(message.content)).toContain("square tips");
  running.process.kill("SIGTERM");
  expect((await running.ended).status).toBe(0);
  expect(double.world.violations).toEqual([]);
  await double.close();
});

test("a token that Discord refuses ends it with one clear line that does not repeat it", async () => {
  const double = await openDiscordDouble();
  const environment = { PORT: "0", DISCORD_TOKEN: "a-wrong-token", DISCORD_API_BASE: double.base };
  const { status, err } = await run(mainProgram, [], "", { folder: newFolder(), environment });
  expect(status).toBe(1);
  expect(err).toContain(
    "DISCORD_TOKEN: Discord refuses the token; look at the token and at DISCORD_API_BASE",
  );
  expect(err).not.toContain("a-wrong-token");
  await double.close();
});
