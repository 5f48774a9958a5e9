/**
 * The chat page: the conversation with buttons, fields and photographs. Forms that answer with a page; the script sends the same forms
 * and gets the one turn that is new.
 */
import type { Context, Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import { clientAddress } from "../client-address.ts";
import { converse } from "../conversing.ts";
import { uploadBytes } from "../limits.ts";
import { liveEvents } from "../live-events.ts";
import { chat } from "../phrases.ts";
import { type Composer, composer } from "../render/composer.ts";
import { html, type Markup } from "../render/markup.ts";
import { chatFields, type Rendering } from "../render/rendering.ts";
import { renderTurn, renderTurns } from "../render/turns.ts";
import { goTo, refuse, showPage } from "../respond.ts";
import { saidIn } from "../said.ts";
import { isFromHere } from "../same-origin.ts";
import type { Site } from "../site.ts";
import { speakerOf } from "../speaker.ts";
import { type Turn, turnsOf } from "../transcript.ts";
import { unitsOf } from "../units.ts";
import { formOf, takenIn } from "../uploads.ts";
import { hasToken, knownVisitor, type Visitor, visitorOf } from "../visitor.ts";

type Field = Pick<Composer, "text" | "problem">;

/** What another page asks for somebody, for them to go on with. */
const LONGEST_BEGINNING = 300;

export function chatRoutes(app: Hono, site: Site): void {
  app.get("/", async (context) => {
    const visitor = visitorOf(context, site.isSecure);
    const turns = await turnsOf(site.store, visitor.conversation);
    const text = context.req.query("text")?.slice(0, LONGEST_BEGINNING);
    return showChat(context, site, visitor, turns, { text });
  });
  const tooLarge = bodyLimit({
    maxSize: uploadBytes,
    onError: (context) => refuse(context, site, "tooLarge"),
  });
  app.post("/said", tooLarge, (context) => said(context, site));
  app.get("/events", (context) => {
    const visitor = knownVisitor(context, site.isSecure);
    if (visitor === undefined) return context.body(null, 204);
    const last = async () => (await turnsOf(site.store, visitor.conversation)).at(-1)?.id;
    return liveEvents(context, site.live, visitor.conversation, last);
  });
}

async function said(context: Context, site: Site): Promise<Response> {
  const visitor = knownVisitor(context, site.isSecure);
  const form = await formOf(context);
  const isOurs = isFromHere(context, site.address);
  if (visitor === undefined || !isOurs || !hasToken(form.fields.token ?? "", visitor.formToken)) {
    site.metrics.refused("forged form");
    return refuse(context, site, "stale", isOurs ? form.fields : {});
  }
  if (!site.limits.writing.take(clientAddress(context, site))) {
    site.metrics.refused("rate");
    return refuse(context, site, "tooMuch", form.fields);
  }
  const speaker = await speakerOf(context, site, visitor);
  const photographs = await takenIn(site.photographs, form.files, speaker.person);
  const turns = await turnsOf(site.store, visitor.conversation);
  if (!photographs.ok) {
    context.status(422);
    const { text } = form.fields;
    return showChat(context, site, visitor, turns, { problem: photographs.message, text });
  }
  const heard = saidIn(form.fields, turns, photographs.ids);
  if (heard === undefined) return goTo(context, "/#say");
  const turn = await converse(site, speaker, heard, photographs.ids);
  site.metrics.message("web");
  const rendering = renderingFor(site, context, visitor, [turn]);
  const fragment = renderTurn(turn, rendering).markup;
  site.live.tell(visitor.conversation, fragment);
  if (context.req.header("x-wanted") === "turn") return context.html(fragment) as Response;
  return goTo(context, `/#turn-${turn.id}`);
}

function showChat(
  context: Context,
  site: Site,
  visitor: Visitor,
  turns: readonly Turn[],
  field: Field,
): Response {
  const rendering = renderingFor(site, context, visitor, turns);
  return showPage(context, site, {
    title: chat.title,
    description: chat.lead,
    place: "ask",
    main: chatMain(site, visitor, turns, rendering, field),
    foot: editions(site),
  });
}

function chatMain(
  site: Site,
  visitor: Visitor,
  turns: readonly Turn[],
  rendering: Rendering,
  field: Field,
): Markup {
  const hidden = hiddenFields(visitor, turns);
  const first = turns.length === 0 && html`<p class="lead">${chat.lead}</p>${examplesOf(site, hidden)}`;
  return html`<h1>${chat.title}</h1>
${first}
<section id="conversation" class="conversation" role="log" aria-label="${chat.conversation}" data-events="/events">${renderTurns(turns, rendering)}</section>
${composer({ action: "/said", hidden, canPhotograph: site.photographs !== undefined, ...field })}`;
}

/** The first of each handbook, then the second. */
const places = [0, 1, 2] as const;

function examplesOf(site: Site, hidden: Markup): Markup {
  const books = site.knowledge().map(({ handbook }) => handbook.parts);
  const parts = places.flatMap((place) => books.flatMap((of) => of[place] ?? []));
  const buttons = parts.slice(0, places.length).map(({ name }) => {
    const words = chat.whichIsThis(name);
    return html`<button type="submit" name="words" value="${words}">${words}</button>`;
  });
  return html`<form method="post" action="/said" class="next" data-once><p>${chat.examples}:</p>${hidden}${buttons}</form>`;
}

function renderingFor(site: Site, context: Context, visitor: Visitor, turns: readonly Turn[]): Rendering {
  return {
    drawings: site.drawings,
    units: unitsOf(context.req.query("units"), context.req.header("accept-language")),
    part: null,
    controls: { action: "/said", hidden: hiddenFields(visitor, turns), share: "/share" },
  };
}

function hiddenFields({ formToken }: Visitor, turns: readonly Turn[]): Markup {
  return chatFields(formToken, turns.at(-1)?.id ?? "");
}

function editions(site: Site): Markup {
  return html`${site.knowledge().map(({ handbook }) => html`<p>${handbook.cover.name}</p>`)}`;
}
