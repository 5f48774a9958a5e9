/** "record an observation": what members saw on real cars. */
import type { Affair, CommunityScene, Handled } from "../affair.ts";
import { reaches } from "../keepers/standing.ts";
import { notForYou } from "../phrases/keepers.ts";
import * as phrases from "../phrases/observations.ts";
import { say } from "../say.ts";
import { isRequest, requestAbout, spoken } from "../spoken.ts";
import { Draft, draftFromCase } from "./draft.ts";
import { exchange } from "./exchange.ts";
import { listObservers } from "./observers.ts";
import { askNext, resumeDraft } from "./observing.ts";
import { review } from "./review.ts";
import { listObservations, showObservation } from "./shown-observation.ts";
import { observingErrand } from "./step-names.ts";
import { WordsWanted, withWords } from "./words-wanted.ts";

const asksToRecord =
  /^(?:record (?:an? )?(?:observation|sighting)|record what i saw|note (?:it|this)(?: as an observation)?|note an observation)$/u;

export const observationsAffair: Affair = {
  name: observingErrand,
  hear(scene) {
    const said = spoken(scene.message);
    if (said === undefined) return undefined;
    const exchanged = exchange(scene);
    if (exchanged !== undefined) return exchanged;
    if (isRequest(said, /^observers$/u)) return listObservers(scene);
    if (isRequest(said, asksToRecord)) return begin(scene);
    if (isRequest(said, /^(?:my )?observations$/u)) return listObservations(scene);
    const shown = requestAbout(said, "(?:show )?observation");
    return shown !== undefined && shown.words === "" ? showObservation(scene, shown.id) : review(scene, said);
  },
  resume,
};

function begin(scene: CommunityScene): Handled {
  if (!reaches(scene.speaker.standing, "contributor")) return say(notForYou("contributor"));
  return askNext(scene, draftFromCase(scene));
}

/** The next answer of a recording, or the words that a request still needs. */
function resume(scene: CommunityScene, state: unknown): Handled | undefined {
  const wanted = WordsWanted.safeParse(state);
  if (!wanted.success) {
    // One that another version of this program began is left lying.
    const draft = Draft.safeParse(state);
    return draft.success ? resumeDraft(scene, draft.data) : undefined;
  }
  const request = withWords(scene, wanted.data);
  if (request === undefined) return undefined;
  if (request === null) return { ...say(phrases.nothingSaid), errand: null };
  const handled = review(scene, request);
  return handled && { ...handled, errand: handled.errand ?? null };
}
