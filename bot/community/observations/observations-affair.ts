/** "record an observation": what members saw on real cars. */
import type { Affair, CommunityScene, Handled } from "../affair.ts";
import { reaches } from "../keepers/standing.ts";
import { isRequest, requestAbout, spoken } from "../spoken.ts";
import { draftFromCase } from "./draft.ts";
import { askNext, observingErrand, resumeObserving } from "./observing.ts";
import { review } from "./review.ts";
import { listObservations, showObservation } from "./shown-observation.ts";

const asksToRecord =
  /^(?:record (?:an? )?(?:observation|sighting)|record what i saw|note (?:it|this)(?: as an observation)?|note an observation)$/u;

export const observationsAffair: Affair = {
  name: observingErrand,
  hear(scene) {
    const said = spoken(scene.message);
    if (said === undefined) return undefined;
    if (isRequest(said, asksToRecord)) return begin(scene);
    if (isRequest(said, /^(?:my )?observations$/u)) return listObservations(scene);
    const shown = requestAbout(said, "(?:show )?observation");
    return shown !== undefined && shown.words === "" ? showObservation(scene, shown.id) : review(scene, said);
  },
  resume: resumeObserving,
};

function begin(scene: CommunityScene): Handled | undefined {
  return reaches(scene.speaker.standing, "contributor") ? askNext(scene, draftFromCase(scene)) : undefined;
}
