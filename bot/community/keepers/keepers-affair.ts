/** "keepers", "invite a keeper", "redeem CODE", "dismiss NAME", "audit": who may do what, and what was done. */
import { keyedDigest, textDigest } from "../../../knowledge/index.ts";
import type { Standing } from "../../message.ts";
import { text } from "../../text-blocks.ts";
import type { Affair, CommunityScene, Handled } from "../affair.ts";
import { dayInWords } from "../day-in-words.ts";
import { nameOf } from "../person/name-of.ts";
import * as phrases from "../phrases/keepers.ts";
import { keptRecord, type RecordChange } from "../record-change.ts";
import { isRequest, spoken } from "../spoken.ts";
import {
  type Invitation,
  type Keepers,
  keepersId,
  keepersIn,
  keepersKind,
  noKeepers,
  type Role,
} from "./keepers-record.ts";
import { reaches, standingOf } from "./standing.ts";

const invitationMilliseconds = 7 * 86_400_000;
const mostAudited = 30;

export const keepersAffair: Affair = {
  name: "keepers",
  hear(scene) {
    const said = spoken(scene.message);
    if (said === undefined) return undefined;
    if (isRequest(said, /^(?:list )?keepers$|^who (?:are|is) the keepers?(?: here)?$/u))
      return listKeepers(scene);
    if (isRequest(said, /^audit$/u)) return audit(scene);
    const invitation = /^invite an? (contributor|keeper|owner)$/iu.exec(said)?.[1]?.toLowerCase();
    if (invitation === "contributor" || invitation === "keeper" || invitation === "owner") {
      return invite(scene, invitation);
    }
    const code = /^redeem [“"']?([0-9a-z-]{8,40})[”"'.!,]*$/iu.exec(said)?.[1];
    if (code !== undefined) return redeem(scene, code.toLowerCase());
    const dismissed = /^dismiss (.{1,200})$/iu.exec(said)?.[1];
    return dismissed === undefined ? undefined : dismiss(scene, dismissed);
  },
};

function listKeepers({ memory }: CommunityScene): Handled {
  const { roles } = keepersIn(memory.keepers);
  if (roles.length === 0) return { blocks: [text(phrases.noKeepersYet)] };
  const items = roles.map((role) =>
    phrases.keeperLine(`${role.name} (${role.person})`, role.standing, dayInWords(role.since)),
  );
  return { blocks: [{ kind: "list", lead: phrases.keepersLead, items }] };
}

function audit({ memory, speaker }: CommunityScene): Handled {
  if (!reaches(speaker.standing, "keeper")) return refusal("keeper");
  const items = memory.audit
    .toReversed()
    .slice(0, mostAudited)
    .map(({ at, by, why }) =>
      phrases.auditLine(dayInWords(at), by === speaker.id ? speaker.name : nameOf(memory, by), why),
    );
  if (items.length === 0) return { blocks: [text(phrases.nothingDone)], isPrivate: true };
  return { blocks: [{ kind: "list", lead: phrases.auditLead, items }], isPrivate: true };
}

function invite(scene: CommunityScene, standing: Standing): Handled {
  const needed = standing === "contributor" ? "keeper" : "owner";
  if (!reaches(scene.speaker.standing, needed)) return refusal(needed);
  const secret = keyedDigest(scene.secretKey, `invitation ${scene.newId(standing)}`).slice(0, 20);
  const until = scene.at + invitationMilliseconds;
  const invitation: Invitation = { digest: textDigest(secret), standing, by: scene.speaker.id, until };
  return {
    blocks: [text(phrases.invited(standing, secret, dayInWords(until)))],
    isPrivate: true,
    isToldOnce: true,
    changes: [
      changeKeepers(phrases.whyInvited(standing), (keepers) => ({
        ...keepers,
        invitations: [...keepers.invitations.filter((one) => one.until > scene.at), invitation],
      })),
    ],
  };
}

function redeem(scene: CommunityScene, code: string): Handled {
  const { speaker, memory, at } = scene;
  const digest = textDigest(code);
  const holds = (one: Invitation) => one.digest === digest && one.until > at;
  const invitation = keepersIn(memory.keepers).invitations.find(holds);
  if (invitation === undefined) return { blocks: [text(phrases.noSuchInvitation)], isPrivate: true };
  const { standing } = invitation;
  if (reaches(standingOf(keepersIn(memory.keepers), speaker.id, "asker"), standing)) {
    return { blocks: [text(phrases.alreadyThat(standing))], isPrivate: true };
  }
  const role: Role = { person: speaker.id, name: speaker.name, standing, since: at, by: invitation.by };
  return {
    blocks: [text(phrases.redeemed(standing))],
    changes: [
      changeKeepers(phrases.whyRedeemed(speaker.name, standing), (keepers) => {
        // Of two who redeem at once, the second finds it used.
        if (!keepers.invitations.some(holds)) return undefined;
        return {
          invitations: keepers.invitations.filter((one) => !holds(one)),
          roles: [...keepers.roles.filter(({ person }) => person !== speaker.id), role],
        };
      }),
    ],
  };
}

function dismiss(scene: CommunityScene, called: string): Handled {
  const { memory, speaker } = scene;
  const { roles } = keepersIn(memory.keepers);
  const wanted = called.toLowerCase();
  const isMeant = (role: Role) => role.person.toLowerCase() === wanted || role.name.toLowerCase() === wanted;
  const meant = roles.filter(isMeant);
  const [role] = meant;
  const isOneself = role?.person === speaker.id;
  if (!isOneself && !reaches(speaker.standing, "owner")) return refusal("owner");
  if (role === undefined) return { blocks: [text(phrases.whoIsThat(called))] };
  if (meant.length > 1) return { blocks: [text(phrases.severalAreCalled(called))] };
  if (isLastOwner(roles, role)) return { blocks: [text(phrases.lastOwnerStays)] };
  return {
    blocks: [text(phrases.dismissed(role.name, role.standing))],
    changes: [
      changeKeepers(phrases.whyDismissed(role.name, role.standing), (keepers) =>
        isLastOwner(keepers.roles, role)
          ? undefined
          : { ...keepers, roles: keepers.roles.filter(({ person }) => person !== role.person) },
      ),
    ],
  };
}

function isLastOwner(roles: readonly Role[], role: Role): boolean {
  const owners = roles.filter(({ standing }) => standing === "owner");
  return owners.length === 1 && owners[0]?.person === role.person;
}

function changeKeepers(why: string, change: (keepers: Keepers) => Keepers | undefined): RecordChange {
  return keptRecord(keepersKind, keepersId, why, (before) => change(before ?? noKeepers));
}

function refusal(needed: Standing): Handled {
  return { blocks: [text(phrases.notForYou(needed))] };
}
