/** "settings", "set units to …", "set handbooks to …", "forget cases after …": what a community chooses for itself. */
import type { Settings } from "../bot.ts";
import { listed } from "../conversation/phrases/grammar.ts";
import type { Block } from "../reply.ts";
import type { Affair, CommunityScene, Handled } from "./affair.ts";
import { reaches } from "./keepers/standing.ts";
import { notForYou, whySettled } from "./phrases/keepers.ts";
import * as phrases from "./phrases/settings.ts";
import { keptRecord } from "./record-change.ts";
import { noSettings, settingsId, settingsKind } from "./settings-record.ts";
import { isRequest, spoken } from "./spoken.ts";

export const settingsAffair: Affair = {
  name: "settings",
  hear(scene) {
    const said = spoken(scene.message);
    if (said === undefined) return undefined;
    if (isRequest(said, /^settings$/u)) return show(scene);
    const units = /^set units to (metric|imperial|both)[.!]?$/iu.exec(said)?.[1]?.toLowerCase();
    if (units === "metric" || units === "imperial" || units === "both") {
      return set(scene, "units", { units }, phrases.unitsSet(units));
    }
    const handbooks = /^set handbooks to (.{1,400})$/iu.exec(said)?.[1];
    if (handbooks !== undefined) return setHandbooks(scene, handbooks);
    if (isRequest(said, /^keep cases$/u)) {
      return set(scene, "retention", { retentionMonths: null }, phrases.retentionOff);
    }
    const months = /^forget cases after (\d{1,6}) months?[.!]?$/iu.exec(said)?.[1];
    return months === undefined ? undefined : setRetention(scene, Number(months));
  },
};

function show({ settings, loaded }: CommunityScene): Handled {
  const names = loaded.map(({ handbook }) => handbook.cover.name);
  const items = [
    phrases.settingsHandbooks(listed(names)),
    phrases.settingsUnits(settings.units),
    phrases.settingsRetention(settings.retentionMonths),
  ];
  return {
    blocks: [
      { kind: "list", lead: phrases.settingsLead, items },
      { kind: "text", text: phrases.settingsHow, tone: "aside" },
    ],
  };
}

function setHandbooks(scene: CommunityScene, named: string): Handled {
  if (/^all[.!]?$/iu.test(named)) {
    const names = scene.served.map(({ handbook }) => handbook.cover.name);
    return set(scene, "handbooks", { handbooks: null }, phrases.handbooksSet(listed(names)));
  }
  const covers = scene.served.map(({ handbook }) => handbook.cover);
  const meant = named.split(/,| and /u).map((name) => name.trim().replace(/[.!]$/u, ""));
  const found = meant.map((name) =>
    covers.find(({ id, name: full }) => [id, full.toLowerCase()].includes(name.toLowerCase())),
  );
  const unknown = meant.find((_, at) => found[at] === undefined);
  if (unknown !== undefined) {
    const known = listed(covers.map(({ name }) => name));
    return { blocks: [{ kind: "text", text: phrases.noSuchHandbook(unknown, known) }] };
  }
  const chosen = found.filter((cover) => cover !== undefined);
  const names = listed(chosen.map(({ name }) => name));
  return set(scene, "handbooks", { handbooks: chosen.map(({ id }) => id) }, phrases.handbooksSet(names));
}

function setRetention(scene: CommunityScene, months: number): Handled {
  if (months < 1 || months > 1200) return { blocks: [{ kind: "text", text: phrases.retentionOutOfRange }] };
  return set(scene, "retention", { retentionMonths: months }, phrases.retentionSet(months));
}

function set({ speaker }: CommunityScene, what: string, choice: Partial<Settings>, said: string): Handled {
  const block = (text: string): Block => ({ kind: "text", text });
  if (!reaches(speaker.standing, "owner")) return { blocks: [block(notForYou("owner"))] };
  const change = keptRecord(settingsKind, settingsId, whySettled(what), (before) => ({
    ...(before ?? noSettings),
    ...choice,
  }));
  return { blocks: [block(said)], changes: [change] };
}
