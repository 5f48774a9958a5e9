import { join } from "node:path";
import { expect, test } from "vitest";
import { openHandbook } from "../../../adapters/handbooks.ts";
import { drawingsOf } from "../../../adapters/web/drawings.ts";
import { handbookIndex } from "../../../adapters/web/handbook-search.ts";
import { knowledgeOf } from "../../../bot/index.ts";
import type { Handbook } from "../../../knowledge/index.ts";
import { root, shrike } from "../program.ts";
import { readerAt, webSite } from "./web-site.ts";

const { handbook } = await openHandbook(shrike);
const { handbook: finch } = await openHandbook(join(root, "knowledge/handbooks/ollerton-finch"));

test("a part kind's page has its versions side by side, its tells with drawings, its periods and its sources", async () => {
  const { address } = await webSite();
  const { text, status } = await readerAt(address).get("/handbook/wexcombe-shrike/door-mirror");
  expect(status).toBe(200);
  const part = handbook.parts.find(({ id }) => id === "door-mirror");
  for (const { id, name } of part?.variants ?? []) {
    expect(text).toContain(`id="version-${id}"`);
    expect(text).toContain(name);
  }
  for (const { id } of part?.features ?? []) expect(text).toContain(`id="tell-${id}"`);
  expect(text).toContain('<figure class="periods">');
  expect(text.match(/src="\/drawings\//gu)?.length).toBeGreaterThan(15);
});

test("two versions chosen are laid side by side alone", async () => {
  const { address } = await webSite();
  const path = "/handbook/wexcombe-shrike/door-mirror?kind=second-moulded&kind=trade-copy";
  const { text } = await readerAt(address).get(path);
  const table = /<table class="ruled columns">[\s\S]*?<\/table>/u.exec(text)?.[0] ?? "";
  expect(table.match(/<th scope="col">/gu)?.length).toBe(3);
});

test("a link that names kinds which have gone, or one alone, shows them all", async () => {
  const { address } = await webSite();
  for (const query of ["kind=gone&kind=gone-too", "kind=trade-copy", "kind=trade-copy&kind=gone"]) {
    const { text } = await readerAt(address).get(`/handbook/wexcombe-shrike/door-mirror?${query}`);
    const table = /<table class="ruled columns">[\s\S]*?<\/table>/u.exec(text)?.[0] ?? "";
    expect([query, table.match(/<th scope="col">/gu)?.length]).toEqual([query, 10]);
  }
});

test("a part's page leads on to asking about it, with its name in the field", async () => {
  const { address } = await webSite();
  const reader = readerAt(address);
  const { text } = await reader.get("/handbook/wexcombe-shrike/instrument-panel");
  const path = /<a href="([^"]+)">Ask about an instrument panel<\/a>/u.exec(text)?.[1] ?? "none";
  expect((await reader.get(path)).text).toContain("\nwhich instrument panel is this?</textarea>");
});

test("the pages of a handbook about something else than cars speak of no car", async () => {
  const { address } = await webSite({}, knowledgeOf(finch));
  const reader = readerAt(address);
  const { text } = await reader.get("/handbook/ollerton-finch/hand-wheel");
  expect(text).toContain("<h2>Machines wanted</h2>");
  expect(text).toContain("on machines built about March 1931");
  expect(text).not.toMatch(/\bcars?\b/iu);
  const asked = await reader.send(await reader.get("/"), 'id="say"', {
    text: "which hand wheel is this? six spokes, machine built 1935",
  });
  const shared = await reader.send(asked, 'id="say"', { text: "share car sheet" });
  const sheet = await reader.get(/href="(\/sheet\/[^"]+)"/u.exec(shared.text)?.[1] ?? "/nowhere");
  expect(sheet.text).toContain("<h1>Machine sheet: Ollerton Finch</h1>");
  expect(sheet.text.replaceAll("car-sheet.pdf", "")).not.toMatch(/\bcars?\b/iu);
});

test("a drawing with ink of its own keeps its paper in the dark", async () => {
  const { address } = await webSite({}, knowledgeOf(finch));
  const { text } = await readerAt(address).get("/handbook");
  const path = /src="(\/drawings\/[0-9a-f]{20}\.svg)"/u.exec(text)?.[1] ?? "none";
  const svg = await (await fetch(`${address}${path}`)).text();
  expect(svg).not.toContain("currentColor");
  expect(svg).toContain("@media(prefers-color-scheme:dark){svg{background:#e9e6de}}");
});

test("of two handbooks that know the same part each shows its own drawing beside its own question", () => {
  const other = {
    ...handbook,
    parts: handbook.parts.map((part) => ({
      ...part,
      features: part.features.map((feature) => ({ ...feature, question: `Else: ${feature.question}` })),
    })),
    edition: "other",
    drawings: new Map([...handbook.drawings].map(([path, svg]) => [path, `${svg}<!-- other -->`])),
  };
  const feature = handbook.parts
    .find(({ id }) => id === "door-mirror")
    ?.features.find(({ drawing }) => drawing !== undefined);
  const shown = (books: readonly Handbook[], text: string) => {
    const { ofFeature, found } = drawingsOf(() => books);
    const address = ofFeature("door-mirror", { feature: feature?.id ?? "", text })?.address ?? "";
    return found(address.replace("/drawings/", ""));
  };
  for (const books of [
    [other, handbook],
    [handbook, other],
  ]) {
    expect(shown(books, `Else: ${feature?.question}`)).toContain("<!-- other -->");
    expect(shown(books, `${feature?.question} (in mm)`)).not.toContain("<!-- other -->");
  }
});

test("a drawing has an address that never changes, opens alone and follows the theme", async () => {
  const { address } = await webSite();
  const { text } = await readerAt(address).get("/handbook");
  const path = /src="(\/drawings\/[0-9a-f]{20}\.svg)"/u.exec(text)?.[1] ?? "none";
  const answer = await fetch(`${address}${path}`);
  expect(answer.headers.get("content-type")).toBe("image/svg+xml");
  expect(answer.headers.get("cache-control")).toContain("immutable");
  expect(answer.headers.get("content-security-policy")).toContain("sandbox");
  expect(await answer.text()).toContain("prefers-color-scheme:dark");
});

test("search forgives slips of the pen and finds other names", () => {
  const { search } = handbookIndex([handbook]);
  const first = (words: string) => search(words)[0]?.name;
  expect(first("door miror")).toBe("door mirror");
  expect(first("gaskt grove")).toBe("gasket groove");
  expect(first("wing mirror")).toBe("door mirror");
  expect(first("touring heatd")).toBe("Touring heated mirror");
  expect(search("mirror")[0]?.kind).toBe("part");
  expect(search("xylophone")).toEqual([]);
  expect(search("")).toEqual([]);
  expect(search("the of")).toEqual([]);
});

test("a handbook that holds markup is shown as it was written, on every page", async () => {
  const evil = `<img src=x onerror="alert('x')">&amp;`;
  const [part] = handbook.parts;
  if (part === undefined) throw new Error("the demonstration has parts");
  const soiled = {
    ...handbook,
    cover: { ...handbook.cover, name: `Book ${evil}`, summary: evil },
    sources: handbook.sources.map((source) => ({
      ...source,
      short: `${source.short} ${evil}`,
      citation: evil,
    })),
    parts: [
      {
        ...part,
        name: `mirror ${evil}`,
        summary: evil,
        misbeliefs: part.misbeliefs.map((belief) => ({ ...belief, claim: evil, correction: evil })),
        features: part.features.map((feature) => ({
          ...feature,
          name: `${feature.name} ${evil}`,
          question: evil,
          check: evil,
          why: evil,
          tools: [evil],
        })),
        variants: part.variants.map((variant) => ({
          ...variant,
          name: `${variant.name} ${evil}`,
          summary: evil,
          material: evil,
          remarks: [evil],
          needs: [evil],
        })),
      },
    ],
  } as Handbook;
  const { address } = await webSite({}, knowledgeOf(soiled));
  const reader = readerAt(address);
  const pages = [
    await reader.get("/handbook"),
    await reader.get(`/handbook/wexcombe-shrike/${part.id}`),
    await reader.get(`/handbook?q=${encodeURIComponent("mirror")}`),
    await reader.send(await reader.get("/"), 'id="say"', { text: "which mirror is this?" }),
  ];
  for (const { text } of pages) {
    expect(text).toContain("&lt;img src=x");
    expect(text).not.toContain("<img src=x");
    expect(text).not.toMatch(/\sonerror="/u);
  }
});
