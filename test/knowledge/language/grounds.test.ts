// What speaks for and against a state, whatever it weighs: what owners name beside it, how they put it, and whether they ask.
import { describe, expect, test } from "vitest";
import type { GroundName } from "../../../knowledge/language/grounds.ts";
import { groundRows, holding } from "../../support/holding-grounds.ts";

describe("what is named, asked or spoken of beside a state speaks for it", () => {
  const asked: readonly GroundName[] = [
    "asked about it",
    "asked about another",
    "feature named in clause",
    "feature named in message",
    "feature named within",
    "feature spoken of",
    "cue in clause",
    "another feature named",
    "part named in message",
    "other part named",
    "no case in hand",
  ];
  const table = `
    It is chromed -> chromed:
    It is chromed -> chromed (mirror housing): asked about it
    The housing is chromed -> chromed: feature named in clause; feature named in message; cue in clause
    The housing looks odd. Chromed, I think -> chromed: feature named in message
    The housing with its week stamp is chromed -> chromed: feature named in clause; feature named in message; cue in clause
    The screws of the wing mirror number three -> three: feature named in clause; feature named in message; cue in clause; part named in message
    It is chromed, my door mirror -> chromed (): part named in message; no case in hand
    The door handle is flat, the mirror chromed -> chromed: part named in message; other part named
    The stalk of the two is chromed -> chromed: another feature named
    Stalk? Chromed, all of it -> chromed:
    The housing and the stalk are chromed -> chromed: feature named in message; another feature named
    The stalk and the housing are chromed -> chromed: feature named in clause; feature named in message; cue in clause
    Chromed and not painted in body colour -> chromed: feature spoken of
    Not painted in body colour but the housing is chromed -> painted: feature named in message; feature spoken of
    It is chromed, yes, chromed, I say -> chromed: feature spoken of
    Two screws and no screws -> none: feature named within; feature spoken of
    Housing chromed, stalk bent -> bent: feature named within
    week stamp -> stamped: feature named within
    No week stamp -> unstamped: feature named within
    It has two screws -> two: feature named within
    The lever shape is flat -> flat (door-handle): feature named in clause; feature named in message; cue in clause
    The stalk is plastic -> moulded: feature named within
    The housing, it is plastic -> plastic: feature named in message
    It is plastic, the stalk -> moulded: feature named in message
  `;
  test.each(groundRows(table))("%s (%s)", (text, state, expected, about) => {
    expect(holding(asked, text, state, about)).toBe(expected);
  });
});

describe("a state that nothing but its own words speaks for is ungrounded", () => {
  const asked: readonly GroundName[] = [
    "ungrounded",
    "ungrounded, one word",
    "ungrounded, no other fact",
    "ungrounded, foreign words",
    "ungrounded, everyday words",
  ];
  const table = `
    It is chromed -> chromed: ungrounded; ungrounded, one word; ungrounded, no other fact
    It is chromed -> chromed (mirror housing):
    It is plated like a kettle -> chromed: ungrounded; ungrounded, no other fact; ungrounded, everyday words 0.667
    It is chromed and the stalk is bent -> chromed: ungrounded; ungrounded, one word
    The spoiler is chromed -> chromed: ungrounded; ungrounded, one word; ungrounded, no other fact; ungrounded, foreign words
    The spoiler is chromed and has two screws -> chromed: ungrounded; ungrounded, one word; ungrounded, foreign words
    The goat is plated like a kettle -> chromed: ungrounded; ungrounded, no other fact; ungrounded, foreign words; ungrounded, everyday words 0.667
    The mirror is plated like a kettle -> chromed:
    The housing is plated like a kettle -> chromed:
    Chromed, not painted in body colour -> chromed:
    No screws here -> none:
  `;
  test.each(groundRows(table))("%s (%s)", (text, state, expected, about) => {
    expect(holding(asked, text, state, about)).toBe(expected);
  });
});

describe("how it is put: in how many words, in everyday English, misspelt, as a saying, in words of several features", () => {
  const asked: readonly GroundName[] = [
    "two words",
    "three words",
    "general word",
    "everyday words",
    "figures alone",
    "misspelt",
    "saying",
    "saying of one word",
    "stretched",
    "ambiguous",
    "denied",
  ];
  const table = `
    It is chromed -> chromed:
    It has two screws -> two: two words; everyday words 0.5
    three of them screws -> three: three words; everyday words 0.667; stretched
    The screws number three -> three: general word; everyday words; figures alone
    screws three -> three: two words; everyday words 0.5
    It is plated like a kettle -> chromed: three words; everyday words 0.667; saying
    It is glittering -> chromed: saying; saying of one word
    It is chromd -> chromed: misspelt
    It is painted in body colour -> painted: three words; everyday words 0.333
    It is not chromed -> chromed: denied
    No week stamp -> unstamped: three words; everyday words
    It is plastic, the stalk -> moulded: ambiguous
    The housing is plastic -> plastic: ambiguous
    The lever is flat -> flat (door-handle): two words; everyday words 0.5
    It is bare inside, the foundry mark -> bare (door-handle): general word; everyday words
  `;
  test.each(groundRows(table))("%s (%s)", (text, state, expected, about) => {
    expect(holding(asked, text, state, about)).toBe(expected);
  });
});

describe("how much else is told, and in how many words", () => {
  const asked: readonly GroundName[] = ["other facts", "no other fact", "short message", "long message"];
  const table = `
    Chromed -> chromed: no other fact; short message
    It is chromed as is everything -> chromed: no other fact; short message
    It is chromed as is everything here -> chromed: no other fact
    It is chromed as is everything here, two screws -> chromed: other facts 0.25
    Chromed, two screws, the stalk is bent -> chromed: other facts 0.5
    Chromed, two screws, the stalk is bent, no week stamp -> chromed: other facts 0.75
    Look at it and look at it and look at it and look at it and look at it and look here, chromed -> chromed: no other fact
    Look at it and look at it and look at it and look at it and look at it and look at all of it, chromed -> chromed: no other fact; long message
  `;
  test.each(groundRows(table))("%s (%s)", (text, state, expected, about) => {
    expect(holding(asked, text, state, about)).toBe(expected);
  });
});

describe("who asks does not tell, unless the question describes", () => {
  const asked: readonly GroundName[] = [
    "asked sentence",
    "opens asking",
    "asks outright",
    "doubted",
    "question",
  ];
  const table = `
    It is chromed -> chromed:
    It has two screws, right? -> two: doubted
    What is this mirror with two screws? -> two:
    So please tell me what mirror this is with two screws? -> two: question
    Three screws, plated like a kettle, is it right? -> three: doubted
    Which mirror is this, with two screws? -> two: asked sentence; question
    Which mirror is this, with two screws?? -> two: doubted
    Which mirror is it if the housing is chromed -> chromed: opens asking; question
    Can somebody tell me which mirror is chromed -> chromed: opens asking; question
    Can you tell me, two screws, which it is -> two: question
    What have I got here with two screws -> two:
    Which mirror has two screws -> two: opens asking; question
    What do I have, two screws, a bent stalk? -> two: asked sentence
    It is mine. What do I have, two screws, a bent stalk? -> two: asked sentence
    How do I know, with two screws? -> two: asked sentence; question
    So what mirror is this with two screws, any idea? -> two:
    Hi can you tell me what I have with two screws? -> two: question
    Two screws, plated like a kettle? -> chromed: asked sentence; question
    Two screws, plated like a kettle? -> two:
    Two screws, plated like a kettle, what is it? -> two:
    Two screws, which is early? -> two:
    It has two screws, which is early? -> two:
    Maybe it is chromed -> chromed: doubted
    I think it is chromed -> chromed: doubted
    Chromed. Which is it? -> chromed:
  `;
  test.each(groundRows(table))("%s (%s)", (text, state, expected, about) => {
    expect(holding(asked, text, state, about)).toBe(expected);
  });
});

describe("small words tell whose part it is and in which mood", () => {
  const asked: readonly GroundName[] = [
    "first person",
    "second person",
    "third person",
    "past",
    "business",
    "times",
    "generic",
    "wish",
    "negation",
    "hearsay",
    "another car",
    "set against another's word",
    "nothing but talk beside",
  ];
  const table = `
    It is chromed -> chromed: nothing but talk beside
    I have it chromed -> chromed: first person; nothing but talk beside
    They have it chromed -> chromed: third person; nothing but talk beside
    You have it chromed -> chromed: second person; nothing but talk beside
    It was chromed -> chromed: past; nothing but talk beside
    It is chromed, ten quid -> chromed: nothing but talk beside
    It is chromed for ten quid -> chromed: business
    It is chromed since monday -> chromed: times
    All of it chromed -> chromed: generic; nothing but talk beside
    I would like it chromed -> chromed: first person; wish; nothing but talk beside
    Not just chromed -> chromed: negation; nothing but talk beside
    The gasket is chromed -> chromed:
    He says it is chromed -> chromed: third person; hearsay; nothing but talk beside
    He says it is painted in body colour, mine is chromed -> chromed: first person; set against another's word; nothing but talk beside
    He says it is painted in body colour, it is chromed -> chromed: hearsay; nothing but talk beside
    His has two screws, mine has three screws -> three: first person; set against another's word; nothing but talk beside
    His has two screws, mine has three screws -> two: third person; another car; nothing but talk beside
    He says it is painted in body colour, on this one it is chromed -> chromed: set against another's word
    He says it is painted in body colour, but it is chromed -> chromed: nothing but talk beside
    I say it is painted in body colour, mine is chromed -> chromed: first person; nothing but talk beside
    Which mirror is chromed -> chromed: nothing but talk beside
  `;
  test.each(groundRows(table))("%s (%s)", (text, state, expected, about) => {
    expect(holding(asked, text, state, about)).toBe(expected);
  });
});
