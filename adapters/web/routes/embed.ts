/**
 * The ask box: a small page to stand in a frame of somebody else's. Cookies do not reach it there, so whose conversation it is goes in
 * its forms; nothing it can do touches what a visitor or keeper has elsewhere on this site.
 */
import type { Context, Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import { clientAddress } from "../client-address.ts";
import { converse } from "../conversing.ts";
import { formBytes } from "../limits.ts";
import { embed } from "../phrases.ts";
import { composer } from "../render/composer.ts";
import { html, type Markup } from "../render/markup.ts";
import type { Rendering, Units } from "../render/rendering.ts";
import { renderTurn, renderTurns } from "../render/turns.ts";
import { refuse, showPage } from "../respond.ts";
import { saidIn } from "../said.ts";
import { newSecret } from "../secrets.ts";
import type { Site } from "../site.ts";
import { visitorName } from "../speaker.ts";
import { type Turn, turnsOf } from "../transcript.ts";
import { unitsOf } from "../units.ts";
import { formOf } from "../uploads.ts";
import { framedVisitor } from "../visitor.ts";

interface Box {
  readonly place: string;
  readonly units: Units;
}

export function embedRoutes(app: Hono, site: Site): void {
  app.get("/embed", (context) => {
    const units = unitsOf(context.req.query("units"), context.req.header("accept-language"));
    return showBox(context, site, { place: newSecret(), units }, []);
  });
  const small = bodyLimit({ maxSize: formBytes, onError: (context) => refuse(context, site, "tooLarge") });
  app.post("/embed/said", small, (context) => said(context, site));
}

async function said(context: Context, site: Site): Promise<Response> {
  const { fields } = await formOf(context);
  const visitor = framedVisitor(fields.place ?? "");
  if (visitor === undefined) {
    site.metrics.refused("forged form");
    return refuse(context, site, "stale");
  }
  if (!site.limits.writing.take(clientAddress(context, site))) {
    site.metrics.refused("rate");
    return refuse(context, site, "tooMuch", fields);
  }
  const box = { place: fields.place ?? "", units: unitsOf(fields.units, undefined) };
  const turns = await turnsOf(site.store, visitor.conversation);
  const heard = saidIn(fields, turns);
  if (heard === undefined) return showBox(context, site, box, turns);
  const speaker = { ...visitor, name: visitorName(visitor.person) };
  const turn = await converse(site, speaker, heard);
  site.metrics.message("embed");
  if (context.req.header("x-wanted") === "turn") {
    return context.html(renderTurn(turn, renderingOf(site, box, [turn])).markup) as Response;
  }
  return showBox(context, site, box, await turnsOf(site.store, visitor.conversation));
}

function showBox(context: Context, site: Site, box: Box, turns: readonly Turn[]): Response {
  const rendering = renderingOf(site, box, turns);
  const main = html`<h1 class="unseen">${embed.title}</h1>
<section id="conversation" class="conversation" role="log" aria-label="${embed.title}">${renderTurns(turns, rendering)}</section>
${composer({ action: "/embed/said", hidden: hiddenOf(box, turns), canPhotograph: false })}
<p class="aside"><a href="/" target="_blank" rel="noopener">${embed.openPage}</a></p>`;
  return showPage(context, site, { title: embed.title, main, isEmbedded: true, isPrivate: true });
}

function renderingOf(site: Site, box: Box, turns: readonly Turn[]): Rendering {
  const controls = { action: "/embed/said", hidden: hiddenOf(box, turns) };
  return { drawings: site.drawings, units: box.units, part: null, controls, isFramed: true };
}

function hiddenOf({ place, units }: Box, turns: readonly Turn[]): Markup {
  return html`<input type="hidden" name="place" value="${place}"><input type="hidden" name="units" value="${units}"><input type="hidden" name="turn" value="${turns.at(-1)?.id ?? ""}">`;
}
