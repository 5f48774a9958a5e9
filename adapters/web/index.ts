/**
 * The web, served beside the terminal: chat, answers, handbook, desk, and the doors for forums, and the health of the process on the same
 * port. It needs no token and no configuration; on a public address it wants PUBLIC_ADDRESS.
 */
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { getRequestListener } from "@hono/node-server";
import type { Bot, Clock, Knowledge, Pages, Store } from "../../bot/index.ts";
import { OutsideError } from "../errors.ts";
import { applicationOf } from "./application.ts";
import { drawingsOf } from "./drawings.ts";
import { openLimits } from "./limits.ts";
import { liveTurns } from "./live-turns.ts";
import { openMetrics } from "./metrics.ts";
import { tellNotices } from "./notices.ts";
import type { PageLog, Photographs, Site } from "./site.ts";
import { assets } from "./static-files.ts";

export interface WebOptions {
  readonly host: string;
  /** 0: a free port. */
  readonly port: number;
  readonly botFor: (platform: string) => Bot;
  readonly pages: Pages;
  readonly knowledge: () => readonly Knowledge[];
  readonly store: Store;
  readonly clock: Clock;
  readonly log: PageLog;
  /** Asked at every /readyz: may messages be taken now? */
  readonly isReady: () => boolean;
  /** How the site is reached from outside; undefined: as it listens. */
  readonly publicAddress?: string | undefined;
  readonly webhookSecrets?: ReadonlyMap<string, string>;
  readonly photographs?: Photographs | undefined;
  /** Tests wait for less. */
  readonly slowestRequestMilliseconds?: number;
  readonly noticesEveryMilliseconds?: number;
}

export interface WebDoor {
  /** Where it listens, such as http://127.0.0.1:8787. */
  readonly address: string;
  /** Takes nothing new, finishes what is under way, at most for five seconds. */
  close(): Promise<void>;
}

const SLOWEST_REQUEST_MILLISECONDS = 30_000;
const LONGEST_FAREWELL_MILLISECONDS = 5000;
const NOTICES_EVERY_MILLISECONDS = 2000;
const MOST_HEADER_BYTES = 16 * 1024;

/** Throws OutsideError, in words fit to be shown, when the address cannot be had. */
export async function openWebDoor(options: WebOptions): Promise<WebDoor> {
  const slowest = options.slowestRequestMilliseconds ?? SLOWEST_REQUEST_MILLISECONDS;
  const server = createServer({
    maxHeaderSize: MOST_HEADER_BYTES,
    // A client that sends a letter a second is let go of: the head and the whole of a request have a time limit each.
    headersTimeout: Math.min(10_000, slowest),
    requestTimeout: slowest,
    keepAliveTimeout: 5000,
    connectionsCheckingInterval: Math.min(5000, slowest),
  });
  await listening(server, options);
  const address = addressOf(server, options.host);
  const site = siteOf(options, address);
  const listener = getRequestListener(applicationOf(site).fetch);
  server.on("request", (request, response) => void listener(request, response));
  const stopTelling = tellNotices(site, options.noticesEveryMilliseconds ?? NOTICES_EVERY_MILLISECONDS);
  const close = async () => {
    stopTelling();
    await closed(server, site);
  };
  return { address, close };
}

function siteOf(options: WebOptions, listensAt: string): Site {
  const live = liveTurns();
  const address = options.publicAddress ?? listensAt;
  const { isReady, clock } = options;
  return {
    bot: options.botFor("web"),
    forumBot: options.botFor("forum"),
    pages: options.pages,
    knowledge: options.knowledge,
    store: options.store,
    clock,
    log: options.log,
    isReady,
    address,
    isSecure: address.startsWith("https:"),
    webhookSecrets: options.webhookSecrets ?? new Map(),
    photographs: options.photographs,
    drawings: drawingsOf(() => options.knowledge().map(({ handbook }) => handbook)),
    assets,
    metrics: openMetrics({ isReady, listeners: live.count }),
    live,
    limits: openLimits(clock.milliseconds),
  };
}

function closed(server: Server, { live }: Site): Promise<void> {
  return new Promise((resolve) => {
    const late = setTimeout(() => server.closeAllConnections(), LONGEST_FAREWELL_MILLISECONDS);
    // A connection that has just given its answer falls idle only now.
    const idle = setInterval(() => server.closeIdleConnections(), 50);
    server.close(() => {
      clearTimeout(late);
      clearInterval(idle);
      resolve();
    });
    live.end();
  });
}

function listening(server: Server, { host, port }: WebOptions): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once("error", (cause: NodeJS.ErrnoException) => {
      const reason = reasons[cause.code ?? ""] ?? `cannot be opened (${cause.code ?? "unknown reason"})`;
      reject(new OutsideError(`PORT: ${port} on ${host} ${reason}`, cause));
    });
    server.listen(port, host, () => resolve());
  });
}

const reasons: Readonly<Record<string, string>> = {
  EADDRINUSE: "is in use by another program; set PORT to a free one, or 0 for any",
  EACCES: "may not be opened by this user; set PORT to 1024 or above",
  EADDRNOTAVAIL: "is not an address of this machine; set HOST",
  ENOTFOUND: "is not a known host; set HOST",
};

function addressOf(server: Server, host: string): string {
  const { port } = server.address() as AddressInfo;
  return `http://${host.includes(":") ? `[${host}]` : host}:${port}`;
}
