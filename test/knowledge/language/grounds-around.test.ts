// What stands around a state speaks for and against its being of the part in hand: subjects, other things, words that nobody knows.
import { describe, expect, test } from "vitest";
import type { GroundName } from "../../../knowledge/language/grounds.ts";
import { groundRows, holding } from "../../support/holding-grounds.ts";

describe("a clause speaks of the last noun before its verb", () => {
  const asked: readonly GroundName[] = [
    "subject: the feature",
    "subject: another feature",
    "subject: the part",
    "subject: a word of the part",
    "subject: another thing",
    "subject: foreign",
    "subject: pronoun",
    "subject: speaker",
    "subject: somebody",
    "state within subject",
    "verb before",
  ];
  const table = `
    Chromed -> chromed:
    The housing is chromed -> chromed: subject: the feature; verb before
    The stalk is chromed -> chromed: subject: another feature; verb before
    The wing is chromed -> chromed: subject: a word of the part; verb before
    The spoiler is chromed -> chromed: subject: foreign; verb before
    The kettle is chromed -> chromed: subject: another thing; verb before
    The lid of the housing is chromed -> chromed: subject: another thing; verb before
    The housing of the kettle is chromed -> chromed: subject: the feature; verb before
    In the kettle it is chromed -> chromed: subject: another thing; verb before
    It is chromed -> chromed: subject: pronoun; verb before
    She is chromed -> chromed: subject: somebody; verb before
    She says I say it is chromed -> chromed: subject: somebody; verb before
    I have it chromed -> chromed: subject: speaker; verb before
    Its chromed -> chromed: subject: pronoun; verb before
    The housing theyre all chromed -> chromed: subject: pronoun; verb before
    The housing, its chromed -> chromed: subject: pronoun; verb before
    Chromed is the housing -> chromed: subject: a word of the part; state within subject
    The two are chromed -> chromed: subject: a word of the part; verb before
    The chromed housing is what I saw -> chromed: subject: the feature; state within subject
    The gasket is chromed -> chromed: subject: foreign; verb before
    The handles are hooked -> hooked (door-handle): subject: the part; verb before
    The mark is hooked -> hooked (door-handle): subject: another feature; verb before
    The spring of the handle is hooked -> hooked (door-handle): subject: another thing; verb before
    The spring of the lever is flat -> flat (door-handle): subject: another thing
    The lever is flat -> flat (door-handle): subject: the feature
    It was a while ago chromed -> chromed:
    It was a chromed one -> chromed: subject: pronoun; verb before
    It is one of those chromed -> chromed: subject: pronoun
    It is what they call chromed -> chromed: subject: pronoun
  `;
  test.each(groundRows(table))("%s (%s)", (text, state, expected, about) => {
    expect(holding(asked, text, state, about)).toBe(expected);
  });
});

describe("things of house and garden that are no part of the part in hand are counted", () => {
  const asked: readonly GroundName[] = [
    "other thing in clause",
    "other thing owned",
    "other things in message",
    "other thing follows",
  ];
  const table = `
    It is chromed -> chromed:
    The bumper is chromed -> chromed: other thing in clause; other things in message 0.333
    My bumper is chromed -> chromed: other thing in clause; other thing owned; other things in message 0.333
    My old bumper is chromed -> chromed: other thing in clause; other things in message 0.333
    A chromed bumper -> chromed: other thing in clause; other things in message 0.333; other thing follows
    Chromed. Bumper? -> chromed: other things in message 0.333
    Chromed, bumper -> chromed: other things in message 0.333
    A chromed old bumper -> chromed: other thing in clause; other things in message 0.333
    The bumper, the kettle. It is chromed -> chromed: other things in message 0.667
    The bumper, the kettle, the boat and the dog. It is chromed -> chromed: other things in message
    My spring, hooked -> hooked (door-handle): other things in message 0.333
    The door has a flat lever -> flat (door-handle): other thing in clause; other things in message 0.333
    The screws in the lid number three -> three: other thing in clause; other things in message 0.333
    Like a bumper it is chromed -> chromed:
  `;
  test.each(groundRows(table))("%s (%s)", (text, state, expected, about) => {
    expect(holding(asked, text, state, about)).toBe(expected);
  });
});

describe("what stands right beside a state, with nothing between, may be what is meant", () => {
  const asked: readonly GroundName[] = [
    "foreign word follows",
    "own word follows",
    "prose word follows",
    "foreign word before",
  ];
  const table = `
    A chromed spoiler -> chromed: foreign word follows
    A chromed housing -> chromed: own word follows
    A chromed gasket -> chromed: prose word follows
    A chromed one -> chromed:
    A chromed, spoiler -> chromed:
    The spoiler chromed -> chromed: foreign word before
    The spoiler, chromed -> chromed:
    The housing chromed -> chromed:
    Chromed -> chromed:
    Spoiler. Chromed. Spoiler -> chromed:
  `;
  test.each(groundRows(table))("%s (%s)", (text, state, expected, about) => {
    expect(holding(asked, text, state, about)).toBe(expected);
  });
});

describe("words that neither the handbook nor small talk knows are counted in the clause and the message", () => {
  const asked: readonly GroundName[] = [
    "foreign words in clause",
    "any foreign word in clause",
    "foreign share of clause",
    "foreign share of message",
    "own share of message",
    "prose share of message",
    "foreign place behind",
    "foreign word owned",
    "foreign word with article",
  ];
  const table = `
    It is chromed -> chromed: own share of message 0.333
    The spoiler is chromed -> chromed: foreign words in clause 0.2; any foreign word in clause; foreign share of clause 0.333; foreign share of message 0.25; own share of message 0.25; foreign word with article
    The goat ferret badger weasel stoat vole are chromed -> chromed: foreign words in clause; any foreign word in clause; foreign share of clause 0.75; foreign share of message 0.667; own share of message 0.111; foreign word with article
    The goat, ferrets and weasels, and badgers are chromed -> chromed: foreign words in clause 0.2; any foreign word in clause; foreign share of clause 0.333; foreign share of message 0.444; own share of message 0.111
    It has a gasket and is chromed -> chromed: own share of message 0.143; prose share of message 0.143
    It has two screws in his spoiler -> two: foreign words in clause 0.2; any foreign word in clause; foreign share of clause 0.2; foreign share of message 0.143; own share of message 0.143; foreign place behind; foreign word owned
    It has two screws in there with a goat -> two: foreign words in clause 0.2; any foreign word in clause; foreign share of clause 0.143; foreign share of message 0.111; own share of message 0.111; foreign place behind; foreign word with article
    It has two screws in an old spoiler -> two: foreign words in clause 0.2; any foreign word in clause; foreign share of clause 0.167; foreign share of message 0.125; own share of message 0.125; foreign place behind
    It has two screws in the big old spoiler -> two: foreign words in clause 0.2; any foreign word in clause; foreign share of clause 0.143; foreign share of message 0.111; own share of message 0.111
    In the goat it has two screws -> two: foreign words in clause 0.2; any foreign word in clause; foreign share of clause 0.2; foreign share of message 0.143; own share of message 0.143; foreign word with article
    It has two screws of a sort, under a goat -> two: foreign share of message 0.1; own share of message 0.1
    It has two screws of a sort and under it a goat -> two: foreign share of message 0.083; own share of message 0.083
    My spoiler is chromed -> chromed: foreign words in clause 0.2; any foreign word in clause; foreign share of clause 0.333; foreign share of message 0.25; own share of message 0.25; foreign word owned
    My old spoiler is chromed -> chromed: foreign words in clause 0.2; any foreign word in clause; foreign share of clause 0.25; foreign share of message 0.2; own share of message 0.2
    My two goats saw a chromed one -> chromed: foreign words in clause 0.2; any foreign word in clause; foreign share of clause 0.167; foreign share of message 0.143; own share of message 0.143
    The gasket of my mirror is chromed -> chromed: own share of message 0.143; prose share of message 0.143
    Some spoiler is chromed -> chromed: foreign words in clause 0.2; any foreign word in clause; foreign share of clause 0.333; foreign share of message 0.25; own share of message 0.25
    An otter is chromed -> chromed: foreign words in clause 0.2; any foreign word in clause; foreign share of clause 0.333; foreign share of message 0.25; own share of message 0.25; foreign word with article
    A ferret is chromed -> chromed: foreign words in clause 0.2; any foreign word in clause; foreign share of clause 0.333; foreign share of message 0.25; own share of message 0.25; foreign word with article
    Another ferret is chromed -> chromed: foreign words in clause 0.2; any foreign word in clause; foreign share of clause 0.333; foreign share of message 0.25; own share of message 0.25
    Chromed with goat -> chromed: foreign words in clause 0.2; any foreign word in clause; foreign share of clause 0.5; foreign share of message 0.333; own share of message 0.333; foreign place behind
  `;
  test.each(groundRows(table))("%s (%s)", (text, state, expected, about) => {
    expect(holding(asked, text, state, about)).toBe(expected);
  });
});
