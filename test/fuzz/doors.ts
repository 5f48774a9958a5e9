// What strangers can send to the doors: requests, cookies, forms, signed posts, and the data of buttons on Discord and Telegram.
import { Webhook } from "standardwebhooks";
import { systemClock } from "../../adapters/clock.ts";
import { photographKeeper } from "../../adapters/photographs/index.ts";
import { memoryStore } from "../../adapters/store/memory.ts";
import { openWebDoor } from "../../adapters/web/index.ts";
import { communityMemories, openBot, pagesOf } from "../../bot/index.ts";
import { served } from "../adapters/discord/served.ts";
import { openClub } from "../adapters/telegram/club.ts";
import { demoKnowledge } from "../support/demo-knowledge.ts";
import { pick } from "../support/draws.ts";
import type { Chance } from "../support/random-tables.ts";
import { brokenText, hostilePieces, madeText, wellFormed } from "./pieces.ts";
import { type OpenTarget, shown, type Target } from "./target.ts";

const SECRET = `whsec_${Buffer.from("a secret of thirty-two bytes 123").toString("base64")}`;
const PATHS = [
  "/",
  "/said",
  "/said",
  "/events",
  "/healthz",
  "/metrics",
  "/doors",
  "/handbook",
  "/handbook/wexcombe-shrike",
  "/handbook/wexcombe-shrike/rear-spoiler",
  "/share",
  "/answers/aaaaaaaaaaaaaaaaaaaaaa",
  "/answers/x/withdraw",
  "/embed",
  "/embed/said",
  "/photographs/x",
  "/sign-in",
  "/sign-in/home/x",
  "/sign-out",
  "/desk/said",
  "/desk/pin",
  "/static/site.css",
  "/drawings/x.svg",
];
const FIELDS = [
  "turn",
  "text",
  "words",
  "feature",
  "state",
  "reading",
  "unit",
  "token",
  "q",
  "part",
  "secret",
  "units",
];

export const pages: Target = {
  name: "pages",
  about: "requests with hostile paths, cookies, headers, forms and signed posts to every route",
  async open() {
    const failures: string[] = [];
    const site = await openSite(failures);
    const visitor = await fetch(site.address);
    const cookie = visitor.headers.get("set-cookie")?.split(";")[0] ?? "";
    const token = /name="token" value="([^"]*)"/u.exec(await visitor.text())?.[1] ?? "";
    return {
      close: site.close,
      async attempt(chance) {
        const request = chance() < 0.35 ? signedPost(chance) : plainRequest(chance, cookie, token);
        const before = failures.length;
        const answer = await sent(site.address, request);
        if (answer === undefined) return undefined;
        const { status, text } = answer;
        const where = `${request.method} ${shown(request.path)} ${shown(request.body ?? "")} ${shown(request.headers)}`;
        if (status >= 500) return `${status} for ${where}`;
        if (failures.length > before) return `${failures.at(-1)} for ${where}`;
        return text.includes("<script>alert(1)") && !request.path.startsWith("/webhook")
          ? `a script comes back as one for ${where}`
          : undefined;
      },
    };
  },
};

interface Request {
  readonly method: string;
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body?: string;
}

function plainRequest(chance: Chance, cookie: string, token: string): Request {
  const method = pick(chance, ["GET", "GET", "POST", "POST", "HEAD", "PUT", "DELETE", "OPTIONS"]);
  const query = chance() < 0.4 ? `?${form(chance, token)}` : "";
  const path = chance() < 0.75 ? pick(chance, PATHS) : `/${encoded(madeText(chance, 4, PATHS))}`;
  const cookies =
    chance() < 0.5
      ? cookie
      : `${pick(chance, ["visitor", "session", "__proto__"])}=${encoded(madeText(chance, 4))}`;
  const type = pick(chance, [
    "application/x-www-form-urlencoded",
    "application/json",
    "multipart/form-data; boundary=x",
    "multipart/form-data",
    "text/plain",
  ]);
  const headers = {
    cookie: cookies,
    "content-type": type,
    "x-forwarded-for": `10.0.${Math.floor(250 * chance())}.${Math.floor(250 * chance())}`,
    ...(chance() < 0.3 ? { "accept-language": encoded(madeText(chance, 3)) } : {}),
    ...(chance() < 0.3 ? { "x-wanted": "turn" } : {}),
  };
  if (method === "GET" || method === "HEAD") return { method, path: path + query, headers };
  const body = chance() < 0.7 ? form(chance, token) : madeText(chance, 8);
  return { method, path: path + query, headers, body };
}

function form(chance: Chance, token: string): string {
  const fields = Array.from({ length: Math.floor(6 * chance()) }, () => [
    pick(chance, FIELDS),
    chance() < 0.2 ? "rough inside" : wellFormed(madeText(chance, 3)),
  ]);
  return new URLSearchParams([
    ["token", chance() < 0.8 ? token : "x"],
    ...(fields as [string, string][]),
  ]).toString();
}

const POST = JSON.stringify({
  id: "post-1",
  thread: "topic-7",
  author: { id: "17", name: "Ina" },
  text: "which rear spoiler is this? rough inside",
  quoted: { author: { id: "18", name: "Ede" }, text: "no mark, six screws" },
  private: false,
}).replaceAll(",", ",\n");

function signedPost(chance: Chance): Request {
  const body = wellFormed(
    chance() < 0.8 ? brokenText(chance, POST, POST) : madeText(chance, 10, POST.split("\n")),
  );
  const id = `d${Math.floor(1e9 * chance())}`;
  const at = new Date();
  const isForged = chance() < 0.2;
  const headers = {
    "content-type": "application/json",
    "webhook-id": isForged ? encoded(madeText(chance, 2)) : id,
    "webhook-timestamp": `${Math.floor(at.getTime() / 1000)}`,
    "webhook-signature": isForged
      ? `v1,${encoded(madeText(chance, 2))}`
      : new Webhook(SECRET).sign(id, at, body),
  };
  return { method: "POST", path: "/webhook/forum", headers, body };
}

function encoded(text: string): string {
  return encodeURIComponent(wellFormed(text)).slice(0, 4000);
}

/** undefined: the client itself would not send it, or the server has hung up, which is its right. */
async function sent(
  address: string,
  { method, path, headers, body }: Request,
): Promise<{ readonly status: number; readonly text: string } | undefined> {
  const stop = AbortSignal.timeout(10_000);
  try {
    const url = address + path;
    const answer = await fetch(url, {
      method,
      headers,
      redirect: "manual",
      signal: stop,
      ...(body === undefined ? {} : { body }),
    });
    if (answer.headers.get("content-type")?.startsWith("text/event-stream") === true) {
      await answer.body?.cancel();
      return { status: answer.status, text: "" };
    }
    return { status: answer.status, text: await answer.text() };
  } catch (failure) {
    if (stop.aborted) return { status: 599, text: "no answer within ten seconds" };
    if (failure instanceof TypeError) return undefined;
    throw failure;
  }
}

async function openSite(failures: string[]) {
  const store = memoryStore();
  const log = {
    debug: () => undefined,
    info: () => undefined,
    warn: () => undefined,
    error: (fields: object, words: string) => {
      failures.push(`${words} ${"err" in fields ? String(fields.err) : ""}`);
    },
  };
  // A clock that runs ahead, so that no limit on how often is met.
  let ahead = 0;
  const real = systemClock();
  const clock = {
    today: () => real.today(),
    milliseconds: () => {
      ahead += 1000;
      return real.milliseconds() + ahead;
    },
  };
  const memories = communityMemories(store);
  const knowledge = () => [demoKnowledge()];
  const surroundings = {
    knowledge,
    store,
    memories,
    clock,
    log,
    secretKey: "a secret key, long enough for it",
  };
  return openWebDoor({
    host: "127.0.0.1",
    port: 0,
    botFor: (platform) => openBot({ ...surroundings, platform }),
    pages: pagesOf({ ...surroundings, platform: "web" }),
    knowledge,
    store,
    clock,
    log,
    isReady: () => true,
    webhookSecrets: new Map([["forum", SECRET]]),
    photographs: photographKeeper(store, clock),
  });
}

export const buttons: Target = {
  name: "buttons",
  about: "forged data of buttons on Telegram and Discord, between presses that were offered",
  async open(): Promise<OpenTarget> {
    const club = await openClub();
    const server = await served();
    const person = 101;
    const asked = server.double.people.slash(server.ann, server.channel, "ask", {
      question: "which rear spoiler is this?",
    });
    const message = await server.answer(asked);
    club.double.people.say(person, person, "which rear spoiler is this?");
    await club.settled();
    return {
      async close() {
        await club.close();
        await server.close();
      },
      attempt: (chance) =>
        chance() < 0.5 ? pressTelegram(chance, club, person) : pressDiscord(chance, server, message),
    };
  },
};

async function pressTelegram(
  chance: Chance,
  club: Awaited<ReturnType<typeof openClub>>,
  person: number,
): Promise<string | undefined> {
  const board = club.written(person).at(-1);
  const known = board?.buttons.flat().flatMap(({ callback_data: data }) => data ?? []) ?? [];
  const data = forged(chance, known, 64);
  const number = chance() < 0.8 ? (board?.id ?? 1) : Math.floor(1e6 * chance());
  const press = club.double.people.forge(person, number, person, data);
  await club.settled();
  const { violations, world } = club.double;
  if (violations.length > 0) return `Telegram, ${shown(data)}: ${violations.join("; ")}`;
  return (world.callbacks.get(press)?.count ?? 0) === 1
    ? undefined
    : `Telegram, ${shown(data)}: the press is not acknowledged once`;
}

async function pressDiscord(
  chance: Chance,
  server: Awaited<ReturnType<typeof served>>,
  message: Parameters<typeof server.double.people.pressId>[1],
): Promise<string | undefined> {
  const known = message.components
    .flatMap(({ components }) => components ?? [])
    .flatMap(({ custom_id: id }) => id ?? []);
  const data = forged(chance, known, 100);
  const values = chance() < 0.2 ? [forged(chance, known, 100)] : undefined;
  const logged = server.log.length;
  const press = server.double.people.pressId(server.bert, message, data, values);
  await server.settled();
  const { violations } = server.double.world;
  if (violations.length > 0) return `Discord, ${shown(data)}: ${violations.join("; ")}`;
  const failed = server.log.slice(logged).find(({ level }) => level === "error");
  if (failed !== undefined)
    return `Discord, ${shown(data)}: ${failed.message} ${shown(String(Object.values(failed.fields)[0]))}`;
  return press.acknowledgedAt === undefined
    ? `Discord, ${shown(data)}: the press is not acknowledged`
    : undefined;
}

/** One that was offered, one broken from it, or one of somebody's own making; never empty, which the platforms do not send. */
function forged(chance: Chance, known: readonly string[], longest: number): string {
  const whole = known.length > 0 ? pick(chance, known) : "x.0";
  if (chance() < 0.2) return whole;
  const made =
    chance() < 0.6
      ? whole.replace(/[\w.-]+/u, (part) =>
          chance() < 0.5 ? part.slice(1) : `${part}${pick(chance, hostilePieces)}`,
        )
      : madeText(chance, 4, [...known, "o", "v", "~", ".", "0", "s1", "f", "p9"]);
  return wellFormed(made).slice(0, longest) || "x";
}
