/** A web door on a free port over the demonstration's handbook and a memory, and a browser without script to go there with. */
import { afterEach } from "vitest";
import { systemClock } from "../../../adapters/clock.ts";
import { openHandbook } from "../../../adapters/handbooks.ts";
import { photographKeeper } from "../../../adapters/photographs/index.ts";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { openWebDoor, type WebDoor, type WebOptions } from "../../../adapters/web/index.ts";
import {
  communityMemories,
  type Knowledge,
  knowledgeOf,
  openBot,
  pagesOf,
  type Store,
} from "../../../bot/index.ts";
import { shrike } from "../program.ts";

const open: WebDoor[] = [];
afterEach(async () => {
  for (const door of open.splice(0)) await door.close();
});

export const silent = {
  info: () => undefined,
  warn: () => undefined,
  error: () => undefined,
  debug: () => undefined,
};

let shrikeKnowledge: Knowledge | undefined;

async function demonstration(): Promise<Knowledge> {
  shrikeKnowledge ??= knowledgeOf((await openHandbook(shrike)).handbook);
  return shrikeKnowledge;
}

export interface OpenSite {
  readonly address: string;
  readonly store: Store;
  readonly close: () => Promise<void>;
}

/** Closed after the test. */
export async function webSite(options: Partial<WebOptions> = {}, known?: Knowledge): Promise<OpenSite> {
  const knowledge = known ?? (await demonstration());
  const store = options.store ?? memoryStore();
  const clock = options.clock ?? systemClock();
  const surroundings = {
    knowledge: () => [knowledge],
    store,
    memories: communityMemories(store),
    clock,
    log: silent,
    secretKey: "a secret key of the tests, long enough",
  };
  const door = await openWebDoor({
    host: "127.0.0.1",
    port: 0,
    botFor: (platform) => openBot({ ...surroundings, platform }),
    pages: pagesOf({ ...surroundings, platform: "web" }),
    knowledge: () => [knowledge],
    store,
    clock,
    log: silent,
    isReady: () => true,
    photographs: photographKeeper(store, clock),
    ...options,
  });
  open.push(door);
  return { address: door.address, store, close: door.close };
}

/** Goes to pages, keeps cookies, sends the forms it finds there; follows where it is sent. */
export interface Reader {
  get(path: string): Promise<Seen>;
  /** Sends the first form whose markup holds `about`, with its own hidden fields and these. */
  send(seen: Seen, about: string, fields: Readonly<Record<string, string>>): Promise<Seen>;
  post(
    path: string,
    fields: Readonly<Record<string, string>>,
    headers?: Record<string, string>,
  ): Promise<Seen>;
  readonly cookies: Map<string, string>;
}

export interface Seen {
  readonly status: number;
  readonly path: string;
  readonly text: string;
  readonly headers: Headers;
}

export function readerAt(address: string): Reader {
  const cookies = new Map<string, string>();
  const ask = async (path: string, init: RequestInit = {}): Promise<Seen> => {
    const headers = new Headers(init.headers);
    if (cookies.size > 0)
      headers.set("cookie", [...cookies].map(([name, value]) => `${name}=${value}`).join("; "));
    const answer = await fetch(new URL(path, address), { ...init, headers, redirect: "manual" });
    for (const cookie of answer.headers.getSetCookie()) {
      const [pair = ""] = cookie.split(";");
      const [name = "", value = ""] = pair.split("=");
      cookies.set(name, value);
    }
    const onward = answer.headers.get("location");
    if (onward !== null) return ask(onward);
    return { status: answer.status, path, text: await answer.text(), headers: answer.headers };
  };
  const post: Reader["post"] = (path, fields, headers = {}) =>
    ask(path, { method: "POST", body: new URLSearchParams(fields), headers });
  return {
    cookies,
    get: (path) => ask(path),
    post,
    send(seen, about, fields) {
      const form = formsIn(seen.text).find((markup) => markup.includes(about));
      if (form === undefined) throw new Error(`no form with ${about}`);
      return post(actionOf(form), { ...hiddenIn(form), ...fields });
    },
  };
}

export function formsIn(text: string): readonly string[] {
  return text.match(/<form\b[\s\S]*?<\/form>/gu) ?? [];
}

export function hiddenIn(form: string): Readonly<Record<string, string>> {
  const inputs = [...form.matchAll(/<input type="hidden" name="([^"]*)" value="([^"]*)">/gu)];
  return Object.fromEntries(inputs.map(([, name = "", value = ""]) => [name, value]));
}

function actionOf(form: string): string {
  return /action="([^"]*)"/u.exec(form)?.[1] ?? "/";
}
