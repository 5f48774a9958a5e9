// A feature that is said to be there or not, by the words round its name. Everyday English, no source.
import { expect, test } from "vitest";
import { readDemo } from "../../support/read-demo.ts";
import { findingsInWords } from "../../support/reading-in-words.ts";
import { wordings } from "../../support/wordings.ts";

const of = (text: string, part: string): string => findingsInWords(readDemo(text, part)).join(", ");

test.each([
  [
    "rear-spoiler.drain-notches plain",
    `{no,without,lacks} drain notches
    there {is,are} no drain notches
    drain notches{: none,: no,: nothing found,: absent,: missing,: not there,: none at all,? none,? no,: can't see any}
    the drain notches {are ,are all ,were completely ,seem to be ,,look totally ,appear to be }{missing,gone,absent}
    drain notches {are not,aren't} {there,present,visible,anywhere to be seen,in place at all,fitted}
    drain notches {on mine ,}are nowhere
    I can't {find,see} {any,} {sign of ,}drain notches`,
  ],
  [
    "rear-spoiler.drain-notches notches",
    `{it has,with,there are,found,I can see,it carries,comes with} {,the }drain notches
    drain notches{? yes,: yes,: present,: visible}
    the drain notches are {,still ,barely ,very clearly ,only just }{there,visible,clear,in place,intact}`.replace(
      "{,the }drain",
      "{,the }drain",
    ),
  ],
  [
    "",
    `drain notches
    {in,on,under,behind,near} {,the ,its }drain notches there is dirt
    the seller says it has drain notches
    drain notches aren't {square,deep}
    does it have drain notches?
    drain notches: three`,
  ],
] as const)("%s", (expected, table) => {
  expect(
    wordings(table)
      .map((text) => [text, of(text, "rear-spoiler")])
      .filter(([, found]) => found !== expected),
  ).toEqual([]);
});

test.each([
  [
    "door-mirror.casting-mark no-mark",
    "no {,sign of a }diamond\ncan't find {a,any} casting mark\nthere is no casting mark\ncasting mark{: none, is missing, isn't there,? none}",
  ],
  [
    "door-mirror.casting-mark diamond-b|register-r|blurred",
    "{I see,there is} a casting mark\ncasting mark{? yes,: present, is {still ,}visible}",
  ],
  ["", "the casting mark\nfound it in the casting mark"],
] as const)("of several states that it may have when it is there, all are left: %s", (expected, table) => {
  expect(
    wordings(table)
      .map((text) => [text, of(text, "door-mirror")])
      .filter(([, found]) => found !== expected),
  ).toEqual([]);
});
