/** Who may do what, how somebody is invited, and what was done. */
import type { Pages } from "../../../bot/index.ts";
import { dayWords } from "../day-words.ts";
import { desk } from "../phrases.ts";
import { type Says, sayButton } from "./desk.ts";
import { html, type Markup } from "./markup.ts";

type Role = Awaited<ReturnType<Pages["people"]>>[number];
type Entry = Awaited<ReturnType<Pages["audit"]>>[number];

export function renderPeople(says: Says, people: readonly Role[]): Markup {
  const rows = people.map(
    ({ person, name, standing, since }) =>
      html`<tr><th scope="row">${name} <span class="aside">${person}</span></th><td>${standing}</td><td>${dayWords(since)}</td><td>${sayButton(says, `dismiss ${person}`, desk.dismiss)}</td></tr>`,
  );
  const table =
    people.length === 0
      ? html`<p>${desk.noPeople}</p>`
      : html`<table class="ruled"><thead><tr><th scope="col">${desk.who}</th><th scope="col">${desk.standing}</th><th scope="col">${desk.since}</th><th scope="col"><span class="unseen">${desk.dismiss}</span></th></tr></thead><tbody>${rows}</tbody></table>`;
  const invitations = desk.inviteWho.map((standing) =>
    sayButton(says, `invite ${standing === "owner" ? "an" : "a"} ${standing}`, standing),
  );
  return html`${table}<h3>${desk.invite}</h3><p class="hint">${desk.inviteHint}</p><div class="next">${invitations}</div>`;
}

export function renderAudit(entries: readonly Entry[]): Markup {
  if (entries.length === 0) return html`<p>${desk.nothingDone}</p>`;
  const rows = entries.map(
    ({ at, by, why }) => html`<tr><th scope="row">${dayWords(at)}</th><td>${by}</td><td>${why}</td></tr>`,
  );
  return html`<table class="ruled"><thead><tr><th scope="col">${desk.when}</th><th scope="col">${desk.who}</th><th scope="col">${desk.what}</th></tr></thead><tbody>${rows}</tbody></table>`;
}
