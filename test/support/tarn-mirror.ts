/** The careful handbook with a second part kind, some of whose features may be missing altogether. */
import { loadHandbook } from "../../knowledge/handbook/load-handbook.ts";
import type { LearntWords } from "../../knowledge/handbook/schema.ts";
import { layOut } from "../../knowledge/language/lay-out.ts";
import { compileLexicon, type Lexicon } from "../../knowledge/language/lexicon.ts";
import type { MessageView } from "../../knowledge/language/message-view.ts";
import { carefulFiles } from "./careful-handbook.ts";
import { tarnToday } from "./tarn-lexicon.ts";

/** A state's first names are its usual ones; whatever is listed after so many is a mere saying. */
const usualNames = Array.from(
  "abcdefghijklmnopqrstuvwxyzabcdefghij",
  (letter, at) => `chromed zu${letter}${at < 26 ? "v" : "w"}`,
);

const mirror = `id: mirror
name: Door mirror
also: [wing mirror]
summary: The mirror on either door, held by screws through a gasket.
features:
  - id: screws
    kind: states
    name: Screws
    also: [fixing screws]
    question: How many screws hold the foot?
    check: Lift the gasket and count.
    effort: 1
    photograph: true
    states:
      - { id: two, name: Two screws }
      - { id: three, name: Three screws }
      - { id: none, name: No screws }
  - id: stamp
    kind: states
    name: Week stamp
    question: Is there a week stamp under the foot?
    check: Look at the underside in raking light.
    effort: 2
    photograph: true
    states:
      - { id: stamped, name: Week stamp }
      - { id: unstamped, name: No week stamp }
  - id: housing
    kind: states
    name: Housing
    question: What is the housing made of?
    check: Tap it with a nail.
    effort: 1
    photograph: true
    states:
      - { id: chromed, name: Chromed, also: [${usualNames}, plated like a kettle, glittering] }
      - { id: painted, name: Painted in body colour }
      - { id: plastic, name: Plastic, material: { symbols: [ABS] } }
  - id: stalk
    kind: states
    name: Stalk
    question: Is the stalk straight or bent?
    check: Look along it.
    effort: 1
    photograph: true
    states:
      - { id: straight, name: Straight stalk }
      - { id: bent, name: Bent stalk }
      - { id: moulded, name: Plastic stalk, also: [plastic] }
  - id: glass-week
    kind: date
    name: Etched week
    question: Which week is etched in the glass?
    check: Breathe on its lower edge.
    effort: 2
    photograph: true
    none: no etched week
    forms: [week-year]
    lead: { median: 2.2, sigma: 0.5 }
  - id: reach
    kind: measurement
    name: Reach
    question: How far does it stand out?
    check: Measure from the door skin.
    effort: 2
    photograph: true
    unit: mm
    instrument: rule
variants:
  - id: early
    name: Early mirror
    origin: production
    summary: Two screws and chromed.
    fitted:
      - { from: 1970-01, to: 1974-12, sources: [ledger] }
    sources: [measured]
    tells:
      screws: { two: always }
      stamp: { stamped: always }
      housing: { chromed: always }
      stalk: { straight: always }
      reach: { mean: 90, spread: 0.5 }
  - id: late
    name: Late mirror
    origin: production
    summary: Three screws and painted.
    fitted:
      - { from: 1975-01, to: 1979-12, sources: [ledger] }
    sources: [measured]
    tells:
      screws: { three: usually, none: sometimes }
      stamp: { unstamped: always }
      housing: { painted: usually, plastic: sometimes }
      stalk: { bent: usually, moulded: sometimes }
      reach: { mean: 95, spread: 0.5 }
`;

export function mirrorLexicon(learntWords?: LearntWords): Lexicon {
  const loaded = loadHandbook(carefulFiles({ "parts/mirror.yaml": mirror }));
  if (!loaded.ok) throw new Error(`the handbook with a mirror does not load: ${JSON.stringify(loaded)}`);
  return compileLexicon({ ...loaded.handbook, ...(learntWords === undefined ? {} : { learntWords }) });
}

const plain = mirrorLexicon();

/** `about`: "part" or "part askedFeature"; "" for no case in hand. */
export function mirrorView(text: string, about = "mirror", lexicon: Lexicon = plain): MessageView {
  const [part, askedFeature] = about.split(" ");
  return layOut(text, lexicon, {
    today: tarnToday,
    ...(part === undefined || part === "" ? {} : { part }),
    ...(askedFeature === undefined ? {} : { askedFeature }),
  }).view;
}
