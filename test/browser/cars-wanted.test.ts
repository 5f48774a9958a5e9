// The part's page with what members saw: on a phone, for who does not see, and on paper.
import { extractText } from "unpdf";
import { expect, test } from "vitest";
import { webSite } from "../adapters/web/web-site.ts";
import { keepSeen, seenCar, seenPanels, seenSpoilers } from "../support/seen-cars.ts";
import { barriersOn, overhangOf, visit } from "./browser.ts";

const parts = ["rear-spoiler", "instrument-panel"] as const;

async function siteWithCars() {
  const site = await webSite();
  await keepSeen(
    site.store,
    [...seenSpoilers, ...seenPanels].map((car, number) => seenCar(number, car)),
  );
  return site;
}

test.each(["light", "dark"] as const)(
  "the cars wanted and the drawings of the changes keep nobody out and fit a narrow phone, %s",
  async (colorScheme) => {
    const site = await siteWithCars();
    const found: string[] = [];
    const { page, complaints } = await visit({ colorScheme, viewport: { width: 320, height: 640 } });
    for (const part of parts) {
      await page.goto(`${site.address}/handbook/wexcombe-shrike/${part}`);
      found.push(...(await barriersOn(page)).map((barrier) => `${part} ${barrier}`));
      if ((await overhangOf(page)) > 0) found.push(`${part} is too wide`);
      const drawing = page.locator("#when figure.picture img").first();
      await drawing.scrollIntoViewIfNeeded();
      await page.waitForFunction("document.querySelector('#when figure.picture img').naturalWidth > 0");
      expect(await drawing.getAttribute("alt")).toContain("90 %:");
      expect(await page.locator("#wanted li").count()).toBeGreaterThan(1);
    }
    expect(complaints).toEqual([]);
    expect(found).toEqual([]);
  },
);

test("on paper stand the cars wanted, whose sightings they are, and each drawing's table", async () => {
  const site = await siteWithCars();
  const { page } = await visit();
  await page.goto(`${site.address}/handbook/wexcombe-shrike/rear-spoiler`);
  // Drawings further down than the window must be there too: paper is not scrolled.
  await page.waitForFunction("[...document.images].every((image) => image.naturalWidth > 0)");
  const { text } = await extractText(new Uint8Array(await page.pdf({ format: "A4" })), { mergePages: true });
  for (const words of ["Cars wanted", "accepted in this site", "1980", "not the type built with"]) {
    expect(text).toContain(words);
  }
});
