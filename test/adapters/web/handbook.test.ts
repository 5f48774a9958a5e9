import { expect, test } from "vitest";
import { openHandbook } from "../../../adapters/handbooks.ts";
import { handbookIndex } from "../../../adapters/web/handbook-search.ts";
import { knowledgeOf } from "../../../bot/index.ts";
import type { Handbook } from "../../../knowledge/index.ts";
import { shrike } from "../program.ts";
import { readerAt, webSite } from "./web-site.ts";

const { handbook } = await openHandbook(shrike);

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
