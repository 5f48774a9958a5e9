// Discord's HTTP API as far as the bot uses it: strict about bodies, tokens, times and permissions, in Discord's own codes.
import type { IncomingMessage, ServerResponse } from "node:http";
import { setTimeout as pause } from "node:timers/promises";
import { messageAsSent } from "./as-sent.ts";
import type { Gateway } from "./gateway.ts";
import { routes } from "./routes.ts";
import { ApiError, type Asked } from "./routes-shape.ts";
import type { Json } from "./wire-shapes.ts";
import type { World } from "./world.ts";

/** What shall go wrong with the next requests that fit. */
export interface Fault {
  readonly method?: string;
  readonly path: RegExp;
  /** How many requests it strikes. */
  times: number;
  readonly how:
    | { readonly kind: "cut"; readonly when: "before" | "after" }
    | {
        readonly kind: "status";
        readonly status: number;
        readonly code?: number;
        readonly retryAfter?: number;
      }
    | { readonly kind: "delay"; readonly milliseconds: number };
}

export interface Requests {
  readonly faults: Fault[];
  /** How many are being answered. */
  open: number;
  /** By performance.now(), when the last one came. */
  last: number;
  readonly seen: { readonly method: string; readonly path: string }[];
}

export function handler(
  world: World,
  gateway: () => Gateway,
  requests: Requests,
): (request: IncomingMessage, response: ServerResponse) => void {
  return (request, response) => {
    requests.open += 1;
    requests.last = performance.now();
    void answer(world, gateway(), requests, request, response)
      .catch((failure: unknown) => {
        world.violations.push(
          `the double failed: ${failure instanceof Error ? failure.stack : String(failure)}`,
        );
        send(response, 500, { message: "double failed", code: 0 });
      })
      .finally(() => {
        requests.open -= 1;
        requests.last = performance.now();
      });
  };
}

async function answer(
  world: World,
  gateway: Gateway,
  requests: Requests,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const url = new URL(request.url ?? "/", "http://double");
  const method = request.method ?? "GET";
  const path = decodeURIComponent(url.pathname);
  const arrived = performance.now();
  const body = await bodyOf(request);
  const file = world.files.get(path);
  if (file !== undefined) {
    response.writeHead(200, { "content-type": "application/octet-stream" }).end(file);
    return;
  }
  requests.seen.push({ method, path });
  if (requests.seen.length > 2000) requests.seen.splice(0, 1000);
  const fault = faultFor(requests, method, path);
  if (fault !== undefined && (await struckBefore(fault, request, response))) return;
  const result = await route(world, gateway, { method, path, url, request, body, arrived });
  if (fault?.how.kind === "cut") return void request.socket.destroy();
  send(response, result.status, result.body);
}

function faultFor({ faults }: Requests, method: string, path: string): Fault | undefined {
  const fault = faults.find(
    (one) => one.times > 0 && (one.method ?? method) === method && one.path.test(path),
  );
  if (fault !== undefined) fault.times -= 1;
  return fault;
}

/** True when the request is never answered as it would be. */
async function struckBefore(
  { how }: Fault,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<boolean> {
  switch (how.kind) {
    case "cut":
      if (how.when === "before") request.socket.destroy();
      return how.when === "before";
    case "delay":
      await pause(how.milliseconds);
      return false;
    case "status": {
      const { status, code, retryAfter = 1 } = how;
      const limited = { message: "You are being rate limited.", retry_after: retryAfter, global: false };
      const headers =
        status === 429 ? { "retry-after": String(retryAfter), "x-ratelimit-scope": "user" } : {};
      send(response, status, status === 429 ? limited : { message: "no", code: code ?? 0 }, headers);
      return true;
    }
  }
}

interface Arrived {
  readonly method: string;
  readonly path: string;
  readonly url: URL;
  readonly request: IncomingMessage;
  readonly body: Body;
  readonly arrived: number;
}

async function route(
  world: World,
  gateway: Gateway,
  { method, path, url, request, body, arrived }: Arrived,
): Promise<{ readonly status: number; readonly body: unknown }> {
  if (!path.startsWith("/api/v10/")) return { status: 404, body: { message: "404: Not Found", code: 0 } };
  const rest = path.slice("/api/v10".length);
  const chosen = routes.find((one) => one.method === method && one.path.test(rest));
  if (chosen === undefined) {
    world.violations.push(`no such route: ${method} ${rest}`);
    return { status: 404, body: { message: "404: Not Found", code: 0 } };
  }
  if (chosen.isOpen !== true && request.headers.authorization !== `Bot ${world.token}`)
    return { status: 401, body: { message: "401: Unauthorized", code: 0 } };
  const asked: Asked = {
    world,
    gateway,
    names: (chosen.path.exec(rest) ?? []).slice(1).map((part) => part ?? ""),
    query: url.searchParams,
    body: body.json,
    files: body.files,
    arrived,
    shown: (message) => messageAsSent(world, message),
    host: `http://${request.headers.host}`,
  };
  try {
    const made = await chosen.answer(asked);
    return { status: made === undefined ? 204 : 200, body: made };
  } catch (failure) {
    if (!(failure instanceof ApiError)) throw failure;
    return { status: failure.status, body: { message: failure.message, code: failure.code } };
  }
}

export interface SentFile {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly type: string;
}

interface Body {
  readonly json: Json;
  readonly files: ReadonlyMap<string, SentFile>;
}

async function bodyOf(request: IncomingMessage): Promise<Body> {
  const parts: Buffer[] = [];
  for await (const part of request) parts.push(part);
  const bytes = Buffer.concat(parts);
  const type = request.headers["content-type"] ?? "";
  if (bytes.length === 0) return { json: {}, files: new Map() };
  if (!type.startsWith("multipart/")) return { json: JSON.parse(bytes.toString("utf8")), files: new Map() };
  const form = await new Response(bytes, { headers: { "content-type": type } }).formData();
  const files = new Map<string, SentFile>();
  let json: Json = {};
  for (const [name, value] of form) {
    if (typeof value === "string") json = name === "payload_json" ? JSON.parse(value) : json;
    else {
      const index = /^files\[(\d+)\]$/u.exec(name)?.[1] ?? name;
      files.set(index, {
        name: value.name,
        bytes: new Uint8Array(await value.arrayBuffer()),
        type: value.type,
      });
    }
  }
  return { json, files };
}

function send(
  response: ServerResponse,
  status: number,
  body: unknown,
  headers: Record<string, string> = {},
): void {
  // discord.js reads a body wherever a content type announces one.
  response.writeHead(status, {
    ...(body === undefined ? {} : { "content-type": "application/json" }),
    ...headers,
  });
  response.end(body === undefined ? undefined : JSON.stringify(body));
}
