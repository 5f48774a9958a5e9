/** What a door-less event, a changed handbook, does to the community: kept with its history, logged, and told to the keepers. */
import type { Handbook, HandbookFile } from "../../knowledge/index.ts";
import { changeInWords } from "../conversation/phrases/editions.ts";
import type { Clock, Log, Store } from "../ports.ts";
import { keepEdition, refuseEdition } from "./keep-edition.ts";
import { tellRefused, tellTaken } from "./tell-keepers.ts";

export interface EditionWatch {
  /** A sound edition serves from now on, also at the start. */
  taken(handbook: Handbook, files: readonly HandbookFile[]): Promise<void>;
  /** Changed files are not sound; `handbook` goes on serving. `problems`: a line each. */
  refused(handbook: Handbook, problems: readonly string[]): Promise<void>;
}

export interface EditionSurroundings {
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
}

export function editionWatch({ store, clock, log }: EditionSurroundings): EditionWatch {
  const told = ({ cover: { id, name } }: Handbook) => ({ store, clock, handbook: { id, name } });
  return {
    async taken(handbook, files) {
      const { older, changes, isNew } = await keepEdition(store, clock, handbook, files);
      if (!isNew || older === undefined) return;
      const { cover, edition } = handbook;
      const words = changes.map(changeInWords);
      log.info({ handbook: cover.id, older, edition, changes: words }, "new edition taken");
      await tellTaken(told(handbook), older, edition, changes);
    },
    async refused(handbook, problems) {
      const { cover, edition } = handbook;
      log.warn(
        { handbook: cover.id, edition, problems },
        "changed handbook refused, the edition before serves on",
      );
      const isFirst = await refuseEdition(store, clock, handbook, problems);
      if (isFirst) await tellRefused(told(handbook), edition, problems);
    },
  };
}
