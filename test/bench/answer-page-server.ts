// A process of its own for the bench of answer pages: the web over a SQLite file with fifty shared answers, and beside it the least that
// the framework can answer with. Says where both are on its first line, and ends with its input.

import { mkdtempSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { getRequestListener } from "@hono/node-server";
import { Hono } from "hono";
import { systemClock } from "../../adapters/clock.ts";
import { demonstrationHandbook, parseConfiguration } from "../../adapters/configuration.ts";
import { openHandbook } from "../../adapters/handbooks.ts";
import { openLog } from "../../adapters/log.ts";
import { openStore } from "../../adapters/store/open-store.ts";
import { openWebDoor } from "../../adapters/web/index.ts";
import { shareAnswer } from "../../adapters/web/shares.ts";
import {
  answerCard,
  communityMemories,
  conversationKind,
  knowledgeOf,
  openBot,
  pagesOf,
} from "../../bot/index.ts";

const PAGES = 50;
const parsed = parseConfiguration({ DATA_DIR: mkdtempSync(join(tmpdir(), "wm-bench-")) });
if (!parsed.ok) throw new Error(parsed.problems.join("; "));
const log = openLog({ level: "error" });
const store = await openStore(parsed.configuration, log);
const known = [knowledgeOf((await openHandbook(demonstrationHandbook)).handbook)];
const clock = systemClock();
const memories = communityMemories(store);
const secretKey = "a secret key of the bench, long enough";
const surroundings = { knowledge: () => known, store, memories, clock, log, secretKey };
const botFor = (platform: string) => openBot({ ...surroundings, platform });
const door = await openWebDoor({
  host: "127.0.0.1",
  port: 0,
  botFor,
  pages: pagesOf({ ...surroundings, platform: "web" }),
  knowledge: () => known,
  store,
  clock,
  log,
  isReady: () => true,
});
const said =
  "which rear spoiler is this? rough inside, square tips, two drain notches, home market car built may 1980";
await botFor("web").receive({ conversation: "web:bench", from: "web:bench", text: said });
const card = answerCard(known, await store.current(conversationKind, "web:bench"), { person: "web:bench" });
if (card === undefined) throw new Error("the bench's question has no answer");
const paths: string[] = [];
while (paths.length < PAGES) paths.push(`/answers/${await shareAnswer(store, clock, "web:bench", card)}`);

const bare = new Hono().get("/", (context) => context.html("<!doctype html><title>bare</title><p>bare</p>"));
const listener = getRequestListener(bare.fetch);
const bareServer = createServer((request, response) => void listener(request, response));
bareServer.listen(0, "127.0.0.1", () => {
  const { port } = bareServer.address() as AddressInfo;
  process.stdout.write(`${JSON.stringify({ web: door.address, paths, bare: `http://127.0.0.1:${port}` })}\n`);
});
process.stdin.on("end", () => process.exit(0)).resume();
