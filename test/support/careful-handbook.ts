/** A handbook in which a critic finds nothing to remark on; tests spoil it one line at a time. */
import type { HandbookFile } from "../../knowledge/handbook/handbook-file.ts";

const cover = `format: 1
id: tarn
name: Tarn handle book
summary: The door handles of the invented Tarn, told apart by eye.
completeness: good
edited: 2024-03
`;

const cars = `models:
  - { id: tarn, name: Tarn, from: 1970-01, to: 1975-12 }
  - { id: tarn-two, name: Tarn Two, from: 1976-01, to: 1979-12 }
trims:
  - { id: plain, name: Plain, from: 1970-01, to: 1979-12 }
  - { id: sport, name: Sport, models: [tarn-two], from: 1976-01, to: 1979-12 }
markets:
  - { id: home, name: Home market }
  - { id: abroad, name: Export market }
production:
  1970: 40
  1971: 60
  1972: 60
  1973: 60
  1974: 60
  1975: 60
  1976: 70
  1977: 70
  1978: 70
  1979: 50
serials:
  form: T-####
  anchors:
    - { serial: 1, built: 1970-01, sources: [ledger] }
    - { serial: 500, built: 1978-06, sources: [ledger] }
`;

const sources = `sources:
  - { id: ledger, kind: works-record, citation: Works ledger of the Tarn, short: works ledger, date: "1980", grade: A }
  - { id: list-1974, kind: parts-list, citation: Parts list of 1974, short: parts list 1974, date: 1974-05, grade: A }
  - { id: measured, kind: measured, citation: Nine handles measured by P. Ferris, short: nine handles, date: "2019", grade: B }
`;

const handle = `id: door-handle
name: Door handle
also: [outside handle]
summary: The outside handle of either door.
features:
  - id: lever
    kind: states
    name: Lever
    also: [lever shape]
    question: Is the lever flat or round?
    check: Look at it from above in daylight.
    effort: 1
    photograph: true
    states:
      - { id: flat, name: Flat, also: [flat lever] }
      - { id: round, name: Round, also: [round lever] }
      - { id: hooked, name: Hooked, also: [hooked lever] }
  - id: foundry-mark
    kind: states
    name: Foundry mark
    also: [casting mark]
    question: Which mark is cast inside?
    check: Take the handle off and look inside in raking light.
    effort: 4
    photograph: true
    misread: 0.05
    states:
      - { id: star, name: Star }
      - { id: bare, name: Bare }
  - id: button
    kind: states
    name: Push button
    question: Is the button steel or brass?
    check: Hold a magnet to the button; steel holds it.
    effort: 1
    photograph: false
    tools: [magnet]
    when: { lever: [flat] }
    states:
      - { id: steel, name: Steel }
      - { id: brass, name: Brass }
  - id: length
    kind: measurement
    name: Length
    question: How long is the lever?
    check: Measure along the back with a rule.
    effort: 2
    photograph: true
    unit: mm
    instrument: rule
  - id: spring
    kind: states
    name: Return spring
    question: Is the spring coiled or a leaf?
    check: With the trim off, look at the pivot from behind.
    effort: 4
    photograph: true
    states:
      - { id: coil, name: Coil spring }
      - { id: leaf, name: Leaf spring }
causes:
  - id: supplier
    name: Which spring maker
    states: [harl, orme]
    variants:
      flat-early: { harl: always }
      flat-late: { harl: usually, orme: sometimes }
    features:
      spring:
        harl: { coil: always }
        orme: { leaf: nearly always }
    sources: [ledger]
mountings:
  - { id: two-stud, name: Two studs, description: Two studs through the skin. }
  - { id: plate, name: Back plate, description: A plate behind the skin. }
fits:
  - { part: two-stud, car: two-stud, fit: direct, how: Two nuts. }
  - { part: plate, car: plate, fit: direct, how: Four screws. }
  - { part: plate, car: two-stud, fit: "no", how: The skin is not cut out for it. }
variants:
  - id: flat-early
    name: Early flat handle
    also: [first handle]
    origin: production
    summary: Flat lever, long, steel button.
    mounting: two-stud
    material: cast zinc
    fitted:
      - { from: 1970-01, to: 1972-12, sources: [ledger] }
    tells:
      lever: { flat: always, sources: [measured] }
      foundry-mark: { star: usually, bare: sometimes, sources: [measured] }
      button: { steel: "nearly always, 9 of 9", sources: [measured] }
      length: { mean: 140, spread: 0.5, sources: [measured] }
  - id: flat-late
    name: Late flat handle
    also: [second handle]
    origin: production
    summary: Flat lever, short, brass button.
    mounting: two-stud
    material: cast zinc
    fitted:
      - { from: 1973-01, to: 1975-12, sources: [list-1974] }
    sources: [measured]
    tells:
      lever: { flat: always }
      foundry-mark: { star: usually, bare: sometimes }
      button: { brass: nearly always }
      length: { mean: 132, spread: 0.5 }
  - id: round
    name: Round handle
    also: [third handle]
    origin: production
    summary: Round lever of the Tarn Two.
    mounting: plate
    fitted:
      - { from: 1976-01, to: 1979-12, models: [tarn-two], end: exact, sources: [ledger] }
    sources: [measured]
    tells:
      lever: { round: always }
      foundry-mark: { not-there: always }
      button: { not-there: always }
      length: { mean: 120, spread: 0.5 }
      spring: { leaf: always }
  - id: copy
    name: Trade copy
    origin: reproduction
    summary: Cast from a worn early handle.
    mounting: two-stud
    sold:
      - { from: 1996-01, to: 2012-12, sources: [measured] }
    sources: [measured]
    tells:
      lever: { flat: usually, hooked: sometimes }
      foundry-mark: { bare: always }
      button: { steel: always }
      length: { mean: 138, spread: 0.8 }
      spring: { coil: always }
misbeliefs:
  - id: star-or-fake
    claim: A handle without a star is a copy.
    correction: One genuine handle in four was fettled smooth at that place.
    sources: [measured]
`;

export const carefulHandbook: Readonly<Record<string, string>> = {
  "handbook.yaml": cover,
  "cars.yaml": cars,
  "sources.yaml": sources,
  "parts/door-handle.yaml": handle,
};

/** The careful handbook as files, with some of them replaced. */
export function carefulFiles(replaced: Readonly<Record<string, string>> = {}): readonly HandbookFile[] {
  return Object.entries({ ...carefulHandbook, ...replaced }).map(([path, text]) => ({ path, text }));
}
