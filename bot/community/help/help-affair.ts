/** "help" with the community's words beside the bot's own, and "help keepers": few lines, by what somebody can do here. */
import { help } from "../../commands/help.ts";
import type { Block } from "../../reply.ts";
import type { Affair, CommunityScene, Handled } from "../affair.ts";
import { reaches } from "../keepers/standing.ts";
import * as phrases from "../phrases/help.ts";
import { isRequest, spoken } from "../spoken.ts";

export const helpAffair: Affair = {
  name: "help",
  hear(scene) {
    const said = spoken(scene.message);
    if (said === undefined) return undefined;
    if (isRequest(said, /^(?:please )?help(?: me)?(?: please)?$|^commands$/u)) return helpAll(scene);
    return isRequest(said, /^help (?:the |for )?keepers?$/u) ? { blocks: [keepersWords(scene)] } : undefined;
  },
};

function helpAll(scene: CommunityScene): Handled {
  const here: Block = { kind: "list", lead: phrases.helpHere, items: phrases.helpForAll };
  const isKeeper = reaches(scene.speaker.standing, "keeper");
  return { blocks: [...help(scene), here, ...(isKeeper ? [keepersWords(scene)] : [])] };
}

/** Who is no owner need not read what only owners may do. */
function keepersWords({ speaker }: CommunityScene): Block {
  const forOwners = reaches(speaker.standing, "owner") ? [phrases.helpForOwners] : [];
  return { kind: "list", lead: phrases.helpKeepersLead, items: [...phrases.helpForKeepers, ...forOwners] };
}
