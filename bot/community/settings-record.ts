/** A community's settings, one record. */
import { Settings } from "../bot.ts";
import type { Knowledge } from "../conversation/knowledge.ts";
import { byId, type RecordKind } from "./record-kind.ts";

export const settingsKind: RecordKind<Settings, Map<string, Settings>> = {
  kind: "settings",
  shape: Settings,
  ...byId<Settings>(),
};

/** The record's id within the community: there is one. */
export const settingsId = "settings";

/** The settings of a community that has set nothing. */
export const noSettings: Settings = {
  handbooks: null,
  units: "metric",
  retentionMonths: null,
  platforms: {},
};

export function settingsIn(view: ReadonlyMap<string, Settings>): Settings {
  return view.get(settingsId) ?? noSettings;
}

/** The handbooks that answer in a community; one whose handbooks are all gone is served by what there is. */
export function servingIn({ handbooks }: Settings, served: readonly Knowledge[]): readonly Knowledge[] {
  const chosen = served.filter(({ handbook }) => handbooks?.includes(handbook.cover.id) ?? true);
  return chosen.length === 0 ? served : chosen;
}
