/** Whose bucket a request takes from: the address it comes from, a whole home network where addresses are given out by the thousand. */
import { BlockList, isIP, isIPv6 } from "node:net";
import type { Context } from "hono";
import type { Site } from "./site.ts";

/** This machine, and the networks that nobody outside has an address in (RFC 1918, RFC 4193, RFC 4291). */
const near = { machine: new BlockList(), networks: new BlockList() };
near.machine.addSubnet("127.0.0.0", 8);
near.machine.addAddress("::1", "ipv6");
near.networks.addSubnet("10.0.0.0", 8);
near.networks.addSubnet("172.16.0.0", 12);
near.networks.addSubnet("192.168.0.0", 16);
near.networks.addSubnet("fc00::", 7, "ipv6");
near.networks.addSubnet("fe80::", 10, "ipv6");

/**
 * The address behind a request. A server on this machine that forwards requests is believed about whom it speaks for (the last entry of
 * X-Forwarded-For, the one it wrote itself); and one near by, as the host of a container is, where the site is reached by https, which this
 * program does not speak itself. Nobody else is.
 */
export function clientAddress(context: Context, { isSecure }: Pick<Site, "isSecure">): string {
  const socket: unknown = context.env?.incoming?.socket?.remoteAddress;
  const from = typeof socket === "string" ? withoutZone(socket) : "in-process";
  const forwarded = context.req.header("x-forwarded-for")?.split(",").at(-1)?.trim();
  const isBelieved = isIn(near.machine, from) || (isSecure && isIn(near.networks, from));
  return networkOf(isBelieved && forwarded ? withoutZone(forwarded.slice(0, 60)) : from);
}

function isIn(list: BlockList, address: string): boolean {
  return isIP(address) !== 0 && list.check(address, isIPv6(address) ? "ipv6" : "ipv4");
}

function withoutZone(address: string): string {
  return address.split("%", 1)[0] ?? address;
}

/** An IPv6 address counts by its first four groups, written out; one that stands for an IPv4 address counts as that. */
function networkOf(address: string): string {
  if (!isIPv6(address)) return address;
  if (address.includes(".")) return address.slice(address.lastIndexOf(":") + 1);
  const [head = "", tail = ""] = address.split("::");
  const before = head.split(":").filter((group) => group !== "");
  const after = tail.split(":").filter((group) => group !== "");
  const between = address.includes("::") ? 8 - before.length - after.length : 0;
  const groups = [...before, ...Array.from({ length: between }, () => "0"), ...after];
  return groups
    .slice(0, 4)
    .map((group) => Number.parseInt(group, 16).toString(16))
    .join(":");
}
