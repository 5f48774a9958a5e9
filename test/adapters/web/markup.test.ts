import fc from "fast-check";
import { expect, test } from "vitest";
import { localPath } from "../../../adapters/web/render/blocks.ts";
import { escapeHtml, html } from "../../../adapters/web/render/markup.ts";

const seed = 7;

test("no text put into a template can open an element, leave an attribute or end a comment", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (text) => {
      const { markup } = html`<p title="${text}">${text}</p>`;
      const inside = markup.slice('<p title="'.length, -"</p>".length);
      expect(inside.replace('">', "")).not.toMatch(/[<>"']/u);
      expect(inside).not.toMatch(/\p{Cs}/u);
    }),
    { seed, numRuns: 500 },
  );
});

test("escaping keeps every letter that a page may hold", () => {
  expect(escapeHtml("5' 2\" & <b> ±½ Škoda\n\tü\u0000\u0007\ud800")).toBe(
    "5&#39; 2&quot; &amp; &lt;b&gt; ±½ Škoda\n\tü",
  );
});

test("markup is kept, lists follow one another, nothing leaves nothing", () => {
  const items = ["a", "<b>"].map((word) => html`<li>${word}</li>`);
  expect(html`<ul>${items}${undefined}${false}${0}</ul>`.markup).toBe(
    "<ul><li>a</li><li>&lt;b&gt;</li>0</ul>",
  );
});

test("a path in a reply leads nowhere but to this site", () => {
  expect(localPath("/handbook/a/b?kind=c#d")).toBe("/handbook/a/b?kind=c#d");
  for (const path of [
    "//elsewhere.example",
    "/\\elsewhere.example",
    "https://a",
    "javascript:alert(1)",
    "",
    "/a b",
  ]) {
    expect(localPath(path)).toBe("/");
  }
});
