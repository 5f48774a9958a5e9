/** The report as one HTML page that stands by itself: no script, nothing loaded from elsewhere, drawings of the handbook inside. */
import type { Handbook, PartKind, Variant } from "../../../knowledge/index.ts";
import { escapeXml } from "../../pictures/escape-xml.ts";
import { coverageChart } from "./coverage-chart.ts";
import { pageStyle } from "./page-style.ts";
import type { Confusion, PartReport } from "./part-report.ts";
import { figures, headings, nextSteps, noConfusion, pairWords, percent, yearWords } from "./words.ts";

export function reportAsPage(handbook: Handbook, reports: readonly PartReport[]): string {
  const { name, summary, edited } = handbook.cover;
  const title = escapeXml(`${name}: how well its handbook tells things apart`);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:">
<title>${title}</title>
<style>${pageStyle}</style>
</head>
<body>
<header>
<h1>${title}</h1>
<p>${escapeXml(summary)}</p>
<p class="edition">Edition of ${escapeXml(edited)}, ${handbook.edition.slice(0, 8)}. Owners are invented and drawn from the handbook's own tables: what is shown holds if these are true.</p>
<nav aria-label="Part kinds"><ul>${reports.map(({ part }) => `<li><a href="#${part.id}">${escapeXml(part.name)}</a></li>`).join("")}</ul></nav>
</header>
<main>
${reports.map((report) => section(handbook, report)).join("\n")}
</main>
</body>
</html>
`;
}

function section(handbook: Handbook, report: PartReport): string {
  const { part, asked, confusions, coverage } = report;
  return `<section id="${part.id}">
<h2>${escapeXml(part.name)}</h2>
${figure(handbook, part.drawing, part.name)}
<h3>${headings.figures}</h3>
<table class="figures"><tbody>${figures(report)
    .map(([label, value]) => `<tr><th scope="row">${escapeXml(label)}</th><td>${escapeXml(value)}</td></tr>`)
    .join("")}</tbody></table>
<h3>${headings.asked}</h3>
<table class="bars"><tbody>${asked
    .slice(0, 8)
    .map(({ name, share }) => barRow(name, share))
    .join("")}</tbody></table>
<h3>${headings.confusions}</h3>
${confusions.length === 0 ? `<p>${noConfusion}</p>` : confusions.map((one) => confusion(handbook, part, one)).join("\n")}
<h3>${headings.next}</h3>
<ul>${nextSteps(report)
    .map((step) => `<li>${escapeXml(step)}</li>`)
    .join("")}</ul>
<h3>${headings.coverage}</h3>
${coverageChart(part.id, coverage)}
<details><summary>The same as a table</summary>
<table><thead><tr><th scope="col">Year</th><th scope="col">Covered</th></tr></thead><tbody>${coverage
    .map((year) => `<tr><th scope="row">${year.year}</th><td>${escapeXml(yearWords(year))}</td></tr>`)
    .join("")}</tbody></table></details>
</section>`;
}

function barRow(name: string, share: number): string {
  const width = Math.round(share * 100);
  return `<tr><th scope="row">${escapeXml(name)}</th><td><svg class="bar" viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true"><rect width="${width}" height="6"/></svg></td><td>${percent(share)}</td></tr>`;
}

function confusion(handbook: Handbook, part: PartKind, one: Confusion): string {
  const pictures = one.pair.flatMap((variant) =>
    variant === undefined ? [] : [figure(handbook, pictureOf(part, variant), variant.name)],
  );
  return `<div class="pair"><p><strong>${percent(one.share)}</strong> of all cases: ${escapeXml(pairWords(one))}</p><div class="pictures">${pictures.join("")}</div></div>`;
}

/** The variant's own drawing, or that of the first state it is said to show most. */
function pictureOf(part: PartKind, { drawing, tells }: Variant): string | undefined {
  if (drawing !== undefined) return drawing;
  for (const feature of part.features) {
    const said = Object.entries(tells[feature.id] ?? {}).find(
      ([, text]) => typeof text === "string" && /^(?:always|nearly always|usually)/u.test(text),
    );
    const state = feature.kind === "states" ? feature.states.find(({ id }) => id === said?.[0]) : undefined;
    if (state?.drawing !== undefined) return state.drawing;
  }
  return undefined;
}

/** A drawing as a picture of its own: its ids and styles cannot meet those of the page or of another. */
function figure(handbook: Handbook, path: string | undefined, name: string): string {
  const svg = path === undefined ? undefined : handbook.drawings.get(path);
  if (svg === undefined) return "";
  const source = `data:image/svg+xml;base64,${Buffer.from(svg).toString("base64")}`;
  return `<figure><img src="${source}" alt="${escapeXml(name)}"><figcaption>${escapeXml(name)}</figcaption></figure>`;
}
