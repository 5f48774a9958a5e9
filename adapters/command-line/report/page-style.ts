/** The page's look: a record card, ink on paper, one accent; thin rules, figures that align; it prints on A4 and Letter. */
export const pageStyle = `
:root { --paper: #fdfcf8; --ink: #1c1b19; --faint: #6b675f; --rule: #c9c4b8; --accent: #1f5a7a; color-scheme: light dark; }
@media (prefers-color-scheme: dark) { :root { --paper: #191a1b; --ink: #e9e6df; --faint: #a8a399; --rule: #45433e; --accent: #8fc3e0; } }
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 1.5rem 1rem 4rem; max-width: 46rem; background: var(--paper); color: var(--ink); font: 1rem/1.6 Georgia, "DejaVu Serif", serif; font-variant-numeric: tabular-nums; }
h1 { font-size: 1.6rem; line-height: 1.25; margin: 0 0 .5rem; }
h2 { font-size: 1.35rem; margin: 3rem 0 .5rem; padding-top: .75rem; border-top: 2px solid var(--ink); }
h2::first-letter { text-transform: uppercase; }
h3 { font-size: 1rem; margin: 1.75rem 0 .4rem; color: var(--faint); font-weight: normal; font-style: italic; }
a { color: var(--accent); }
.edition { color: var(--faint); font-size: .9rem; }
nav ul { list-style: none; padding: 0; display: flex; flex-wrap: wrap; gap: .25rem 1rem; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; font-weight: normal; padding: .3rem .75rem .3rem 0; border-bottom: 1px solid var(--rule); vertical-align: baseline; }
.figures td, .bars td:last-child { text-align: right; white-space: nowrap; padding-right: 0; }
.bars th { width: 40%; }
.bar { width: 100%; height: .6rem; display: block; }
.bar rect, .known { fill: var(--ink); }
.hole { stroke: var(--rule); }
.line { stroke: var(--ink); stroke-width: 1; fill: none; }
.years { width: 100%; height: auto; max-height: 9rem; }
.years text { fill: var(--ink); font-size: 10px; text-anchor: middle; }
figure { margin: .5rem 0; }
figure img { display: block; width: 100%; max-width: 20rem; max-height: 13rem; object-fit: contain; background: #fdfcf8; border: 1px solid var(--rule); padding: .5rem; }
figcaption { font-size: .85rem; color: var(--faint); }
.pair { border-bottom: 1px solid var(--rule); padding-bottom: .5rem; margin-bottom: .75rem; break-inside: avoid; }
.pair p { margin: .25rem 0; }
.pictures { display: grid; grid-template-columns: repeat(auto-fit, minmax(10rem, 1fr)); gap: 1rem; max-width: 34rem; }
summary { color: var(--accent); cursor: pointer; }
@media print { body { max-width: none; padding: 0; font-size: 10.5pt; } nav, details { display: none; } section { break-before: page; } }
`;
