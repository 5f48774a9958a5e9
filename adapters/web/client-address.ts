/** Whose bucket a request takes from: the address it comes from, a whole home network where addresses are given out by the thousand. */
import type { Context } from "hono";

const loopback = new Set(["127.0.0.1", "::1", "::ffff:127.0.0.1"]);

/**
 * The address behind a request. A program on this machine that forwards requests is believed about whom it speaks for (the last entry
 * of X-Forwarded-For, the one it wrote itself); nobody else is.
 */
export function clientAddress(context: Context): string {
  const socket: unknown = context.env?.incoming?.socket?.remoteAddress;
  const near = typeof socket === "string" ? socket : "in-process";
  const forwarded = context.req.header("x-forwarded-for")?.split(",").at(-1)?.trim();
  return networkOf(loopback.has(near) && forwarded ? forwarded.slice(0, 60) : near);
}

/** An IPv6 address counts by its first four groups. */
function networkOf(address: string): string {
  if (!address.includes(":") || address.includes(".")) return address;
  return address.split(":").slice(0, 4).join(":");
}
