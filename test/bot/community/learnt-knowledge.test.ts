// What members saw sharpens the answers: at once, the same whatever the order, and only in their own community.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { learntKnowledge } from "../../../bot/community/observations/learnt-knowledge.ts";
import type { Observation } from "../../../bot/community/observations/observation.ts";
import { observationKind, snapshotMark } from "../../../bot/community/observations/observations-view.ts";
import { emptyConversation, step } from "../../../bot/index.ts";
import { clockFrom, communityTalk } from "../../support/community-talk.ts";
import { demoKnowledge, demoToday } from "../../support/demo-knowledge.ts";
import { seenCar } from "../../support/seen-cars.ts";

/** A second spoiler on a car built in the given month of 1980, which the handbook does not expect so early. */
function seen(
  id: number,
  variant: string,
  month: number,
  stands: Observation["stands"] = "accepted",
): Observation {
  return seenCar(id, { variant, year: 1980, month, stands });
}

function viewOf(observations: readonly (readonly [string, Observation])[]) {
  const view = observationKind.emptyView();
  for (const [id, one] of observations) observationKind.take(view, id, view.byId.get(id), one);
  return view;
}

const [first, second] = ["first-drained", "second"] as const;
const early: readonly (readonly [string, Observation])[] = Array.from({ length: 12 }, (_, at) => [
  `o${at}`,
  seen(at, at < 4 ? first : second, at < 4 ? 1 : 2 + (at % 4)),
]);

/** Of a few ids: accepted, edited, withdrawn or erased. */
function drawnHappening(variants: readonly string[]) {
  const drawn = fc.record({
    number: fc.nat(40),
    variant: fc.constantFrom(...variants),
    month: fc.integer({ min: 1, max: 60 }),
    stands: fc.constantFrom("accepted" as const, "accepted" as const, "withdrawn" as const, undefined),
    trim: fc.constantFrom("s", "standard"),
  });
  return drawn.map(({ number, variant, month, stands, trim }): readonly [string, Observation | undefined] => {
    if (stands === undefined) return [`o${number}`, undefined];
    const one = seen(number, variant, month, stands);
    return [`o${number}`, { ...one, saw: { ...one.saw, car: { ...one.saw.car, trim } } }];
  });
}

const question = {
  conversation: "golden",
  from: "owner",
  text: "rear spoiler on my Shrike S built april 1980, home market, what should it have?",
};

function answerFrom(view: ReturnType<typeof viewOf>) {
  return step(learntKnowledge(demoKnowledge(), view), emptyConversation, question, demoToday).reply;
}

describe("answers with observations in them", () => {
  test("the variants of the sightings exist in the handbook", () => {
    const part = demoKnowledge().handbook.parts.find(({ id }) => id === "rear-spoiler");
    expect(part?.variants.map(({ id }) => id)).toEqual(expect.arrayContaining([first, second]));
  });

  test("sightings of the new kind on early cars move what such a car should have", () => {
    const share = (view: ReturnType<typeof viewOf>) =>
      answerFrom(view).summary.ranking.find(({ variant }) => variant === second)?.probability ?? 0;
    expect(share(viewOf(early))).toBeGreaterThan(share(viewOf([])) + 0.2);
  });

  test("what waits, was declined or withdrawn teaches nothing", () => {
    const idle = (["waiting", "declined", "withdrawn"] as const).map(
      (stands, at) => [`o${at}`, seen(at, second, 2, stands)] as const,
    );
    expect(JSON.stringify(answerFrom(viewOf(idle)))).toBe(JSON.stringify(answerFrom(viewOf([]))));
  });

  test("the same observations give the same answer to the byte, in whatever order and after whatever detours", () => {
    const expected = JSON.stringify(answerFrom(viewOf(early)));
    const mark = snapshotMark(viewOf(early));
    fc.assert(
      fc.property(
        fc.shuffledSubarray([...early], { minLength: early.length }),
        fc.nat(11),
        (shuffled, at) => {
          const view = viewOf(shuffled);
          const [id, one] = early[at] ?? ["", seen(0, first, 1)];
          for (const stands of ["declined", "accepted"] as const) {
            observationKind.take(view, id, view.byId.get(id), { ...one, stands });
          }
          observationKind.take(view, "extra", undefined, seen(99, first, 5));
          observationKind.take(view, "extra", view.byId.get("extra"), undefined);
          expect(snapshotMark(view)).toBe(mark);
          expect(JSON.stringify(answerFrom(view))).toBe(expected);
        },
      ),
      { seed: 7, numRuns: 12 },
    );
  });

  test("what is kept from one acceptance to the next is to the byte what is worked out from nothing", () => {
    const part = demoKnowledge().handbook.parts.find(({ id }) => id === "rear-spoiler");
    if (part === undefined) throw new Error("the handbook has this part");
    const variants = part.variants.map(({ id }) => id);
    const bytesOf = (view: ReturnType<typeof viewOf>) =>
      JSON.stringify(learntKnowledge(demoKnowledge(), view).compiled(part.id), (_, value: unknown) => {
        if (value instanceof Map) return [...value];
        return ArrayBuffer.isView(value)
          ? Buffer.from(value.buffer, value.byteOffset, value.byteLength)
          : value;
      });
    fc.assert(
      fc.property(fc.array(drawnHappening(variants), { minLength: 20, maxLength: 60 }), (happenings) => {
        const view = viewOf([]);
        happenings.forEach(([id, after], at) => {
          observationKind.take(view, id, view.byId.get(id), after);
          if (at % 5 === 0) expect(bytesOf(view)).toBe(bytesOf(viewOf([...view.byId].reverse())));
        });
      }),
      { seed: 8, numRuns: 10 },
    );
  }, 60_000);

  test("an accepted observation stands in the next answer's edition, and only in its own community", async () => {
    const talk = communityTalk(memoryStore(), clockFrom());
    const say = (text: string) => talk.say(text);
    await say("(ann) door mirror, pressed steel, clamp on, bright, 64 mm foot");
    await say("(ann) record an observation");
    for (const words of [
      "what I told decides",
      "built june 1980",
      "one owner from new",
      "today",
      "none",
      "no",
    ]) {
      await say(`(ann) ${words}`);
    }
    const recorded = await say("(ann) record it");
    expect(recorded).toContain("Recorded as <1>");
    const bullet = "(bert) my own: door mirror, pressed steel, clamp on, bright, 64 mm foot";
    expect(await say(bullet)).not.toContain("1 observation");
    await say("(kim, keeper) accept observation <1>");
    expect(await say(bullet.replace("bert", "carl"))).toMatch(/1 observation \([0-9a-f]{8}\)/u);
    const elsewhere = await talk.bot.receive({
      community: "other-club",
      conversation: "club:elsewhere",
      from: "dora",
      text: "door mirror, pressed steel, clamp on, bright, 64 mm foot",
    });
    expect(JSON.stringify(elsewhere.blocks)).not.toContain("1 observation");
  });
});
