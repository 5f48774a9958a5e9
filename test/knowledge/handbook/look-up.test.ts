import { describe, expect, test } from "vitest";
import { loadHandbook } from "../../../knowledge/handbook/load-handbook.ts";
import {
  citation,
  featureById,
  partById,
  sourceById,
  stateName,
  variantById,
} from "../../../knowledge/handbook/look-up.ts";
import type { Feature, Handbook, PartKind } from "../../../knowledge/handbook/schema.ts";
import { minimalFiles } from "../../support/minimal-handbook.ts";

function soundHandbook(): Handbook {
  const loaded = loadHandbook(minimalFiles());
  if (!loaded.ok) throw new Error("the sound handbook is refused");
  return loaded.handbook;
}

function spoilerOf(handbook: Handbook): PartKind {
  const part = partById(handbook, "rear-spoiler");
  if (part === undefined) throw new Error("the sound handbook has a rear spoiler");
  return part;
}

function featureOf(part: PartKind, id: string): Feature {
  const feature = featureById(part, id);
  if (feature === undefined) throw new Error(`the rear spoiler has a feature ${id}`);
  return feature;
}

const handbook = soundHandbook();
const part = spoilerOf(handbook);

describe("looking up by id", () => {
  test("finds the part kind, feature, variant and source of that id", () => {
    expect(part).toBe(handbook.parts[0]);
    expect(featureById(part, "width")).toBe(part.features[2]);
    expect(variantById(part, "second")).toBe(part.variants[1]);
    expect(sourceById(handbook, "parts-list")).toBe(handbook.sources[1]);
  });

  test.each(["", "constructor", "__proto__", "Width", "toString"])("finds nothing for %j", (id) => {
    expect(partById(handbook, id)).toBeUndefined();
    expect(featureById(part, id)).toBeUndefined();
    expect(variantById(part, id)).toBeUndefined();
    expect(sourceById(handbook, id)).toBeUndefined();
  });

  test("two handbooks with the same ids are kept apart", () => {
    const other = soundHandbook();
    expect(partById(other, "rear-spoiler")).toBe(other.parts[0]);
    expect(partById(other, "rear-spoiler")).not.toBe(part);
  });
});

describe("the name of a state", () => {
  const finish = featureOf(part, "inside-finish");

  test("is the historian's", () => {
    expect(stateName(finish, "rough")).toBe("Rough");
  });

  test("of a feature that is not there is the feature's own word for that, if it has one", () => {
    expect(stateName(finish, "not-there")).toBe("not there");
    expect(stateName({ ...finish, none: "no inside face" }, "not-there")).toBe("no inside face");
    expect(stateName(featureOf(part, "width"), "not-there")).toBe("not there");
  });

  test("is its id when the feature has no such state", () => {
    expect(stateName(finish, "woolly")).toBe("woolly");
    expect(stateName(featureOf(part, "width"), "wide")).toBe("wide");
  });
});

describe("a citation", () => {
  test("gives the short forms in brackets, each once, in the order of the claim", () => {
    expect(citation(handbook, ["parts-list", "works-ledger", "parts-list"])).toBe(
      "[parts list 2; works ledger]",
    );
  });

  test("of no source is empty", () => {
    expect(citation(handbook, [])).toBe("");
    expect(citation(handbook, ["unheard-of"])).toBe("");
  });
});
