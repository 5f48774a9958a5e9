/**
 * A forum sends a post, signed after the Standard Webhooks specification (v1, symmetric), and receives the reply as text, HTML and JSON.
 * What is forged, stale, sent again, too large or not a post is refused, each in its own way.
 */
import type { Context, Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import { Webhook } from "standardwebhooks";
import { plainText } from "../../../bot/index.ts";
import { noteAnswered, wasAnswered } from "../deliveries.ts";
import { ForumPost, heardFrom } from "../forum-post.ts";
import { formBytes } from "../limits.ts";
import { renderBlocks } from "../render/blocks.ts";
import { refuse } from "../respond.ts";
import type { Site } from "../site.ts";

type Status = 400 | 401 | 404 | 409 | 413;

export function webhookRoutes(app: Hono, site: Site): void {
  const small = bodyLimit({
    maxSize: formBytes,
    onError: (context) => {
      site.metrics.refused("size");
      return problem(context, 413, `at most ${formBytes} bytes`);
    },
  });
  app.post("/webhook/:source", small, (context) => delivered(context, site));
}

async function delivered(context: Context, site: Site): Promise<Response> {
  const source = context.req.param("source") ?? "";
  const secret = site.webhookSecrets.get(source);
  if (secret === undefined) return problem(context, 404, "no such source");
  const body = await context.req.text();
  if (!isSigned(context, secret, body)) {
    site.metrics.refused("forgery");
    return problem(context, 401, "the signature does not fit, or is more than five minutes off");
  }
  // Only what the forum signed takes from what it may send: else anybody could use that up.
  if (!site.limits.webhook.take(source)) {
    site.metrics.refused("rate");
    return refuse(context, site, "tooMuch");
  }
  const post = postIn(body);
  if (typeof post === "string") return problem(context, 400, post);
  const id = context.req.header("webhook-id") ?? "";
  if (await wasAnswered(site.store, site.clock, source, id)) {
    site.metrics.refused("replay");
    return problem(context, 409, "this delivery was made before");
  }
  const reply = await site.forumBot.receive(heardFrom(source, post));
  await noteAnswered(site.store, site.clock, source, id);
  site.metrics.message("webhook");
  const rendering = { drawings: site.drawings, units: "metric", part: reply.summary.part } as const;
  return context.json({
    text: plainText(reply),
    html: absolute(renderBlocks(reply.blocks, rendering).markup, site.address),
    reply: { blocks: reply.blocks, summary: reply.summary, isPrivate: reply.isPrivate ?? false },
  }) as Response;
}

function isSigned(context: Context, secret: string, body: string): boolean {
  const headers = Object.fromEntries(
    ["webhook-id", "webhook-timestamp", "webhook-signature"].map((name) => [
      name,
      context.req.header(name) ?? "",
    ]),
  );
  try {
    new Webhook(secret).verify(body, headers, { jsonParse: false });
    return true;
  } catch {
    // The library says by an error that a signature is not good; which of its reasons it was is nobody's business.
    return false;
  }
}

/** The post, or what is wrong with it. */
function postIn(body: string): ForumPost | string {
  let value: unknown;
  try {
    value = JSON.parse(body);
  } catch {
    return "the body is not JSON";
  }
  const parsed = ForumPost.safeParse(value);
  if (parsed.success) return parsed.data;
  return parsed.error.issues.map(({ path, message }) => `${path.join(".") || "post"}: ${message}`).join("; ");
}

/** Links and pictures as they must read on another site. */
function absolute(markup: string, address: string): string {
  return markup.replaceAll(/ (src|href)="\/(?!\/)/gu, ` $1="${address}/`);
}

function problem(context: Context, status: Status, text: string): Response {
  return context.json({ problem: text }, status) as Response;
}
