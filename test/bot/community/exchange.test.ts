// Observations out of a community and in again, and how often each observer is right.
import { describe, expect, test } from "vitest";
import { memoryStore } from "../../../adapters/store/memory.ts";
import type { Block } from "../../../bot/index.ts";
import { clockFrom, communityTalk } from "../../support/community-talk.ts";
import { keepSeen, type SeenCar, seenCar } from "../../support/seen-cars.ts";

const cars: readonly SeenCar[] = [
  { variant: "second", year: 1980, month: 6, by: '=HYPERLINK("x")' },
  { variant: "first-drained", year: 1980, month: 2, car: { market: "home" } },
  { variant: "second", year: 1981, month: 1, stands: "waiting" },
];

async function clubWith(seen: readonly SeenCar[]) {
  const store = memoryStore();
  await keepSeen(
    store,
    seen.map((car, number) => seenCar(number, car)),
  );
  const { bot, say } = communityTalk(store, clockFrom());
  const keeper = async (text: string) => {
    const message = {
      conversation: "club:bench",
      from: "kim",
      name: "kim",
      standing: "keeper",
      text,
    } as const;
    return (await bot.receive(message)).blocks;
  };
  return { keeper, say };
}

function fileOf(blocks: readonly Block[]): string {
  const file = blocks.find((block) => block.kind === "file");
  return file?.text ?? "";
}

function textsOf(blocks: readonly Block[]): string {
  return blocks
    .flatMap((block) =>
      block.kind === "text" ? [block.text] : block.kind === "list" ? [block.lead, ...block.items] : [],
    )
    .join("\n");
}

describe("export and import", () => {
  test("what is exported and imported elsewhere is exported the same again, and counts", async () => {
    const here = await clubWith(cars);
    const there = await clubWith([]);
    const rows = fileOf(await here.keeper("export observations"));
    expect(textsOf(await there.keeper(`import observations:\n${rows}`))).toContain(
      "3 observations taken in, 1 of them waiting for a keeper.",
    );
    expect(fileOf(await there.keeper("export observations"))).toBe(rows);
    expect(textsOf(await there.keeper("changeovers of the rear spoiler"))).toContain("2 accepted sightings");
  });

  test("a name that a spreadsheet would work out is made harmless", async () => {
    const { keeper } = await clubWith(cars);
    const rows = fileOf(await keeper("export observations"));
    expect(rows).toContain(`"'=HYPERLINK(""x"")"`);
    expect(rows).not.toMatch(/(?:^|,)"?[=+\-@]/mu);
  });

  test("the same rows twice are there once", async () => {
    const { keeper } = await clubWith([]);
    const rows = "part,kind,built from,history\nrear spoiler,Second spoiler,1980-06,one-owner";
    expect(textsOf(await keeper(`import observations:\n${rows}`))).toContain("1 observation taken in");
    expect(textsOf(await keeper(`import observations:\n${rows}`))).toContain(
      "0 observations taken in, 0 of them waiting for a keeper; 1 was there already",
    );
  });

  test("a row that cannot be read is named with its line, and the others are taken", async () => {
    const { keeper } = await clubWith([]);
    const rows = [
      "part,kind,built from,built to,history",
      "rear spoiler,second,1980-06,,one-owner",
      "rear spoiler,third,1980-06,,one-owner",
      "sunroof,second,1980-06,,one-owner",
      "rear spoiler,second,in june,,one-owner",
      "rear spoiler,second,1980-06,1980-05,one-owner",
      "rear spoiler,second,1980-06,,garage queen",
    ].join("\n");
    const text = textsOf(await keeper(`import observations:\n${rows}`));
    expect(text).toContain("1 observation taken in, 1 of them waiting");
    expect(text).toContain("row 3: “third” is no kind of that part");
    expect(text).toContain("row 4: “sunroof” is no part of the handbook");
    expect(text).toContain("row 5: “in june” is no date");
    expect(text).toContain("row 6: the last day is before the first");
    expect(text).toContain("row 7: “garage queen” is no history that is known here");
  });

  test("rows without the columns that are needed are refused, and members may do neither", async () => {
    const { keeper, say } = await clubWith([]);
    expect(textsOf(await keeper("import observations:\nid,car\n1,2"))).toContain("names no column “part”");
    expect(await say("(ann) export observations")).toContain("That is for a keeper to do.");
    expect(await say("(ann) import observations: part,kind,history")).toContain(
      "That is for a keeper to do.",
    );
  });

  test("JSON that was exported is taken in whole elsewhere, and pasted twice it is there once", async () => {
    const here = await clubWith(cars);
    const there = await clubWith([]);
    const records = fileOf(await here.keeper("export observations as json"));
    const said = `import observations:\n${records}`;
    expect(textsOf(await there.keeper(said))).toContain("3 observations taken in, 1 of them waiting");
    expect(fileOf(await there.keeper("export observations as json"))).toBe(records);
    expect(textsOf(await there.keeper(said))).toContain("3 were there already");
  });

  test("an observation in JSON that cannot be read is named with its place, and the others are taken", async () => {
    const here = await clubWith([...cars, ...cars]);
    const { keeper } = await clubWith([]);
    const whole = fileOf(await here.keeper("export observations as json"));
    const [one, other, third, fourth, fifth, sixth] = JSON.parse(whole);
    const list = [
      one,
      { ...other, id: "x" },
      { ...third, saw: { ...third.saw, grade: "garage queen" } },
      { ...fourth, saw: { ...fourth.saw, part: "sunroof" } },
      { ...fifth, kinds: [{ variant: "third", chance: 1 }] },
      { ...sixth, weight: 12 },
      7,
      one,
    ];
    const text = textsOf(await keeper(`import observations: ${JSON.stringify(list)}`));
    expect(text.split("\n")).toEqual([
      "1 observation taken in, 0 of them waiting for a keeper; 1 was there already.",
      "These were not read:",
      "observation 2: “id” is missing, or not as it is exported",
      "observation 3: “saw.grade” is missing, or not as it is exported",
      "observation 4: “sunroof” is no part of the handbook",
      "observation 5: “third” is no kind of that part",
      "observation 6: “weight” is missing, or not as it is exported",
      "observation 7: “id” is missing, or not as it is exported",
    ]);
    expect(textsOf(await keeper("import observations: [{"))).toContain(
      "the text: begins like JSON and is no list of observations",
    );
  });

  test("more rows than one commit takes are taken in by saying the same again, and told in few words", async () => {
    const { keeper } = await clubWith([]);
    const head = "part,kind,built from,history,links";
    const rows = Array.from(
      { length: 1850 },
      (_, at) => `rear spoiler,Second spoiler,1980-06,one-owner,https://example.org/${at}`,
    );
    const said = `import observations:\n${[head, ...rows].join("\n")}`;
    expect(textsOf(await keeper(said))).toContain(
      "Left for the next time: 950 observations. Send the same again.",
    );
    expect(textsOf(await keeper(said))).toContain("Left for the next time: 50 observations.");
    expect(textsOf(await keeper(said))).toBe(
      "50 observations taken in, 50 of them waiting for a keeper; 1800 were there already.",
    );
    expect(textsOf(await keeper("audit")).length).toBeLessThan(1000);
  });

  test("a row of a handbook that does not serve here is named, and what was declined or withdrawn stays so", async () => {
    const { keeper } = await clubWith([]);
    const rows = [
      "handbook,part,kind,built from,history,stands",
      "tarn,rear spoiler,second,1980-06,one-owner,",
      ...["declined", "withdrawn", "accepted", "in two minds"].map(
        (stands) => `wexcombe-shrike,rear spoiler,second,1980-06,one-owner,${stands}`,
      ),
    ].join("\n");
    const text = textsOf(await keeper(`import observations:\n${rows}`));
    expect(text).toContain("4 observations taken in, 1 of them waiting");
    expect(text).toContain("row 2: “tarn” is no handbook that serves here");
  });

  test("as JSON every record is whole", async () => {
    const { keeper } = await clubWith(cars);
    const records: readonly { readonly stands: string }[] = JSON.parse(
      fileOf(await keeper("export observations as json")),
    );
    expect(records.map(({ stands }) => stands)).toEqual(["accepted", "accepted", "waiting"]);
  });
});

describe("observers", () => {
  const sameCars = ["a", "b", "c", "d"].flatMap((serialDigest, at): readonly SeenCar[] => {
    const base = { year: 1980, month: 6, car: { serialDigest } };
    const right = at < 2 ? "second" : "first-drained";
    return [
      { ...base, variant: right, by: "ann" },
      { ...base, variant: right, by: "bert" },
      { ...base, variant: at % 2 === 0 ? "moulded" : right, by: "carl" },
    ];
  });

  test("who disagrees with the others is right less often, and only keepers are told", async () => {
    const { keeper, say } = await clubWith(sameCars);
    const text = textsOf(await keeper("observers"));
    const rightOf = (name: string) =>
      Number(new RegExp(`${name}: ([\\d.]+) %, on 4 cars`, "u").exec(text)?.[1]);
    expect(rightOf("ann")).toBeGreaterThan(rightOf("carl"));
    expect(await say("(ann) observers")).toContain("That is for a keeper to do.");
  });

  test("nobody is compared while no car was seen twice", async () => {
    const { keeper } = await clubWith(cars);
    expect(textsOf(await keeper("observers"))).toContain("nobody’s eye can be compared");
  });

  test("a keeper is told what else was recorded of the same car", async () => {
    const { say } = await clubWith(sameCars);
    const shown = await say("(kim, keeper) observation a000-0000");
    expect(shown).toContain("The same car, by its serial number, was recorded before:");
    expect(shown).toMatch(/by bert, accepted: the same part too/u);
  });
});
