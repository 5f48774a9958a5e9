/** What a door-less event, a changed handbook, does to the community: kept with its history, logged, and told to the keepers. */
import type { Handbook, HandbookFile } from "../../knowledge/index.ts";
import { changeInWords } from "../conversation/phrases/editions.ts";
import type { Log } from "../ports.ts";
import { type EditionKeeping, keepEdition, refuseEdition } from "./keep-edition.ts";
import { tellRefused, tellTaken } from "./tell-keepers.ts";

export interface EditionWatch {
  /** A sound edition serves from now on, also at the start. `served`: what did until now, if it is at hand. */
  taken(handbook: Handbook, files: readonly HandbookFile[], served?: Handbook): Promise<void>;
  /** Changed files are not sound; `handbook` goes on serving. `problems`: a line each. */
  refused(handbook: Handbook, problems: readonly string[]): Promise<void>;
}

export interface EditionSurroundings extends EditionKeeping {
  readonly log: Log;
}

export function editionWatch({ log, ...keeping }: EditionSurroundings): EditionWatch {
  const { store, clock } = keeping;
  const told = ({ cover: { id, name } }: Handbook) => ({ store, clock, handbook: { id, name } });
  return {
    async taken(handbook, files, served) {
      const { older, changes, isNew } = await keepEdition(keeping, handbook, files, served);
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
