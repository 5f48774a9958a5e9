// What holds for every state and every size that a handbook names, whatever they are called: said it is found, in answer it is found, and somebody
// else's word, car or wish is none. Held against the demo handbook, name by name.
import { expect, test } from "vitest";
import type { Feature, PartKind } from "../../../knowledge/handbook/schema.ts";
import { demoLexicon } from "../../support/demo-lexicon.ts";
import { readDemo } from "../../support/read-demo.ts";
import { findingsInWords } from "../../support/reading-in-words.ts";

const { handbook } = await demoLexicon();

interface Named {
  readonly part: PartKind;
  readonly feature: Feature;
  readonly name: string;
  readonly also: readonly string[];
  /** "door-mirror.screws two". */
  readonly finding: string;
}

const states: readonly Named[] = handbook.parts.flatMap((part) =>
  part.features.flatMap((feature) =>
    feature.kind === "states"
      ? feature.states.map(({ id, name, also }) => ({
          part,
          feature,
          name,
          also,
          finding: `${part.id}.${feature.id} ${id}`,
        }))
      : [],
  ),
);
const found = (text: string, about: string): readonly string[] => findingsInWords(readDemo(text, about));
/** "What the wheel is made of" asks, and a name of two features tells both. */
const isPlain = ({ feature, name }: Named): boolean =>
  !/^what /.test(feature.name) && !/ABS|plastic/.test(name);
const isDenial = (name: string): boolean => /,|\b(?:no|not|without|none|nothing)\b/.test(name);

test("there are many", () => {
  expect(states.length).toBeGreaterThan(150);
});

test("a state behind the name of its feature is that state and nothing else", () => {
  const missed = states.filter(
    (state) =>
      isPlain(state) && found(`${state.feature.name}: ${state.name}`, state.part.id).join() !== state.finding,
  );
  expect(missed.map(({ finding }) => finding)).toEqual([]);
});

test("so it is where only the message says what part is meant", () => {
  const missed = states.filter(
    (state) =>
      isPlain(state) &&
      !found(`${state.part.name}, ${state.feature.name}: ${state.name}`, "").includes(state.finding),
  );
  expect(missed.map(({ finding }) => finding)).toEqual([]);
});

// "Mirror polished" names another part, ">ABS<" is a quoted line.
test("in answer to its question a state is told by its name or by a saying of it, surely or as somebody thinks", () => {
  const wrong = states.flatMap(({ part, feature, name, also, finding }) => {
    const about = `${part.id} ${feature.id}`;
    const sayings = [name, `I think ${name}`, `${name}, I think`].filter(
      (text) => found(text, about).join() !== finding,
    );
    const others = also
      .slice(0, 6)
      .filter((text) => !/ABS|mirror polished/.test(text) && !found(text, about).includes(finding));
    return [...sayings, ...others];
  });
  expect(wrong).toEqual([]);
});

test("denied in answer it is not told", () => {
  const wrong = states.filter(
    ({ part, feature, name, finding }) =>
      !isDenial(name) && found(`it is not ${name}`, `${part.id} ${feature.id}`).includes(finding),
  );
  expect(wrong.map(({ name }) => name)).toEqual([]);
});

test.each([
  "the seller says it is NAME",
  "my mate has one with NAME",
  "is it NAME?",
  "looking for one with NAME",
  "had a dream. It was NAME",
  "> NAME",
  "I sold the one with NAME",
])("nobody's own statement tells nothing: %s", (form) => {
  const wrong = states.filter(({ part, name }) => found(form.replace("NAME", name), part.id).length > 0);
  expect(wrong.map(({ name }) => name)).toEqual([]);
});

test("a size behind the name of its feature is that size, in the unit said", () => {
  const sizes = handbook.parts.flatMap((part) =>
    part.features.flatMap((feature) => {
      const claims = part.variants.map((variant) => variant.tells[feature.id]);
      const mean = claims.flatMap((claim) =>
        claim !== undefined && "mean" in claim && typeof claim.mean === "number" ? [claim.mean] : [],
      )[0];
      return feature.kind === "measurement" && mean !== undefined ? [{ part, feature, mean }] : [];
    }),
  );
  expect(sizes.length).toBeGreaterThan(10);
  const wrong = sizes.filter(({ part, feature, mean }) => {
    const whole = Math.round(mean);
    const expected = new RegExp(`^${part.id}\\.${feature.id} ${whole}±[\\d.]+ ${feature.unit}$`);
    return !expected.test(found(`${feature.name}: ${whole} ${feature.unit}`, part.id).join());
  });
  expect(wrong.map(({ feature, mean }) => `${feature.name}: ${mean}`)).toEqual([]);
});
