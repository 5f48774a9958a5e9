// A loopback double of the Bot API: grammy talks to it unmodified. It checks every call against the published description,
// enforces the platform's limits, and can fail as the platform and the network do.
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import type { Update } from "@grammyjs/types";
import { type Answer, Refused, tooMany } from "./answers.ts";
import { isMethod, violationsOf } from "./check-call.ts";
import { type Call, carryOut } from "./methods.ts";
import { type People, peopleOf } from "./people.ts";
import { readBody } from "./read-body.ts";
import { newWorld, type World } from "./world.ts";

/** What happens to the next call of a method instead of an answer. */
export type Fault =
  | { readonly kind: "too many"; readonly seconds: number }
  | { readonly kind: "server error" }
  /** Carried out, and then 502: a gateway in between that lost its patience. */
  | { readonly kind: "server error after" }
  | { readonly kind: "cut before" }
  | { readonly kind: "cut after" };

export interface TelegramDouble {
  readonly root: string;
  readonly token: string;
  readonly world: World;
  readonly people: People;
  /** Every call that was answered, oldest first. */
  readonly calls: readonly (Call & { readonly answer: Answer | "cut" })[];
  /** Calls that were not what the description says, or broke a limit: none, when the bot is sound. */
  readonly violations: readonly string[];
  /** Names that a text of the bot would have rung for. */
  readonly rung: readonly string[];
  fail(method: string, fault: Fault, times?: number): void;
  /** Forgets what was called and delivered, and all but the newest messages: for sessions that last. */
  forget(): void;
  close(): Promise<void>;
}

/** Refusals that a sound bot may run into; all other 400s are faults of the bot. */
const excusable =
  /not found|can't be edited|can't be deleted|not modified|not enough rights|upgraded|query is too old|wrong file_id|file is too big|there are no administrators/u;

export async function openTelegramDouble(): Promise<TelegramDouble> {
  const token = "700000001:double-of-the-bot-api";
  const world = newWorld();
  const calls: (Call & { readonly answer: Answer | "cut" })[] = [];
  const violations: string[] = [];
  const rung: string[] = [];
  const faults = new Map<string, Fault[]>();
  const waiting = new Set<(conflict: boolean) => void>();
  world.arrived = () => {
    for (const wake of [...waiting]) wake(false);
  };

  const server = createServer((request, response) => {
    serve(request, response).catch((failure: unknown) => {
      violations.push(`the double failed: ${String(failure)}`);
      response.destroy();
    });
  });

  async function serve(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const url = request.url ?? "";
    const file = new RegExp(`^/file/bot${token}/photos/([\\w-]+)\\.jpg$`, "u").exec(url)?.[1];
    if (file !== undefined) return serveFile(file, response);
    const method = new RegExp(`^/bot${token}/(\\w+)$`, "u").exec(url)?.[1];
    if (method === undefined) {
      return reply(response, { ok: false, error_code: 401, description: "Unauthorized" });
    }
    const call: Call = { method, ...(await readBody(method, request)) };
    const fault = faults.get(method)?.shift();
    if (fault?.kind === "cut before") {
      calls.push({ ...call, answer: "cut" });
      response.destroy();
      return;
    }
    const answer = await answerTo(call, fault, request);
    if (fault?.kind === "cut after") {
      calls.push({ ...call, answer: "cut" });
      response.destroy();
      return;
    }
    calls.push({ ...call, answer });
    reply(response, answer);
  }

  async function answerTo(call: Call, fault: Fault | undefined, request: IncomingMessage): Promise<Answer> {
    if (fault?.kind === "too many") return tooMany(fault.seconds);
    if (fault?.kind === "server error") return serverError;
    const wrong = isMethod(call.method)
      ? violationsOf(call.method, call.payload)
      : [`no method ${call.method}`];
    violations.push(...wrong);
    if (wrong.length > 0) return { ok: false, error_code: 400, description: `Bad Request: ${wrong[0]}` };
    const answer = call.method === "getUpdates" ? await updates(call, request) : carriedOut(call);
    if (!answer.ok && answer.error_code === 400 && !excusable.test(answer.description)) {
      violations.push(`${call.method}: ${answer.description}`);
    }
    return fault?.kind === "server error after" ? serverError : answer;
  }

  function carriedOut(call: Call): Answer {
    try {
      return carryOut(world, call, (name) => rung.push(name));
    } catch (failure) {
      if (failure instanceof Refused) return failure.answer;
      throw failure;
    }
  }

  async function updates({ payload }: Call, request: IncomingMessage): Promise<Answer> {
    if (world.webhook.url !== "") return conflict("can't use getUpdates method while webhook is active");
    // A newer poller ends the older one.
    for (const wake of [...waiting]) wake(true);
    const offset = Number(payload.offset ?? 0);
    world.updates = world.updates.filter(({ update_id }) => update_id >= offset);
    if (world.updates.length === 0 && Number(payload.timeout ?? 0) > 0) {
      const isConflict = await new Promise<boolean>((resolve) => {
        const end = (conflicts: boolean) => {
          clearTimeout(timer);
          waiting.delete(end);
          resolve(conflicts);
        };
        const timer = setTimeout(() => end(false), Number(payload.timeout) * 1000);
        waiting.add(end);
        request.socket.setMaxListeners(0).once("close", () => end(false));
      });
      if (isConflict)
        return conflict(
          "terminated by other getUpdates request; make sure that only one bot instance is running",
        );
    }
    const given: readonly Update[] = world.updates.slice(0, Number(payload.limit ?? 100));
    world.delivered.push(...given.filter((update) => !world.delivered.includes(update)));
    return { ok: true, result: given };
  }

  function serveFile(name: string, response: ServerResponse): void {
    const bytes = world.files.get(name);
    const fault = faults.get("file")?.shift();
    if (fault !== undefined) response.destroy();
    else if (bytes === undefined) response.writeHead(404).end();
    else response.writeHead(200, { "content-length": bytes.length }).end(bytes);
  }

  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  return {
    root: `http://127.0.0.1:${port}`,
    token,
    world,
    people: peopleOf(world),
    calls,
    violations,
    rung,
    fail(method, fault, times = 1) {
      faults.set(method, [...(faults.get(method) ?? []), ...Array<Fault>(times).fill(fault)]);
    },
    forget() {
      calls.length = 0;
      world.delivered.splice(0, world.delivered.length - 1);
      world.callbacks.clear();
      for (const { messages } of world.rooms.values()) messages.splice(0, messages.length - 40);
    },
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

const serverError: Answer = { ok: false, error_code: 502, description: "Bad Gateway" };

const conflict = (words: string): Answer => ({
  ok: false,
  error_code: 409,
  description: `Conflict: ${words}`,
});

function reply(response: ServerResponse, answer: Answer): void {
  const status = answer.ok ? 200 : answer.error_code;
  response.writeHead(status, { "content-type": "application/json" }).end(JSON.stringify(answer));
}
