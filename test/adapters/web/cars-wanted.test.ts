// What a part's page shows of sightings: the changes drawn, the cars wanted, and whose community it is.
import { describe, expect, test } from "vitest";
import { systemClock } from "../../../adapters/clock.ts";
import { makeSignInPath } from "../../../adapters/web/sign-in-links.ts";
import { keepSeen, seenCar, seenPanels, seenSpoilers } from "../../support/seen-cars.ts";
import { type OpenSite, readerAt, webSite } from "./web-site.ts";

const spoilers = seenSpoilers.map((car, number) => seenCar(number, car));
const panels = seenPanels.map((car, number) => seenCar(number, car));
const path = "/handbook/wexcombe-shrike/rear-spoiler";

/** The section of the page that has this id. */
function section(text: string, id: string): string {
  return new RegExp(`<section id="${id}">[\\s\\S]*?</section>`, "u").exec(text)?.[0] ?? "";
}

async function wantedAt({ address }: OpenSite): Promise<string> {
  return section((await readerAt(address).get(path)).text, "wanted");
}

describe("a part's page", () => {
  test("names the wanted cars by build month and by the trims both kinds were fitted to, also before anything was seen", async () => {
    const wanted = await wantedAt(await webSite());
    expect(wanted).toMatch(
      /When the First spoiler with drains gave way to the Second spoiler\. Look at: Standard Shrike or Shrike S;[\s\S]*?<li>built July 1980: the newer one on it is about as likely as not/u,
    );
    expect(wanted).toContain("When the Second spoiler gave way to the Moulded spoiler.");
    expect(wanted).toContain("in this site’s own community");
  });

  test("with sightings has a drawing of the change with its table, and asks for the months about it", async () => {
    const site = await webSite();
    await keepSeen(site.store, spoilers);
    const { text } = await readerAt(site.address).get(path);
    expect(section(text, "when")).toMatch(
      /<figure class="picture"><img[^>]*alt="When the rear spoiler changed; most likely/u,
    );
    expect(section(text, "when")).toContain("March 1983");
    expect(section(text, "wanted")).toMatch(/<li>built (?:April|May) 1980: the newer one on it is/u);
  });

  test("draws kinds that followed each other in a row as one", async () => {
    const site = await webSite();
    await keepSeen(site.store, panels);
    const { text } = await readerAt(site.address).get("/handbook/wexcombe-shrike/instrument-panel");
    expect(section(text, "when").match(/<figure class="picture">/gu)).toHaveLength(1);
    expect(section(text, "when")).toContain("Engine-turned panel – Crackle panel: 90 %:");
  });
});

describe("whose sightings are shown", () => {
  const guild = "discord:77";

  test("those of the only community there is, by its name", async () => {
    const site = await webSite();
    await keepSeen(site.store, spoilers, guild);
    const { text } = await readerAt(site.address).get(path);
    expect(section(text, "wanted")).toContain("accepted in discord:77, the one community here");
    expect(section(text, "when")).toContain("March 1983");
  });

  test("of several the site's own for a visitor, and for who has signed in those of their community", async () => {
    const site = await webSite();
    await keepSeen(site.store, spoilers, guild);
    await keepSeen(site.store, panels);
    expect(await wantedAt(site)).toContain("in this site’s own community");
    const keeper = readerAt(site.address);
    const guest = { person: "discord:1", community: guild, standing: "keeper", name: "Kim" } as const;
    const link = await keeper.get(await makeSignInPath(site.store, systemClock(), guest));
    await keeper.send(link, "/sign-in/", {});
    const { text } = await keeper.get(path);
    expect(section(text, "wanted")).toContain("accepted in discord:77, the community you have signed in to");
    expect(section(text, "when")).toContain("March 1983");
  });
});
