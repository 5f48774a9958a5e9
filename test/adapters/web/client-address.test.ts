import { Hono } from "hono";
import { describe, expect, test } from "vitest";
import { clientAddress } from "../../../adapters/web/client-address.ts";

async function seenAs(from: string, forwarded?: string, isSecure = false): Promise<string> {
  const app = new Hono().get("/", (context) => context.text(clientAddress(context, { isSecure })));
  const headers = forwarded === undefined ? {} : { "x-forwarded-for": forwarded };
  const answer = await app.request("/", { headers }, { incoming: { socket: { remoteAddress: from } } });
  return answer.text();
}

describe("whose bucket a request takes from", () => {
  test("a server on this machine is believed about whom it speaks for, in what it wrote itself", async () => {
    expect(await seenAs("127.0.0.1", "6.6.6.6, 203.0.113.9")).toBe("203.0.113.9");
    expect(await seenAs("::1", "203.0.113.9")).toBe("203.0.113.9");
    expect(await seenAs("::ffff:127.0.0.1", "203.0.113.9")).toBe("203.0.113.9");
    expect(await seenAs("127.0.0.1")).toBe("127.0.0.1");
  });

  test.each(["172.18.0.1", "10.4.4.4", "192.168.1.7", "::ffff:172.18.0.1", "fd00::1"])(
    "from %s, as from the host of a container, where a server for https must stand in front, and nowhere else",
    async (from) => {
      expect(await seenAs(from, "203.0.113.9", true)).toBe("203.0.113.9");
      expect(await seenAs(from, "203.0.113.9", false)).not.toBe("203.0.113.9");
    },
  );

  test.each(["198.51.100.7", "172.32.0.1", "2001:db8::7", "in-process"])(
    "%s speaks for itself alone",
    async (from) => {
      expect(await seenAs(from, "203.0.113.9", true)).not.toBe("203.0.113.9");
    },
  );

  // RFC 4291, section 2.2: the two colons stand for as many groups of zeros as are missing.
  test.each([
    ["2001:db8:0:1:aaaa::1", "2001:db8:0:1"],
    ["2001:0db8:0000:0001::2", "2001:db8:0:1"],
    ["2001:db8::5", "2001:db8:0:0"],
    ["2001:db8::1:2:3:4", "2001:db8:0:0"],
    ["::ffff:203.0.113.9", "203.0.113.9"],
    ["fe80::1%eth0", "fe80:0:0:0"],
  ])("%s is of the network %s", async (from, network) => {
    expect(await seenAs(from)).toBe(network);
  });
});
