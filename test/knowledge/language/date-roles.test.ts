// Which date a date is: the car's, its model year's, a mark's on the part, or an errand's. By the wording next to it, with and
// without the words that may be left out; everyday English, no source.
import { describe, expect, test } from "vitest";
import { monthInterval, monthStart } from "../../../knowledge/calendar/interval.ts";
import { findDates } from "../../../knowledge/language/date-phrases.ts";
import {
  builtInterval,
  isOfOtherThing,
  modelYearInterval,
  roleOf,
} from "../../../knowledge/language/date-roles.ts";
import { wordings } from "../../support/wordings.ts";

const era = {
  production: { from: monthStart(1977, 1), to: monthStart(1985, 1) },
  today: monthInterval(2025, 6),
};
const nobody = { car: () => -1, mark: () => -1 };

function roleIn(text: string): string {
  const [date] = findDates(text, era);
  return date === undefined ? "no date" : roleOf(date, text, nobody);
}
const lines = (text: string): readonly string[] => text.trim().split(/\s*\n\s*/);
const others = (role: string, phrases: string): readonly string[] =>
  lines(phrases).filter((text) => roleIn(text) !== role);

test("a car was built, finished, registered or left the works then", () => {
  expect(
    others(
      "built",
      `built 1981
      it was built in 1981
      build 1981
      build date 1981
      build date is may 1981
      build date of may 1981
      finished may 1981
      assembled in may 1981
      left the works in may 1981
      left the factory in 1981
      came off the line in 1981
      rolled out in 1981
      manufactured 1981
      made in 1981
      registered may 1981
      first reg may 1981
      first registered 1981
      delivered in 1981
      took delivery in may 1981
      dispatched may 1981
      from new in 1981
      mine is an 81
      mine is a 1981
      i have an 81
      it's an 81
      its a 1981
      it is a 1981
      got a 1981
      on a 1981
      own a 1981
      for a 1981
      an early 1981
      a late 81
      my car is 1981
      car of 1981
      chassis plate may 1981
      my 1981
      my early 1981
      1981 car
      1981 car
      1981 built
      1981 coupe
      1981 mk2
      1981 mark two
      1981 rhd
      1981 euro
      1981 base
      may 1981 home market car
      built in 81
      registered 81`,
    ),
  ).toEqual([]);
});

test("a model year is said as one", () => {
  expect(
    others(
      "model-year",
      "1981 model\n1981 model year\n1981's model\n81 model\nmodel year 1981\nmodel year is 1981\nmodel year of 1981\nmodel year: 1981\nmy1981",
    ),
  ).toEqual([]);
  expect(roleIn("may 1981 model")).not.toBe("model-year");
  expect(modelYearInterval(1981)).toEqual({ from: monthStart(1980, 8), to: monthStart(1982, 1) });
});

test("an errand was run then, which says nothing of the car", () => {
  expect(
    others(
      "none",
      `bought in 1995
      bought it in 1995
      purchased 1995
      got it in 1995
      got the car in 1995
      picked it up in 1995
      picked up 1995
      owned since 1995
      had it since 1995
      sold in 1995
      restored 1995
      restoration in 1995
      resprayed in may 1995
      repainted 1995
      rebuilt in 1995
      replaced in 1995
      a replacement of 1995
      fitted in 1995
      refitted 1995
      swapped 1995
      photo 1995
      photograph of 1995
      brochure of 1995
      advert from 1995
      catalogue 1995
      parts list of 1995
      joined in 1995
      imported 1995
      mot 1995
      article from 1995
      price list 1995
      crashed in 1995
      broken for spares 1995
      laid up in 1995
      off the road 1995
      handed down 1995
      handed it over in 1995
      handed it down in 1995
      refurbished 1995
      made again in 1995
      in 1995
      1995`,
    ),
  ).toEqual([]);
});

test("a mark on the part reads so", () => {
  expect(
    others(
      "mark",
      `date 5/80
      dated 5/80
      date mark 5/80
      date code is 5/80
      date stamp 5/80
      stamped 5/80
      stamp says 5/80
      marked 5/80
      clock at may 1980
      arrow at may 1980
      centre may 1980
      center may 1980
      mould date 5/80
      moulding says 5/80
      cast 5/80
      casting 5/80
      label 5/80
      labelled 5/80
      sticker 5/80
      laid 5/80
      in biro 5/80
      pencil 5/80
      pencilled 5/80
      crayon 5/80
      glass 5/80
      two dots 5/80
      it says 5/80
      it reads 5/80
      written 5/80
      laminated 5/80
      foam 5/80
      hub 5/80
      spoke 5/80
      engraved 5/80
      punched 5/80
      etched 5/80
      signed 5/80
      initials 5/80
      resin 5/80
      5/80 stamped
      5/80 is stamped on it
      5/80 on the glass
      5/80 on the back
      5/80 on the left mirror
      5/80 in the casting
      5/80 in pencil
      5/80 written
      5/80 moulded in
      5/80 cast in
      5/80 scratched
      5/80 just under it
      5/80 under it
      5/80" next to it
      5/80 alongside
      week 31 81
      in week 31 81`,
    ),
  ).toEqual([]);
  expect(roleIn("laid up 5/95")).toBe("none");
});

test("the nearer wording decides, and one behind the date counts as nearest", () => {
  expect(roleIn("bought in london, built 1981")).toBe("built");
  expect(roleIn("built for me, bought in 1981")).toBe("none");
  expect(roleIn("the car is stamped 5/80")).toBe("mark");
  expect(roleIn("stamped car built 5/80")).toBe("built");
  expect(roleIn("bought the car in 1994")).toBe("none");
  expect(roleIn("bought a 1981 car")).toBe("built");
  expect(roleIn("restored. built 1981")).toBe("built");
  expect(roleIn("built well. 1995")).toBe("none");
  expect(roleIn("stamped; 5/80")).toBe("none");
});

test("each wording counts where it stands near the date, singular and plural, and a week by itself is a mark's", () => {
  const rows: readonly (readonly [string, string])[] = [
    [
      "none",
      `{photo,photos,photograph,photographs,advert,adverts,advertised,crash,crashed,refurb,refurbing} week 31 81
      handed {,it ,them }{over,down} week 31 81
      my uncle had this 5/80
      built by men of the old works that stood by the river 5/80
      stamped on the back by somebody whom I never met and who 5/80
      5/80, and much later stamped
      5/80 (seen) next to it
      it is a brand new foot from a first year box 5/80`,
    ],
    ["mark", "bought from a man who had stood near the sea for week 31 81\nweek 31 81"],
    [
      "built",
      `1981 {export market ,}car
      1981 {mk2,mk12,mark two,european,euro}
      {mine is,mine's,i have,it's,it is,its,got,on,own,for} {a,an} 5/80
      {mine is,mine's,i have,it's,it is,its,got,on,own,for} {a,an} 1981
      first {reg,registration,registered} 5/80
      1981 car, model unknown
      model year unknown, 1981 car
      may 1981-built`,
    ],
    [
      "model-year",
      "{1981,1981 ,1981's }model\n1981 modelyear\n{model year,modelyear}{ ,: ,:, is , of }1981\nmy1981",
    ],
    [
      "mark",
      `{mould,moulding,mold,molded,ink,inked,pencil,pencilled,chalk,chalked,figure,figures,dot,dots,say,says,read,reads,show,shows,stamp,stamps,initial,initials,laminated} 5/80
      5/80 {pencil,pencilled,ink,inked}`,
    ],
  ];
  for (const [role, table] of rows)
    expect([role, wordings(table).filter((text) => roleIn(text) !== role)]).toEqual([role, []]);
});

test("of two wordings the nearer decides, and a mark is one as much as an errand at the same place", () => {
  expect(roleIn("built and stamped 5/80")).toBe("mark");
  expect(roleIn("stamped and built 5/80")).toBe("built");
  expect(roleIn("stamped and bought 5/80")).toBe("none");
  expect(roleIn("bought and stamped 5/80")).toBe("mark");
  expect(roleIn("restored, built 5/80")).toBe("built");
});

describe("a year of two figures", () => {
  test("is the car's in a year's place only", () => {
    expect(
      others(
        "built",
        "built 81\nbuilt in 81\nan 81\na late 81\nfinished in about 81\nregistered sometime 81\nthe date built is 81\nbuilt: 81\nbuilt '81\nbuilt 81 car",
      ),
    ).toEqual([]);
    expect(roleIn("built by team 81")).toBe("none");
  });
});

test("a date of a tyre, a battery or a bill is no date of the car", () => {
  const isOther = (text: string): boolean => {
    const [date] = findDates(text, era);
    return date !== undefined && isOfOtherThing(date, text);
  };
  const things =
    "tyre 5/80\ntyres made week 31 81\ntire 5/80\nbattery dated 5/80\nseat belt 5/80\nseatbelts 5/80\nbelts of 5/80\nhose 5/80\ntool kit 5/80\ntoolkit 5/80\ninvoice 5/80\nnewspaper of may 1980\nstamp collection 5/80";
  expect(lines(things).filter((text) => !isOther(text))).toEqual([]);
  const named =
    "{tyre,tyres,tire,tires,seat belt,seat belts,seatbelt,seatbelts,belt,belts,hose,hoses,tool kit,toolkit} of 5/80";
  expect(wordings(named).filter((text) => !isOther(text))).toEqual([]);
  expect(isOther("the tyre was good and it never had a mark that anybody saw 5/80")).toBe(false);
  expect(lines("glass 5/80\nbuilt 1981\ntyre is flat. 5/80\ntyre is flat; 5/80").filter(isOther)).toEqual([]);
});

test("a car was built in the half year before it was first registered", () => {
  const interval = (text: string) => {
    const [date] = findDates(text, era);
    return date && builtInterval(date, text, era.production);
  };
  const may = monthInterval(1981, 5);
  expect(interval("first registered in may 1981")).toEqual({ from: may.from - 6, to: may.to });
  expect(interval("first reg may 1981")).toEqual({ from: may.from - 6, to: may.to });
  expect(interval("first registration may 1981")).toEqual({ from: may.from - 6, to: may.to });
  expect(interval("registered by a man who had seen it built may 1981")).toEqual(may);
  expect(interval("built may 1981")).toEqual(may);
  expect(interval("registered. built may 1981")).toEqual(may);
});
