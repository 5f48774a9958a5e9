/** A small sound handbook that uses every kind of entry once; tests break it one line at a time. */
import type { HandbookFile } from "../../knowledge/handbook/handbook-file.ts";

const cover = `format: 1
id: wexcombe
name: Wexcombe parts handbook
summary: What the Wexcombe works fitted, told apart by eye.
completeness: good
edited: 2024-03
`;

const cars = `models:
  - id: shrike
    name: Shrike
    from: 1978-04
    to: 1984-09
trims:
  - id: tourer
    name: Tourer
    models: [shrike]
    from: "1979"
    to: 1983-06
markets:
  - id: home
    name: Home market
production:
  1978: 12
  1979: 40
  1980: 55
  1981: 48
serials:
  form: WS-####
  anchors:
    - { serial: 1, built: 1978-04, sources: [works-ledger] }
    - { serial: 101, built: 1980-05-12, sources: [works-ledger] }
`;

const sources = `sources:
  - id: works-ledger
    kind: works-record
    citation: Wexcombe works ledger, copy in the club archive
    short: works ledger
    date: "1984"
    grade: A
  - id: parts-list
    kind: parts-list
    citation: Wexcombe parts list, second printing
    short: parts list 2
    grade: A
`;

const spoiler = `id: rear-spoiler
name: Rear spoiler
also: [boot spoiler]
summary: The moulding along the edge of the boot lid.
drawing: drawings/spoiler.svg
features:
  - id: inside-finish
    kind: states
    name: Finish inside
    question: How does the inside look?
    check: Look under the edge with a lamp.
    effort: 2
    photograph: true
    states:
      - { id: rough, name: Rough }
      - { id: smooth, name: Smooth }
    misread:
      - { is: smooth, said: rough, rate: 0.1 }
    sources: [parts-list]
  - id: edge-bead
    kind: states
    name: Bead along the edge
    question: Is there a bead along the edge?
    check: Run a finger along the edge.
    effort: 1
    photograph: true
    when: { inside-finish: [rough] }
    states:
      - { id: round, name: Round }
      - { id: square, name: Square }
  - id: width
    kind: measurement
    name: Width
    question: How wide is it?
    check: Measure along the rear edge.
    effort: 3
    photograph: false
    unit: mm
    instrument: tape
  - id: cast-date
    kind: date
    name: Mould date
    question: What does the mould mark read?
    check: Look for a round mark inside.
    effort: 3
    photograph: true
    before: stamp-date
    forms: [clock]
  - id: stamp-date
    kind: date
    name: Stamped date
    question: What does the ink stamp read?
    check: Look beside the mould mark.
    effort: 3
    photograph: true
    forms: [month-year]
groups:
  - id: mould
    coupling: close
    features: [inside-finish, edge-bead]
    reason: Both follow from the mould.
causes:
  - id: supplier
    name: Which supplier
    states: [old, new]
    variants:
      first: { old: usually, new: sometimes }
    features:
      edge-bead:
        old: { round: usually }
        new: { square: usually }
mountings:
  - { id: four-stud, name: Four studs, description: Four M6 studs. }
  - { id: tape, name: Tape, description: Bonded with tape. }
fits:
  - { part: tape, car: four-stud, fit: with-work, how: Plug the holes first. }
variants:
  - id: first
    name: First type
    origin: production
    summary: Laid up by hand.
    mounting: four-stud
    resembles: [trade-copy]
    fitted:
      - { from: 1978-04, to: 1980-11, models: [shrike], trims: [tourer], markets: [home], sources: [works-ledger] }
    sources: [parts-list]
    tells:
      inside-finish: { rough: nearly always, smooth: rarely, sources: [parts-list] }
      width: { mean: 1180, spread: 3 }
      cast-date: { not-there: always }
  - id: second
    name: Second type
    origin: production
    summary: Injection moulded.
    fitted:
      - { from: 1980-09, to: 1984-09, end: exact }
    tells:
      inside-finish: { smooth: "usually, 17 of 20" }
      width: { mean: 1176, spread: 1 }
  - id: trade-copy
    name: Trade copy
    origin: reproduction
    summary: Copied from a worn first type.
    sold:
      - { from: "1995", to: "2010" }
    tells:
      width: { not-there: rarely }
misbeliefs:
  - id: early-are-metal
    claim: Early spoilers are aluminium.
    correction: No metal one is known.
    sources: [works-ledger]
`;

const drawing = `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 40">
  <title>Rear spoiler</title>
  <defs><marker id="tip"><path d="M0 0 L4 2 L0 4 z"/></marker></defs>
  <path d="M5 30 Q50 5 95 30" fill="none" stroke="black" marker-end="url(#tip)"/>
  <text x="50" y="38">inside &amp; edge</text>
</svg>
`;

/** The files of the sound handbook, by path. */
export const minimalHandbook: Readonly<Record<string, string>> = {
  "handbook.yaml": cover,
  "cars.yaml": cars,
  "sources.yaml": sources,
  "parts/rear-spoiler.yaml": spoiler,
  "drawings/spoiler.svg": drawing,
};

/** The sound handbook as files, with some of them replaced; undefined leaves a file out. */
export function minimalFiles(
  replaced: Readonly<Record<string, string | undefined>> = {},
): readonly HandbookFile[] {
  const merged: Record<string, string | undefined> = { ...minimalHandbook, ...replaced };
  return Object.entries(merged).flatMap(([path, text]) => (text === undefined ? [] : [{ path, text }]));
}
