/** What is said of who may do what. */

import { capitalised } from "../../conversation/phrases/grammar.ts";
import type { Standing } from "../../message.ts";

export const standingNames: Readonly<Record<Standing, string>> = {
  asker: "asker",
  contributor: "contributor",
  keeper: "keeper",
  owner: "owner",
};

function aStanding(standing: Standing): string {
  return `${/^[aeiou]/u.test(standing) ? "an" : "a"} ${standingNames[standing]}`;
}

export const notForYou = (needed: Standing) =>
  `That is for ${needed === "contributor" ? "members of this community" : aStanding(needed)} to do.`;
/** How what a keeper tells somebody begins. */
export const toldByKeeper = (name: string) => `${name}, a keeper,`;
export const keepersLead = "Who keeps this community’s knowledge:";
export const keeperLine = (name: string, standing: Standing, since: string) =>
  `${name}, ${standingNames[standing]} since ${since}`;
export const noKeepersYet =
  "Nobody was made a keeper here yet. Whoever the platform counts as an owner or keeper can act; an owner can “invite a keeper”.";
export const invited = (standing: Standing, code: string, until: string) =>
  `Whoever says “redeem ${code}” here becomes ${aStanding(standing)}. It works once, until ${until}. Give it to nobody else.`;
export const fileNotKept = "That was a file, and is not kept. Ask again, and it is made anew.";
export const toldOnce = "That was told once and is not kept. Ask again, and you are given another.";
export const redeemed = (standing: Standing) => `You are ${aStanding(standing)} here now.`;
export const noSuchInvitation = "That invitation does not hold: it was used, has run out, or never was.";
export const alreadyThat = (standing: Standing) => `You are ${standingNames[standing]} here already.`;
export const dismissed = (name: string, standing: Standing) =>
  `${capitalised(name)} is ${aStanding(standing)} no longer.`;
export const whoIsThat = (name: string) =>
  `Nobody called ${name} has a role here. “keepers” lists those who have.`;
export const severalAreCalled = (name: string) =>
  `More than one is called ${name}. Say the id that stands behind the name in “keepers”.`;
export const lastOwnerStays =
  "That is the last owner here; invite another one first, so that nobody is locked out.";
export const auditLead = "What was done here, the newest first:";
export const auditLine = (date: string, name: string, why: string) => `${date}, ${name}: ${why}`;
export const nothingDone = "Nothing has been done here yet.";

export const whyInvited = (standing: Standing) => `invited ${aStanding(standing)}`;
export const whyRedeemed = (name: string, standing: Standing) =>
  `${name} took up an invitation as ${standingNames[standing]}`;
export const whyDismissed = (name: string, standing: Standing) =>
  `dismissed ${name}, ${standingNames[standing]}`;
export const whyMore = (count: number) => `and ${count} more`;
export const whySettled = (what: string) => `changed the settings: ${what}`;
