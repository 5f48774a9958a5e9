/** "sign in": a keeper is given a link to the keepers' desk on the pages, for their eyes only. */
import { keyedDigest } from "../../../knowledge/index.ts";
import type { Affair, CommunityScene, Handled } from "../affair.ts";
import { reaches, usualStanding } from "../keepers/standing.ts";
import { notForYou } from "../phrases/keepers.ts";
import * as phrases from "../phrases/sign-in.ts";
import { newRecord } from "../record-change.ts";
import { isRequest, spoken } from "../spoken.ts";
import { newSignInLink, signInLinkId, signInLinkKind, signInPath } from "./sign-in-link.ts";

export const signInAffair: Affair = {
  name: "sign-in",
  hear(scene) {
    const said = spoken(scene.message);
    const isAsked =
      said !== undefined && isRequest(said, /^(?:sign|log) ?in$|^(?:the )?(?:keepers['’]? )?desk$/u);
    return isAsked ? signIn(scene) : undefined;
  },
};

function signIn(scene: CommunityScene): Handled {
  const { speaker, community, at, secretKey, message } = scene;
  if (!reaches(speaker.standing, "keeper")) {
    return { blocks: [{ kind: "text", text: notForYou("keeper") }], isPrivate: true };
  }
  const secret = keyedDigest(secretKey, `sign-in ${scene.newId("sign-in")} ${at}`);
  const guest = {
    person: speaker.id,
    community,
    standing: message.standing ?? usualStanding,
    name: speaker.name.slice(0, 80),
  };
  return {
    blocks: [
      { kind: "page", label: phrases.signInHere, path: signInPath(community, secret) },
      { kind: "text", text: phrases.signInOnce, tone: "aside" },
    ],
    isPrivate: true,
    isToldOnce: true,
    changes: [
      {
        ...newRecord(signInLinkKind, signInLinkId(secret), phrases.whyLink, newSignInLink(guest, at)),
        isAside: true,
      },
    ],
  };
}
