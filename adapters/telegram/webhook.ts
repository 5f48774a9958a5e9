/** Updates by webhook: a small server of its own that takes what carries the secret, and answers once the update was handled. */
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { type Bot, webhookCallback } from "grammy";
import type { Log } from "../../bot/index.ts";
import { OutsideError } from "../errors.ts";
import { forTheLog } from "./for-the-log.ts";

export interface WebhookPlace {
  /** Where the platform sends updates: an address it can reach. */
  readonly url: string;
  readonly secret: string;
  readonly host: string;
  readonly port: number;
}

/** The platform sends an update again when it waits longer than about a minute. */
const PATIENCE_MILLISECONDS = 50_000;

/** How long a process that ends waits for what it is handling. */
const PARTING_MILLISECONDS = 10_000;

export async function openWebhook(
  client: Bot,
  { url, secret, host, port }: WebhookPlace,
  log: Log,
): Promise<{ readonly address: string; close(): Promise<void> }> {
  const path = new URL(url).pathname;
  const take = webhookCallback(client, "http", {
    secretToken: secret,
    timeoutMilliseconds: PATIENCE_MILLISECONDS,
  });
  const server = createServer((request, response) => {
    if (request.method !== "POST" || request.url !== path) {
      response.writeHead(404).end();
      return;
    }
    // Whatever is wrong with an update, the platform is told to bring it again.
    take(request, response).catch((failure: unknown) => {
      log.error(forTheLog(failure), "an update could not be handled; the platform will bring it again");
      if (!response.headersSent) response.writeHead(500);
      response.end();
    });
  });
  await listening(server, host, port);
  const { port: taken } = server.address() as AddressInfo;
  return {
    address: `http://${host.includes(":") ? `[${host}]` : host}:${taken}${path}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeIdleConnections();
        setTimeout(() => server.closeAllConnections(), PARTING_MILLISECONDS).unref();
      }),
  };
}

function listening(server: Server, host: string, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once("error", (cause: NodeJS.ErrnoException) => {
      reject(
        new OutsideError(`TELEGRAM_WEBHOOK_PORT: ${port} on ${host} cannot be opened (${cause.code})`, cause),
      );
    });
    server.listen(port, host, () => resolve());
  });
}
