/**
 * A door for whatever watches the process (a container's health check, a load balancer): node:http and two answers.
 * It needs no web framework, and keeps working while one is added beside it.
 */
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { OutsideError } from "../errors.ts";

export interface HealthOptions {
  readonly host: string;
  /** 0: a free port. */
  readonly port: number;
  /** Asked at every /readyz: may messages be taken now? */
  readonly isReady: () => boolean;
}

export interface HealthDoor {
  /** Where it is reached, such as http://127.0.0.1:8787. */
  readonly address: string;
  close(): Promise<void>;
}

/**
 * Answers /healthz (the process lives) and /readyz (it takes messages, else 503). Throws OutsideError, in words fit to be
 * shown, when the address cannot be had.
 */
export async function openHealthDoor(options: HealthOptions): Promise<HealthDoor> {
  const server = createServer((request, response) => {
    const { status, text } = answerTo(request.method ?? "", request.url ?? "", options.isReady);
    response.writeHead(status, { "content-type": "text/plain; charset=utf-8", "cache-control": "no-store" });
    response.end(request.method === "HEAD" ? undefined : `${text}\n`);
  });
  await listening(server, options);
  return {
    address: addressOf(server, options.host),
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

function answerTo(
  method: string,
  url: string,
  isReady: () => boolean,
): { readonly status: number; readonly text: string } {
  if (method !== "GET" && method !== "HEAD") return { status: 405, text: "only GET and HEAD" };
  const [path] = url.split("?");
  if (path === "/healthz") return { status: 200, text: "alive" };
  if (path === "/readyz")
    return isReady() ? { status: 200, text: "ready" } : { status: 503, text: "not ready" };
  return { status: 404, text: "not found" };
}

function listening(server: Server, { host, port }: HealthOptions): Promise<void> {
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
