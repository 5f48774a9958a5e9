import { HtmlValidate } from "html-validate";
import { expect, test } from "vitest";
import { keepSeen, seenCar, seenPanels, seenSpoilers } from "../../support/seen-cars.ts";
import { readerAt, type Seen, webSite } from "./web-site.ts";

// The rules of the HTML standard and of its accessibility; those of taste about how markup is laid out are off.
const validator = new HtmlValidate({
  extends: ["html-validate:standard", "html-validate:a11y"],
  rules: { "long-title": "off", "no-trailing-whitespace": "off" },
});

function faultsOf({ text }: Seen): readonly string[] {
  const report = validator.validateString(text);
  return report.results.flatMap(({ messages }) =>
    messages.map(({ line, column, ruleId, message }) => `${line}:${column} ${ruleId}: ${message}`),
  );
}

test("every page is valid HTML", async () => {
  const { address } = await webSite();
  const reader = readerAt(address);
  const home = await reader.get("/");
  const asked = await reader.send(home, 'id="say"', { text: "which rear spoiler is this? rough inside" });
  const why = await reader.send(asked, "why this?", { words: "why this?" });
  const compared = await reader.send(why, 'id="say"', { text: "compare first spoiler and second spoiler" });
  const sources = await reader.send(compared, 'id="say"', { text: "show the sources" });
  const pages: readonly Seen[] = [
    home,
    asked,
    why,
    compared,
    sources,
    await reader.send(sources, 'action="/share"', {}),
    await reader.get("/handbook"),
    await reader.get("/handbook?q=mirror"),
    ...(await Promise.all(
      ["door-mirror", "front-wing", "instrument-panel", "rear-spoiler", "road-wheel", "steering-wheel"].map(
        (part) => reader.get(`/handbook/wexcombe-shrike/${part}`),
      ),
    )),
    await reader.get("/doors"),
    await reader.get("/embed"),
    await reader.get("/nowhere"),
  ];
  const faults = pages.flatMap((page) => faultsOf(page).map((fault) => `${page.path} ${fault}`));
  expect(faults).toEqual([]);
});

test("so are the pages of parts that members have seen, with drawings of their changes", async () => {
  const { address, store } = await webSite();
  await keepSeen(
    store,
    [...seenSpoilers, ...seenPanels].map((car, number) => seenCar(number, car)),
  );
  const reader = readerAt(address);
  for (const part of ["rear-spoiler", "instrument-panel"]) {
    const page = await reader.get(`/handbook/wexcombe-shrike/${part}`);
    expect(page.text).toContain('<figure class="picture">');
    expect(faultsOf(page)).toEqual([]);
  }
});
