/**
 * The keepers' desk. Every page asks first whether its reader is a keeper here now; whatever is done is said to the bot in the keeper's
 * name, which asks again.
 */
import type { Context, Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import { clientAddress } from "../client-address.ts";
import { asKeeper, lastAtDesk, lookAtDesk, sayAtDesk } from "../desk-conversation.ts";
import { keeperOf } from "../keeper-of.ts";
import { formBytes } from "../limits.ts";
import { desk } from "../phrases.ts";
import { renderBlocks } from "../render/blocks.ts";
import {
  type DeskPath,
  deskSections,
  renderCases,
  renderDesk,
  renderObservations,
  renderPins,
  type Says,
  sayFields,
} from "../render/desk.ts";
import { renderAudit, renderPeople } from "../render/desk-people.ts";
import { html, type Piece } from "../render/markup.ts";
import type { Rendering } from "../render/rendering.ts";
import { renderTurn } from "../render/turns.ts";
import { goTo, refuse, showPage } from "../respond.ts";
import { isFromHere } from "../same-origin.ts";
import type { OpenSession } from "../sessions.ts";
import type { Site } from "../site.ts";
import type { Turn } from "../transcript.ts";
import { formOf } from "../uploads.ts";
import { hasToken } from "../visitor.ts";
import { jsonPaths, sightingsPath } from "./desk-export.ts";

/** The oldest; accepting them brings the next. */
const MOST_OBSERVATIONS = 10;

type Content = (site: Site, session: OpenSession, says: Says) => Promise<Piece>;

const contents: Readonly<Record<DeskPath, Content>> = {
  "/desk": waiting,
  "/desk/observations": observations,
  "/desk/pins": pins,
  "/desk/board": looked("open questions"),
  "/desk/audit": audit,
  "/desk/people": people,
  "/desk/export": exported,
};

export function deskRoutes(app: Hono, site: Site): void {
  for (const { path, label } of deskSections) {
    app.get(path, async (context) => {
      const session = await keeperOf(context, site);
      if (session === "nobody") return goTo(context, "/sign-in");
      if (session === "no keeper") return refuse(context, site, "notAllowed");
      const last = await lastAtDesk(site, session);
      const says: Says = { path, formToken: session.formToken, turn: last?.id ?? "" };
      const isDone = context.req.query("done") !== undefined;
      const main = renderDesk({
        session,
        says,
        heading: label,
        lately: isDone && lately(site, says, last),
        content: await contents[path](site, session, says),
      });
      return showPage(context, site, {
        title: `${label} · ${desk.title}`,
        place: "desk",
        main,
        isPrivate: true,
        isWide: true,
      });
    });
  }
  const small = bodyLimit({ maxSize: formBytes, onError: (context) => refuse(context, site, "tooLarge") });
  app.post("/desk/said", small, (context) => said(context, site, (fields) => fields));
  app.post("/desk/pin", small, (context) =>
    said(context, site, ({ question = "", answer = "", ...fields }) => ({
      ...fields,
      words: `pin for the question ${question.replaceAll(":", " ")}: ${answer}`,
    })),
  );
}

type Fields = Readonly<Record<string, string>>;

async function said(context: Context, site: Site, wordsIn: (fields: Fields) => Fields): Promise<Response> {
  const session = await keeperOf(context, site);
  const { fields } = await formOf(context);
  const isOpen = typeof session !== "string";
  const isFromUs = isFromHere(context, site.address);
  const sent = isFromUs ? fields : {};
  if (!isOpen || !isFromUs || !hasToken(fields.token ?? "", session.formToken)) {
    site.metrics.refused("forged form");
    return refuse(context, site, session === "no keeper" ? "notAllowed" : "stale", sent);
  }
  if (!site.limits.writing.take(clientAddress(context, site))) return refuse(context, site, "tooMuch", sent);
  await sayAtDesk(site, session, wordsIn(fields));
  const onward = deskSections.find(({ path }) => path === fields.onward)?.path ?? "/desk";
  return goTo(context, `${onward}?done#lately`);
}

/** What was said last, right after it was said; its questions are answered here too. */
function lately(site: Site, says: Says, turn: Turn | undefined): Piece {
  if (turn === undefined) return undefined;
  const rendering = { ...readOnly(site), controls: { action: "/desk/said", hidden: sayFields(says) } };
  return html`<section id="lately" class="lately" aria-label="${desk.justDone}">${renderTurn(turn, rendering)}</section>`;
}

function readOnly(site: Site): Rendering {
  return { drawings: site.drawings, units: "metric", part: null };
}

async function waiting(site: Site, session: OpenSession, says: Says): Promise<Piece> {
  const cases = await site.pages.cases(session.guest.community);
  const { blocks } = await lookAtDesk(site, session, "queue");
  return html`${renderBlocks(blocks, readOnly(site))}<h3>${desk.cases}</h3>${renderCases(says, cases, (id) => partName(site, id))}`;
}

async function observations(site: Site, session: OpenSession, says: Says): Promise<Piece> {
  const waitingOnes = await site.pages.observations(asKeeper(session), MOST_OBSERVATIONS);
  return renderObservations(says, waitingOnes, readOnly(site));
}

async function pins(site: Site, session: OpenSession, says: Says): Promise<Piece> {
  const all = await site.pages.pins(session.guest.community);
  return renderPins(says, all, readOnly(site));
}

async function audit(site: Site, session: OpenSession): Promise<Piece> {
  return renderAudit(await site.pages.audit(session.guest.community));
}

async function people(site: Site, session: OpenSession, says: Says): Promise<Piece> {
  return renderPeople(says, await site.pages.people(session.guest.community));
}

async function exported(site: Site): Promise<Piece> {
  const sightings = site.knowledge().map(({ handbook: { cover, parts } }) => {
    const files = parts.map(
      ({ id, name }) => html`<li><a href="${sightingsPath(cover.id, id)}">${desk.sightings(name)}</a></li>`,
    );
    return html`<h3>${cover.name}</h3><ul>${files}</ul>`;
  });
  const others = jsonPaths.map((path) => html`<li><a href="${path}">${path.split("/").at(-1)}</a></li>`);
  return html`<p>${desk.exportHint}</p>${sightings}<h3>${desk.everything}</h3><ul>${others}</ul>`;
}

/** What the bot answers to words, with what can be pressed there. */
function looked(words: string): Content {
  return async (site, session, says) => {
    const { blocks } = await lookAtDesk(site, session, words);
    const controls = { action: "/desk/said", hidden: sayFields(says) };
    return renderBlocks(blocks, { ...readOnly(site), controls });
  };
}

function partName(site: Site, id: string): string {
  const part = site
    .knowledge()
    .flatMap(({ handbook }) => handbook.parts)
    .find((one) => one.id === id);
  return part?.name ?? id;
}
