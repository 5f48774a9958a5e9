import { afterEach, expect, test } from "vitest";
import { type HealthDoor, openHealthDoor } from "../../adapters/health/index.ts";

const open: HealthDoor[] = [];

async function doorThatIs(isReady: boolean): Promise<HealthDoor> {
  const door = await openHealthDoor({ host: "127.0.0.1", port: 0, isReady: () => isReady });
  open.push(door);
  return door;
}

afterEach(async () => {
  for (const door of open.splice(0)) await door.close();
});

test("a living process says so, whether or not it takes messages", async () => {
  const { address } = await doorThatIs(false);
  expect((await fetch(`${address}/healthz`)).status).toBe(200);
  expect((await fetch(`${address}/readyz`)).status).toBe(503);
});

test("a ready one says ready; other paths and methods are refused", async () => {
  const { address } = await doorThatIs(true);
  expect(await (await fetch(`${address}/readyz?probe=1`)).text()).toBe("ready\n");
  expect((await fetch(`${address}/`)).status).toBe(404);
  expect((await fetch(`${address}/readyz`, { method: "POST" })).status).toBe(405);
});

test("a port in use is said in one line with what to do", async () => {
  const { address } = await doorThatIs(true);
  const port = Number(new URL(address).port);
  await expect(openHealthDoor({ host: "127.0.0.1", port, isReady: () => true })).rejects.toThrow(
    `PORT: ${port} on 127.0.0.1 is in use by another program; set PORT to a free one, or 0 for any`,
  );
});
