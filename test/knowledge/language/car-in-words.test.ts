// What people say of their car and of how a part came to them, in the many ways it is said. Everyday English of clubs and advertisements, no source.
import { describe, expect, test } from "vitest";
import { readDemo } from "../../support/read-demo.ts";
import { carInWords } from "../../support/reading-in-words.ts";
import { wordings } from "../../support/wordings.ts";

const said = (text: string): string => carInWords(readDemo(text)).toSorted().join(", ");

test.each([
  [
    "known-replaced",
    `{I,we,they} {,had ,had only just }{replaced,swapped,changed,renewed} it
    {fitted,put} {,my ,on a }{new,replacement} {one,pair,mirror,mirrors,wheel}
    it is {,later ,a ,early }replacements
    they are replacements
    not the one {it,the car} came with
    not original to {the,my} car
    came off a different car
    {fitted later,isn't the original,not the original one,from a donor,off a donor}
    hit {,by ,by a white van }and replaced`,
  ],
  [
    "documented-from-new",
    `{,fully ,well }documented
    every {receipt,bill,bit of paper}
    all {,the ,its }{receipts,bills}
    full {history,paperwork,paper work,file}{, from new}
    history {,file }{,is }complete {from,since} new
    all {,the }{paperwork,bills} from new
    history {,file }from new
    build {sheet,card} {,number ,from the works }{matches,with}
    {works record,paper trail}`,
  ],
  [
    "one-owner",
    `{one owner,only owner,first owner,original owner,one lady owner}
    one family{, owned, ownership}
    {owned,I had} it {from,since} new
    owned from new
    mine {from,since} new
    in {the,our} family from new
    bought {,it }{,brand }new
    from new by {my,the same}`,
  ],
  [
    "history-unknown",
    `{unknown,no,little,without any} {,known ,real }{history,paperwork}
    history {,is ,was ,is totally }{unknown,lost}
    don't {know,have} {,any ,much of the }history
    no idea {of,on} {,the ,its real }history
    {barn find,barnfind}
    {nobody,noone} knows {,really }{where,what}
    no idea {what,who} {,really }{was,had}
    {know nothing about,nothing known of} it`,
  ],
] as const)("%s", (grade, table) => {
  expect(
    wordings(table)
      .map((text) => [text, said(text)])
      .filter(([, car]) => car?.split(", ").includes(grade) !== true),
  ).toEqual([]);
});

test.each([
  [
    "known-replaced",
    "it {was never,has not been,hasn't ever been,was not a} {replaced,replacement}\nit {changed,changed hands}\nirreplaced\na replaced one",
  ],
  ["documented-from-new", "documented restoration\nundocumented"],
  ["one-owner", "one ownership\nstone owner"],
  ["history-unknown", "a known history\nhistory is known"],
] as const)("not %s", (grade, table) => {
  expect(wordings(table).filter((text) => said(text).includes(grade))).toEqual([]);
});

describe("a part by itself", () => {
  test("is loose, bought, offered or lying about", () => {
    const table = `loose {one,part,mirror,mirrors,wheel,wheels}
      {a,one,found,got,it is,they're} loose
      {two,pair,set} {,of }loose ones
      off {a,an} {,parts ,donor ,scrap ,scrapped ,old }car
      not {on,fitted to} {a,any,my} car
      in a box {of,under}
      {swap meet,swap meets,swapmeet,autojumble,auto jumbles}
      {on ,from ,}{ebay,e bay}
      {classified,classifieds}
      don't {have,own,even have} {a,any} car
      no car {yet,attached}
      with a spare {one,mirror}
      from a {breaker,breakers,scrapyard,seller}
      for sale
      mirror {arrive,arrives,arrived} {,on }monday
      I am selling it
      bought {,it ,one }{from,off} Dave
      {asking,wants} {silly money,too much,40 quid,about 40 pounds}
      40 {quid,euro,euros} for {it,the pair}
      40 quid {posted,plus post,plus postage}
      thinking of {buy,buying}
      new old stock
      in its {,first ,original }{box,wrapper}
      brand new {,spare }in
      never {,been }fitted
      {seller,bloke} {claims,wants} it`;
    expect(wordings(table).filter((text) => !said(`mirror ${text}`).split(", ").includes("loose"))).toEqual(
      [],
    );
  });
  test("is not, where the car or nothing is offered, or the part is on it", () => {
    const table = `{none,not,no,nothing,car,is,was} {,up }for sale
      is it for sale?
      who is selling one
      don't have a car {here,with me,to hand,yet}
      a nos one
      spare one on {my,the} car
      still {on,fitted} from ebay
      just bought a Shrike
      I {bought,got,found} {,my ,this nice old }Shrike from a dealer
      it is looser
      lathe bench`;
    expect(
      wordings(table)
        .map((text) => [text, said(text)])
        .filter(([, car]) => car?.includes("loose")),
    ).toEqual([]);
  });
});

describe("model, trim and market", () => {
  test.each([
    ["trim s", "it's an S\nan S I\nit was not the Touring but the S\nmy S"],
    [
      "trim touring",
      "my {Touring,touring}\ntouring\nsix screws on my Touring?\nis it right for a Touring?\nwhat should a Touring have?\nI have six screws, is it a Touring?\nan S. a Touring",
    ],
    ["built 1980, trim s", "the '80 S"],
    ["model shrike-ii, trim touring", "Mark II {Touring,touring}"],
    ["model shrike-ii", "a {,Shrike }Mark II\nmk1, mk2\nit is a mk1. it is a mk2"],
    ["model shrike-ii, trim s", "Mark II S"],
    ["built June 1980, market home", "home, june 1980\nhome. june 1980"],
    ["built June 1980, market home, trim s", "{home,Home}, june 1980, shrike S"],
    ["built June 1980, trim s", "ho, june 1980, shrike S"],
    ["market home", "home, Shrike\nit is a {UK,British} car"],
    ["market home, model shrike-ii", "home, Mark II"],
    ["market home, trim touring", "home, Touring"],
    ["market america", "it is a federal car"],
    ["built 1981", "S, 1981"],
    ["loose", "I {bought,got,acquired} a Shrike mirror from a dealer"],
    ["history-unknown", "one owner. barn find"],
    [
      "",
      `it's an s
      the Touring mirror
      an S mirror
      letters S {R,I} and more
      an S R
      it's {not,isn't,no} {a,the} Touring
      the seller says it is {an S,a Touring}
      my mate has {an S,a Touring}
      six screws on a Touring?
      a Shrike
      home
      home, {rough,34,1980?}
      home is where it is, june 1980
      home, june 1980, the seller says it is rough
      a UK magazine
      {standard,base}, 1980
      a standard
      I {bought,got,acquired} a {,nice old }Shrike from a dealer`,
    ],
  ] as const)("%s", (expected, table) => {
    expect(
      wordings(table)
        .map((text) => [text, said(text)])
        .filter(([, car]) => car !== expected),
    ).toEqual([]);
  });
  test("is told in a question where the part in hand is known", () => {
    expect(carInWords(readDemo("six screws on a Touring?", "door-mirror"))).toEqual(["trim touring"]);
  });
});
