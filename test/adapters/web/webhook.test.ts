import { execFile } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { promisify } from "node:util";
import { Webhook } from "standardwebhooks";
import { expect, test } from "vitest";
import { UnavailableError } from "../../../adapters/errors.ts";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { webhookExample } from "../../../adapters/web/door-examples.ts";
import type { Store } from "../../../bot/index.ts";
import { root } from "../program.ts";
import { webSite } from "./web-site.ts";

const secret = `whsec_${Buffer.from("a secret of thirty-two bytes 123").toString("base64")}`;
const webhookSecrets = new Map([["forum", secret]]);
const post = {
  id: "post-1",
  thread: "topic-7",
  author: { id: "17", name: "Ina" },
  text: "which rear spoiler is this? rough inside",
};

interface Delivery {
  readonly id?: string;
  readonly at?: Date;
  readonly body?: string;
  readonly signedBody?: string;
  readonly key?: string;
  readonly source?: string;
}

function deliver(address: string, delivery: Delivery = {}): Promise<Response> {
  const { id = "msg_1", at = new Date(), body = JSON.stringify(post), source = "forum" } = delivery;
  const signature = new Webhook(delivery.key ?? secret).sign(id, at, delivery.signedBody ?? body);
  return fetch(`${address}/webhook/${source}`, {
    method: "POST",
    body,
    headers: {
      "webhook-id": id,
      "webhook-timestamp": `${Math.floor(at.getTime() / 1000)}`,
      "webhook-signature": signature,
    },
  });
}

test("a signed post is answered as text, HTML and JSON", async () => {
  const { address } = await webSite({ webhookSecrets });
  const answer = await deliver(address);
  expect(answer.status).toBe(200);
  const { text, html, reply } = (await answer.json()) as {
    text: string;
    html: string;
    reply: { summary: { part: string } };
  };
  expect(text).toContain("inside finish: rough, fibres showing");
  expect(html).toContain("<dt>inside finish</dt><dd>rough, fibres showing");
  expect(html).toContain(`src="${address}/drawings/`);
  expect(html).not.toMatch(/<form|<button|<script/u);
  expect(reply.summary.part).toBe("rear-spoiler");
});

test("forged, changed, old, early, replayed and misdirected deliveries are refused and change nothing", async () => {
  const { address, store } = await webSite({ webhookSecrets });
  const key = `whsec_${Buffer.from("another secret, thirty-two bytes").toString("base64")}`;
  const minutes = (count: number) => new Date(Date.now() + count * 60_000);
  const statuses = async (...deliveries: readonly Delivery[]) => {
    const all: number[] = [];
    for (const delivery of deliveries) all.push((await deliver(address, delivery)).status);
    return all;
  };
  const changed = JSON.stringify({ ...post, text: "another text" });
  expect(
    await statuses(
      { key },
      { signedBody: changed },
      { at: minutes(-6) },
      { at: minutes(6) },
      { source: "other" },
    ),
  ).toEqual([401, 401, 401, 401, 404]);
  expect(await store.ids("conversation")).toEqual([]);
  expect(await statuses({ id: "msg_2" }, { id: "msg_2" })).toEqual([200, 409]);
  expect(await store.history("conversation", "forum:forum:topic-7")).toHaveLength(1);
});

test("forged deliveries take nothing from what the forum itself may send", async () => {
  const { address } = await webSite({ webhookSecrets });
  const key = `whsec_${Buffer.from("another secret, thirty-two bytes").toString("base64")}`;
  const forged = await Promise.all(
    Array.from({ length: 150 }, (_, number) => deliver(address, { id: `msg_${number}`, key })),
  );
  expect(new Set(forged.map(({ status }) => status))).toEqual(new Set([401]));
  expect((await deliver(address, { id: "msg_own" })).status).toBe(200);
});

test("the same post in a new delivery gets the first reply and is heard once", async () => {
  const { address, store } = await webSite({ webhookSecrets });
  const first = await (await deliver(address, { id: "msg_1" })).text();
  const again = await (await deliver(address, { id: "msg_2" })).text();
  expect(again).toBe(first);
  expect(await store.history("conversation", "forum:forum:topic-7")).toHaveLength(1);
});

test("a delivery that failed on the way to its answer is answered when it comes again, and refused after that", async () => {
  const kept = memoryStore();
  let isFull = true;
  const store: Store = {
    ...kept,
    advance: (change, advance) =>
      isFull && change.kind === "conversation"
        ? Promise.reject(new UnavailableError("store: the disk is full"))
        : kept.advance(change, advance),
  };
  const { address } = await webSite({ webhookSecrets, store });
  const failed = await deliver(address);
  expect([failed.status, failed.headers.get("retry-after")]).toEqual([503, "60"]);
  expect(await failed.json()).toEqual({ problem: expect.stringContaining("was not kept") });
  isFull = false;
  expect((await deliver(address)).status).toBe(200);
  expect((await deliver(address)).status).toBe(409);
  expect(await store.history("conversation", "forum:forum:topic-7")).toHaveLength(1);
});

test("what is no post, or too large, is refused with the reason", async () => {
  const { address } = await webSite({ webhookSecrets });
  const bodies = [
    "no json",
    "[]",
    JSON.stringify({ ...post, extra: 1 }),
    JSON.stringify({ ...post, id: "" }),
  ];
  for (const [index, body] of bodies.entries()) {
    const answer = await deliver(address, { id: `msg_${index}`, body });
    expect([answer.status, body]).toEqual([400, body]);
    expect(await answer.json()).toEqual({ problem: expect.stringMatching(/\S/u) });
  }
  const large = JSON.stringify({ ...post, text: "x".repeat(70_000) });
  expect((await deliver(address, { body: large })).status).toBe(413);
});

test("two forums never meet in one conversation", async () => {
  const both = new Map([...webhookSecrets, ["club", secret]]);
  const { address, store } = await webSite({ webhookSecrets: both });
  await deliver(address, { id: "msg_1" });
  await deliver(address, { id: "msg_1", source: "club" });
  expect(await store.ids("conversation")).toEqual(["forum:club:topic-7", "forum:forum:topic-7"]);
});

test("the example with curl, as the page and the README show it, runs", async () => {
  const readme = readFileSync(join(root, "README.md"), "utf8");
  expect(readme.includes(webhookExample("http://127.0.0.1:8787"))).toBe(true);
  const { address } = await webSite({ webhookSecrets });
  const script = webhookExample(address).replace(/^secret=\S+.*$/mu, `secret=${secret}`);
  const { stdout } = await promisify(execFile)("bash", ["-euc", script]);
  expect(JSON.parse(stdout)).toMatchObject({ reply: { summary: { part: "rear-spoiler" } } });
});
