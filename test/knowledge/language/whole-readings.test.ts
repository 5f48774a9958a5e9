// A message and all that it says, as long as the judge takes whatever is put before it.
import { describe, expect, test } from "vitest";
import { inLines, readings, readMirror } from "../../support/whole-reading.ts";

describe("all that a message says", () => {
  test.each(
    readings(`
      The mirror is chromed, the wing mirror has two screws, the door handle a flat lever
      part mirror: mirror
      part door-handle: door handle
      mirror.housing chromed
      mirror.screws two
      door-handle.lever flat

      The seller says it is chromed, two screws
      aside, hearsay: The seller says it is chromed
      aside, hearsay: two screws
      opaque

      He says it is chromed. Mine has a straight stalk
      mirror.stalk straight
      aside, hearsay: He says it is chromed

      It is chromed. He says it is an early mirror, of 1974
      part mirror: early mirror
      mirror.housing chromed
      mirror early as hearsay: early mirror
      aside, hearsay: He says it is an early mirror

      chromed, built 1974
      mirror.housing chromed
      built 1974

      He says two screws, it is a Tarn Two
      aside, hearsay: He says two screws
      opaque

      My mate has an early mirror
      part mirror: early mirror
      aside, another-car: My mate has an early mirror

      My mate has a door mirror
      part mirror: door mirror

      My mate has a Tarn Two, it is nice. Two screws
      mirror.screws two

      Does the mirror have two screws?
      part mirror: mirror
      aside, question: Does the mirror have two screws

      What have I got with two screws?
      mirror.screws two
      which-variant

      Which mirror is this, with two screws?
      part mirror: mirror
      mirror.screws two
      which-variant

      Is it chromed? Two screws
      mirror.screws two
      aside, question: Is it chromed

      two screws and three screws
      aside, several-readings: two screws and three screws
      opaque

      plastic
      aside, several-readings: plastic
      opaque

      It is chromed and built in May 2099
      mirror.housing chromed
      aside, not-yet: May 2099

      built in May 2099
      aside, not-yet: May 2099
      opaque

      T-0123 it is, of 1972
      built 1972
      serial T-\u2022\u2022\u2022\u2022

      A handle without a star is a copy (door-handle)
      part door-handle: handle
      door-handle star-or-fake: A handle without a star is a copy

      hello
      small-talk

      zorbulate the quux
      opaque

      the hozzing
      hozzing, near Housing
      opaque

      the hozzing, two screws
      mirror.screws two

      the hozzing of the door mirror
      part mirror: door mirror

      the hozzing, built 1972
      built 1972

      what is the hozzing worth
      price
    `),
  )("%s (%s)", (text, about, expected) => {
    expect(inLines(readMirror(text, about))).toEqual(expected);
  });
});

describe("versions that are named", () => {
  test.each(
    readings(`
      an early mirror or a late mirror ()
      part mirror: early mirror
      mirror early as own-guess: early mirror
      mirror late as own-guess: late mirror

      He says it is an early mirror
      part mirror: early mirror
      mirror early as hearsay: early mirror
      aside, hearsay: He says it is an early mirror

      Is it an early mirror?
      part mirror: early mirror
      mirror early as question: early mirror
      aside, question: Is it an early mirror

      It is the first handle, on the door handle (mirror)
      part door-handle: first handle
      door-handle flat-early as own-guess: first handle
    `),
  )("%s (%s)", (text, about, expected) => {
    expect(inLines(readMirror(text, about))).toEqual(expected);
  });
});

describe("marks and figures go before words", () => {
  test.each(
    readings(`
      It is marked >ABS<, and chromed
      mirror.housing plastic

      It is marked >ABS<, two screws
      mirror.housing plastic
      mirror.screws two

      no etched week
      mirror.glass-week not-there

      no etched week, no, it is etched week 12/73
      mirror.glass-week 19 to 25 March 1973
      no

      The reach is 90 mm, and chromed
      mirror.housing chromed
      mirror.reach 90\u00b10.5 mm

      It is etched week 12/73, reach 90 mm
      mirror.reach 90\u00b10.5 mm
      mirror.glass-week 19 to 25 March 1973
    `),
  )("%s", (text, about, expected) => {
    expect(inLines(readMirror(text, about))).toEqual(expected);
  });
});
