/** Making a page of an answer, showing it, withdrawing it. A page that was shown lately is kept whole, for a forum may send a crowd. */
import type { Context, Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import { conversationKind, sharedAnswerKind } from "../../../bot/index.ts";
import { clientAddress } from "../client-address.ts";
import { formBytes } from "../limits.ts";
import { answerPage } from "../phrases.ts";
import { answerTitle, renderAnswer } from "../render/answer.ts";
import { html } from "../render/markup.ts";
import { page } from "../render/page.ts";
import { goTo, refuse, showPage } from "../respond.ts";
import { isFromHere } from "../same-origin.ts";
import { type Share, shareAnswer, sharedAnswer, withdrawShare } from "../shares.ts";
import type { Site } from "../site.ts";
import { speakerOf } from "../speaker.ts";
import { formOf } from "../uploads.ts";
import { hasToken, knownVisitor, type Visitor } from "../visitor.ts";

const KEPT_PAGES = 200;
/** A page that somebody withdrew by another process is gone after so long. */
const KEPT_MILLISECONDS = 5000;

interface KeptPage {
  readonly at: number;
  readonly text: string;
  readonly by: string;
  readonly version: number;
}

export function answerRoutes(app: Hono, site: Site): void {
  const kept = new Map<string, KeptPage>();
  const small = bodyLimit({ maxSize: formBytes, onError: (context) => refuse(context, site, "tooLarge") });

  app.post("/share", small, async (context) => {
    const visitor = await visitorOfForm(context, site);
    if (visitor === undefined) return refuse(context, site, "stale");
    if (!site.limits.writing.take(clientAddress(context, site))) return refuse(context, site, "tooMuch");
    const speaker = await speakerOf(context, site, visitor);
    const state = await site.store.current(conversationKind, visitor.conversation);
    const card = await site.pages.card(speaker.community ?? "home", state, { person: speaker.person });
    if (card === undefined) return refuse(context, site, "noAnswer");
    const id = await shareAnswer(site.store, site.clock, speaker.person, card);
    return goTo(context, `/answers/${id}`);
  });

  const show = async (context: Context, id: string): Promise<Response> => {
    const now = site.clock.milliseconds();
    const reader = await readerOf(context, site);
    const lately = kept.get(id);
    const isOwn = (by: string) => reader?.persons.includes(by) === true;
    if (lately !== undefined && !isOwn(lately.by) && (await isStillGood(site, id, lately))) {
      if (now - lately.at >= KEPT_MILLISECONDS) kept.set(id, { ...lately, at: now });
      return context.html(lately.text) as Response;
    }
    kept.delete(id);
    const version = await site.store.version(sharedAnswerKind, id);
    const share = await sharedAnswer(site.store, id);
    if (share === undefined) return refuse(context, site, "notFound");
    if (isOwn(share.by)) return showPage(context, site, content(site, id, share, reader?.visitor));
    const text = page(content(site, id, share), site.assets);
    kept.set(id, { at: now, text, by: share.by, version });
    const [oldest] = kept.keys();
    if (kept.size > KEPT_PAGES && oldest !== undefined) kept.delete(oldest);
    return context.html(text) as Response;
  };
  app.get("/answers/:id", (context) => show(context, context.req.param("id")));
  app.get("/answers/:community/:id", (context) => {
    const { community, id } = context.req.param();
    return show(context, `${community}/${id}`);
  });

  const withdraw = async (context: Context, id: string): Promise<Response> => {
    const visitor = await visitorOfForm(context, site);
    if (visitor === undefined) return refuse(context, site, "stale");
    const { persons } = await sharersOf(context, site, visitor);
    if (!(await withdrawShare(site.store, site.clock, id, persons))) return refuse(context, site, "notFound");
    kept.delete(id);
    const main = html`<h1>${answerPage.withdrawn}</h1>`;
    return showPage(context, site, { title: answerPage.withdrawn, main, isPrivate: true });
  };
  app.post("/answers/:id/withdraw", small, (context) => withdraw(context, context.req.param("id") ?? ""));
  app.post("/answers/:community/:id/withdraw", small, (context) => {
    const { community, id } = context.req.param();
    return withdraw(context, `${community}/${id}`);
  });
}

/** A share only changes by being withdrawn: the same version is the same page. */
async function isStillGood(site: Site, id: string, { at, version }: KeptPage): Promise<boolean> {
  if (site.clock.milliseconds() - at < KEPT_MILLISECONDS) return true;
  return (await site.store.version(sharedAnswerKind, id)) === version;
}

/** Whoever reads, as far as a cookie tells. */
async function readerOf(context: Context, site: Site) {
  const visitor = knownVisitor(context, site.isSecure);
  return visitor && sharersOf(context, site, visitor);
}

/** As whom they may have shared: what a visitor shared is theirs still once they have signed in as a keeper. */
async function sharersOf(context: Context, site: Site, visitor: Visitor) {
  const { person } = await speakerOf(context, site, visitor);
  return { visitor, persons: [person, visitor.person] };
}

type ShownShare = Share & { readonly card: NonNullable<Share["card"]> };

function content(site: Site, id: string, { card, at }: ShownShare, owner?: Visitor) {
  const title = answerTitle(card);
  const withdraw =
    owner &&
    html`<form method="post" action="/answers/${id}/withdraw" class="quiet noprint"><input type="hidden" name="token" value="${owner.formToken}"><button type="submit">${answerPage.withdraw}</button></form>`;
  return {
    title,
    description: `${title}. ${card.edition}`,
    isPrivate: true,
    main: renderAnswer({
      card,
      at,
      address: `${site.address}/answers/${id}`,
      drawings: site.drawings,
      ...(withdraw === undefined ? {} : { withdraw }),
    }),
  };
}

async function visitorOfForm(context: Context, site: Site): Promise<Visitor | undefined> {
  const visitor = knownVisitor(context, site.isSecure);
  const { fields } = await formOf(context);
  const isOurs = isFromHere(context, site.address) && hasToken(fields.token ?? "", visitor?.formToken ?? "");
  if (visitor !== undefined && isOurs) return visitor;
  site.metrics.refused("forged form");
  return undefined;
}
