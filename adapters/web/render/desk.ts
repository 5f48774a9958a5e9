/** Pieces of the desk: its sections, a form that says words with a reason, the cases, the pins, the people, what was done. */
import type { CaseOnPage, ObservationOnPage, PinOnPage } from "../../../bot/index.ts";
import { dayWords } from "../day-words.ts";
import { desk, signIn } from "../phrases.ts";
import type { OpenSession } from "../sessions.ts";
import { lines, renderBlocks } from "./blocks.ts";
import { html, type Markup, type Piece } from "./markup.ts";
import type { Rendering } from "./rendering.ts";

export const deskSections = [
  { path: "/desk", label: desk.waiting },
  { path: "/desk/observations", label: desk.observations },
  { path: "/desk/pins", label: desk.pins },
  { path: "/desk/board", label: desk.board },
  { path: "/desk/audit", label: desk.audit },
  { path: "/desk/people", label: desk.people },
  { path: "/desk/export", label: desk.exports },
] as const;

export type DeskPath = (typeof deskSections)[number]["path"];

export interface DeskFrame {
  readonly session: OpenSession;
  readonly says: Says;
  readonly heading: string;
  /** What was just said and answered. */
  readonly lately: Piece;
  readonly content: Piece;
}

export function renderDesk({ session, says, heading, lately, content }: DeskFrame): Markup {
  const { guest } = session;
  const links = deskSections.map(
    (one) =>
      html`<li><a href="${one.path}"${one.path === says.path && html` aria-current="page"`}>${one.label}</a></li>`,
  );
  return html`<div class="deskhead"><h1>${desk.title}</h1><form method="post" action="/sign-out" class="quiet noprint">${tokenField(session)}<span class="aside">${desk.signedInAs(guest.name ?? guest.person, guest.community)}</span><button type="submit">${signIn.out}</button></form></div>
<nav class="tabs noprint" aria-label="${desk.sections}"><ul>${links}</ul></nav>
${lately}
<h2>${heading}</h2>${content}
<form method="post" action="/desk/said" class="say noprint">${sayFields(says)}<label for="words">${desk.sayAnything}</label><span class="row"><input id="words" type="text" name="words" maxlength="400" autocomplete="off"><button type="submit">${desk.say}</button></span></form>`;
}

function tokenField({ formToken }: OpenSession): Markup {
  return html`<input type="hidden" name="token" value="${formToken}">`;
}

export interface Says {
  readonly path: DeskPath;
  readonly formToken: string;
  /** What was said last here: the same words said later are another message. */
  readonly turn: string;
}

/** What goes unseen with every form of the desk: its token, where to go on, and what it comes after. */
export function sayFields({ path, formToken, turn }: Says): Markup {
  return html`<input type="hidden" name="token" value="${formToken}"><input type="hidden" name="onward" value="${path}"><input type="hidden" name="turn" value="${turn}">`;
}

/** A button that says words. */
export function sayButton(says: Says, words: string, label: string): Markup {
  return html`<form method="post" action="/desk/said" class="inline">${sayFields(says)}<button type="submit" name="words" value="${words}">${label}</button></form>`;
}

/** A field whose text follows the words: a reason, an answer. */
export function sayWithReason(
  says: Says,
  { before, label, button, id }: Readonly<Record<"before" | "label" | "button" | "id", string>>,
): Markup {
  return html`<form method="post" action="/desk/said" class="reason">${sayFields(says)}<input type="hidden" name="before" value="${before}"><label for="${id}">${label}</label><span class="row"><input id="${id}" type="text" name="reason" required maxlength="2000" autocomplete="off"><button type="submit">${button}</button></span></form>`;
}

export function renderCases(
  says: Says,
  cases: readonly CaseOnPage[],
  partName: (id: string) => string,
): Markup {
  if (cases.length === 0) return html`<p>${desk.noCases}</p>`;
  return html`${cases.map(({ id, part, askerName, at, notes, sayings }) => {
    const name = part === null ? desk.noPart : partName(part);
    const told = sayings.map((one) => html`<p><strong>${one.name}</strong> ${lines(one.words)}</p>`);
    return html`<article class="item"><h3>${id} · ${desk.caseLine(name, askerName, dayWords(at))}</h3>
<details open><summary>${desk.notes}</summary><p class="notes">${lines(notes)}</p></details>${told}
${sayWithReason(says, { before: `answer ${id}:`, label: desk.yourAnswer, button: desk.answer, id: `answer-${id}` })}
${sayWithReason(says, { before: `ask back ${id}:`, label: desk.yourQuestion, button: desk.askBack, id: `back-${id}` })}
${sayWithReason(says, { before: `close ${id} because`, label: desk.reason, button: desk.close, id: `close-${id}` })}</article>`;
  })}`;
}

export function renderObservations(
  says: Says,
  observations: readonly ObservationOnPage[],
  rendering: Rendering,
): Markup {
  if (observations.length === 0) return html`<p>${desk.noObservations}</p>`;
  return html`${observations.map(
    ({
      id,
      blocks,
    }) => html`<article class="item"><h3>${desk.observation(id)}</h3>${renderBlocks(blocks, rendering)}
${sayButton(says, `accept observation ${id}`, desk.accept)}
${sayWithReason(says, { before: `decline observation ${id} because`, label: desk.reason, button: desk.decline, id: `decline-${id}` })}
${sayWithReason(says, { before: `ask about observation ${id}:`, label: desk.yourQuestion, button: desk.ask, id: `ask-${id}` })}</article>`,
  )}`;
}

export function renderPins(says: Says, pins: readonly PinOnPage[], rendering: Rendering): Markup {
  const items = pins.map(({ block, question }) => {
    const { pin: id } = block;
    return html`<article class="item"><h3>${desk.pinLine(id)}</h3>${question !== null && html`<p class="aside">${question}</p>`}${renderBlocks([block], rendering)}
${sayWithReason(says, { before: `replace pin ${id}:`, label: desk.replace, button: desk.replaceButton, id: `replace-${id}` })}
${sayWithReason(says, { before: `withdraw pin ${id} because`, label: desk.reason, button: desk.withdraw, id: `withdraw-${id}` })}</article>`;
  });
  const form = html`<form method="post" action="/desk/pin" class="reason">${sayFields(says)}<h3>${desk.newPin}</h3><label for="question">${desk.question}</label><input id="question" type="text" name="question" required maxlength="300"><label for="answer">${desk.yourAnswer}</label><textarea id="answer" name="answer" rows="3" required maxlength="2000"></textarea><p><button type="submit">${desk.pinButton}</button></p></form>`;
  return html`${pins.length === 0 && html`<p>${desk.noPins}</p>`}${items}${form}`;
}
