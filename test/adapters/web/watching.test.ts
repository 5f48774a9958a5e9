import { connect } from "node:net";
import { expect, test } from "vitest";
import { webSite } from "./web-site.ts";

test("a living process says so, whether or not it takes messages", async () => {
  const { address } = await webSite({ isReady: () => false });
  expect((await fetch(`${address}/healthz`)).status).toBe(200);
  expect((await fetch(`${address}/readyz`)).status).toBe(503);
});

test("a ready one says ready; other paths and methods are refused", async () => {
  const { address } = await webSite();
  expect(await (await fetch(`${address}/readyz?probe=1`)).text()).toBe("ready\n");
  expect((await fetch(`${address}/readyz`, { method: "POST" })).status).toBe(405);
  expect((await fetch(`${address}/no-such-page`)).status).toBe(404);
});

test("a port in use is said in one line with what to do", async () => {
  const { address } = await webSite();
  const port = Number(new URL(address).port);
  await expect(webSite({ port })).rejects.toThrow(
    `PORT: ${port} on 127.0.0.1 is in use by another program; set PORT to a free one, or 0 for any`,
  );
});

test("Prometheus reads how it is doing, by routes and without anybody's name or words", async () => {
  const { address } = await webSite();
  await fetch(`${address}/handbook?q=somebodys-words`);
  await fetch(`${address}/answers/AAAAAAAAAAAAAAAAAAAAAA`);
  const answer = await fetch(`${address}/metrics`);
  const text = await answer.text();
  expect(answer.headers.get("content-type")).toContain("text/plain");
  expect(text).toMatch(
    /witness_mark_http_request_seconds_count\{route="\/answers\/:id",method="GET",status="404"\} 1/u,
  );
  expect(text).toContain("witness_mark_ready 1");
  expect(text).not.toMatch(/somebodys|AAAA|127\.0\.0\.1/u);
});

test("what is under way is finished when it closes, and pages that listen are let go", async () => {
  const { address, close } = await webSite();
  const page = await fetch(`${address}/`);
  const cookie = page.headers.getSetCookie()[0]?.split(";")[0] ?? "";
  const events = await fetch(`${address}/events`, { headers: { cookie } });
  const begun = Date.now();
  await close();
  expect(await events.text()).toContain("event: open");
  expect(Date.now() - begun).toBeLessThan(4000);
  await expect(fetch(`${address}/healthz`)).rejects.toThrow();
});

test("a client that sends a letter now and then is let go of", async () => {
  const { address } = await webSite({ slowestRequestMilliseconds: 400 });
  const { port } = new URL(address);
  const answer = await new Promise<string>((resolve) => {
    const socket = connect(Number(port), "127.0.0.1");
    let said = "";
    const drip = setInterval(() => socket.write("x"), 100);
    socket.write(
      "POST /said HTTP/1.1\r\nhost: here\r\ncontent-type: application/x-www-form-urlencoded\r\ncontent-length: 5000\r\n\r\n",
    );
    socket.on("data", (bytes) => {
      said += String(bytes);
    });
    socket.on("error", () => undefined);
    socket.on("close", () => {
      clearInterval(drip);
      resolve(said);
    });
  });
  expect(answer).toMatch(/^(?:HTTP\/1.1 408[\s\S]*)?$/u);
  expect((await fetch(`${address}/healthz`)).status).toBe(200);
});
