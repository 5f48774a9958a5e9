/** "changeovers", "when did it change", "cars wanted", "last seen", "lead times", "how many …": what the sightings say of time and numbers. */
import type { Affair, CommunityScene, Handled } from "../affair.ts";
import { spoken } from "../spoken.ts";
import { sayCarsWanted } from "./cars-wanted.ts";
import { sayHowMany } from "./how-many.ts";
import { sayChangeovers } from "./say-changeovers.ts";
import { sayLeads } from "./say-leads.ts";
import { sayUse } from "./say-use.ts";
import { wantedBeside } from "./wanted-beside.ts";

interface Request {
  /** In any letters; its group is what is asked about. */
  readonly pattern: RegExp;
  readonly say: (scene: CommunityScene, about: string) => Handled;
}

const requests: readonly Request[] = [
  { pattern: /^(?:the )?change ?overs?(?: (?:of|for|on) (.{2,120}))?$/iu, say: sayChangeovers },
  {
    pattern: /^(?:and )?when (?:did|was|were|have|has) (.{2,120}?) (?:been )?chang(?:e|ed)(?: ?over)?$/iu,
    say: sayChangeovers,
  },
  { pattern: /^(?:which )?cars? (?:are |is )?wanted(?: (?:of|for) (.{2,120}))?$/iu, say: sayCarsWanted },
  {
    pattern: /^(?:last|first|until when|since when)(?: was| were)? (?:seen|used|fitted)(?: (.{2,120}))?$/iu,
    say: sayUse,
  },
  { pattern: /^when (?:was|were) (.{2,120}?) (?:last|first) (?:seen|used|fitted)$/iu, say: sayUse },
  { pattern: /^(?:the )?lead times?(?: (?:of|for|on) (.{2,120}))?$/iu, say: sayLeads },
  {
    pattern:
      /^how many (?:cars )?(?:were |was |have been )?(?:built|made|had|have|with|got)\b:? ?(.{0,400})$/iu,
    say: sayHowMany,
  },
];

export const datingAffair: Affair = {
  name: "dating",
  hear(scene) {
    const said = spoken(scene.message)?.replace(/[.!?]+$/u, "");
    if (said === undefined) return undefined;
    for (const { pattern, say } of requests) {
      const match = pattern.exec(said);
      if (match !== null) return say(scene, match[1] ?? "");
    }
    return undefined;
  },
  beside: wantedBeside,
};
