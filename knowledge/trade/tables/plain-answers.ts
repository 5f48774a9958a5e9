// Answers to general questions that no decoder reckons: how a kind of mark is read, what two words differ in. A row
// answers when every one of its cues is in the question.
import { FROM_MEMORY, type Sourced } from "./sourced.ts";

export interface PlainAnswer extends Sourced {
  readonly topic: string;
  readonly cues: readonly RegExp[];
  readonly answer: string;
  readonly why: string;
}

const standard = (source: string): Sourced => ({ source, basis: "standard" });
const practice = (source: string): Sourced => ({ source, basis: "common practice" });

const TYRE = /\bt[yi]res?\b|sidewall|\bdot\b/;
const WHEEL = /\bwheels?\b|\brims?\b|\balloys?\b/;
const GLASS = /\bglass\b|windscreen|windshield|\bwindows?\b/;
const HOW_READ = /how (?:do|are|can|should|to)\b.*\b(?:read|date|dated|decode|tell|know)\b/;
const HOW_READ_OR_MEAN = new RegExp(
  `${HOW_READ.source}|\\bdot\\b.{0,12}\\b(?:code|mean|stand)|(?:digits|figures|numbers).{0,24}\\bdot\\b`,
);
const VIN = /\bvins?\b|chassis number|17 ?(?:digit|character)/;
const E_MARKS =
  /\be[- ]?marks?\b|\be in an?\b|\b(?:big|capital|small|little|lower[- ]?case) e\b|\be[- ]?numbers?\b/;

export const PLAIN_ANSWERS: readonly PlainAnswer[] = [
  {
    topic: "approval mark",
    cues: [E_MARKS, /what|differ|\bvs\b|versus|mean|\bsame\b|explain/],
    answer:
      "E in a circle: approved under a UN Regulation (1958 Agreement); the number is the country that approved, and the regulation stands beside it",
    why: "the country of approval is neither that of manufacture nor of sale",
    ...standard("1958 Agreement; list of distinguishing numbers of the Federal German transport ministry"),
  },
  {
    topic: "approval mark",
    cues: [E_MARKS, /what|differ|\bvs\b|versus|mean|\bsame\b|explain/],
    answer:
      "e in a rectangle: approved under an EC directive, in use since 1970 (for glass since Directive 92/22/EEC of 1992); mostly the same country numbers",
    why: "two systems side by side: the letter's size and the frame tell which; a part may carry both",
    ...practice("EC directives, from memory; GRSG paper citing 92/22/EEC"),
  },
  {
    topic: "approval mark",
    cues: [/\b0[0-9]\b/, /approval|series|amendment|\be[- ]?mark/],
    answer:
      "the first two figures of an approval number are the series of amendments the type met: 00 none, then 01, 02 and so on",
    why: "they date the type, loosely, not the part",
    ...practice("1958 Agreement, approval markings; layout common practice"),
  },
  {
    topic: "tyre date",
    cues: [
      TYRE,
      /^(?!.*\b(?:wheel|rim|glass|lamp|lens)s?\b)/,
      HOW_READ_OR_MEAN,
      /\bdates?\b|\bdot\b|\bage\b|how old/,
    ],
    answer:
      "the last figures of the number after DOT: four figures are week and year (2501 = week 25 of 2001), three figures before 2000 are week and last figure of the year",
    why: "never month and year: weeks run to 53",
    ...standard("49 CFR 574; 63 FR 55832; 64 FR 36807"),
  },
  {
    topic: "tyre date",
    cues: [TYRE, /triangle/],
    answer: "a small triangle after three date figures: made in the 1990s, by custom of some makers",
    why: "three figures leave the decade open; not every maker put the triangle",
    ...practice("two published tyre guides"),
  },
  {
    topic: "tyre date",
    cues: [TYRE, /(?:three|3)[- ](?:digit|figure)/],
    answer:
      "three date figures: before mid 2000; four figures since the rule of July 1999, obligatory by July 2000",
    why: "old moulds ran to the last day, so the border is not sharp by weeks",
    ...standard("63 FR 55832; 64 FR 36807"),
  },
  {
    topic: "tyre marks",
    cues: [/\bt[yi]res?\b/, /\d ?pr\b|ply rating/],
    answer:
      "PR: ply rating, a class of strength of the casing, once the count of cotton plies; not a count of plies today",
    why: "the load index of the later service description says the load in figures",
    ...FROM_MEMORY,
  },
  {
    topic: "tyre marks",
    cues: [/\bt[yi]res?\b/, /\bxl\b|extra load|reinforced|\brf\b/],
    answer:
      "XL, extra load, reinforced or RF: built for a higher pressure and load than the plain tyre of that size",
    why: "read the load index beside it: it holds the figure",
    ...FROM_MEMORY,
  },
  {
    topic: "tyre marks",
    cues: [/\bt[yi]res?\b/, /\bt[tl]\b|tubeless|tube type/],
    answer: "TL: tubeless; TT: tube type, needs a tube",
    why: "the rim must suit too: a safety hump came with tubeless tyres",
    ...FROM_MEMORY,
  },
  {
    topic: "tyre date",
    cues: [/\bt[yi]res?\b/, /how old is too old|\btoo old\b|(?:still )?safe at|how long do/],
    answer:
      "no age is fixed by rule for cars: many in the trade look closely from six years and renew by ten",
    why: "rubber hardens and cracks with heat, light and standing whatever the tread; a date proves the tyre only",
    ...FROM_MEMORY,
  },
  {
    topic: "tyre grades",
    cues: [/\bt[yi]res?\b/, /temperature/],
    answer: "temperature A, B or C: a US grade of resistance to heat at speed, A the best",
    why: "one of three grades with treadwear and traction; tyres in small runs and winter tyres need none",
    ...standard("49 CFR 575.104"),
  },
  {
    topic: "speed symbol",
    cues: [/\bvr(?:\d\d)?\b/, /\bv\b|mean|differ|\bvs\b/],
    answer: "VR inside the size: over 210 km/h; V after the load index: 240 km/h",
    why: "the letter inside an early size is not the letter of the later service description",
    ...standard("UN Regulation 30; published speed symbol tables"),
  },
  {
    topic: "tyre size",
    cues: [/\btrx\b|\btd\b|(?:365|390|415) ?mm/, /\bt[yi]re|\brim|\bwheel/],
    answer: "tyres for millimetric rims (… R 390) fit only their own rims",
    why: "the bead seat differs from every inch rim",
    ...practice("published account of tyre sizes"),
  },
  {
    topic: "rim",
    cues: [/\bhumps?\b|\bh2\b/, WHEEL],
    answer: "H, H2, FH, CH, EH2: a safety hump on the bead seat, 2 on both seats",
    why: "it keeps a tubeless tyre's bead in its place",
    ...standard("ISO 4000-2:2021"),
  },
  {
    topic: "rim",
    cues: [WHEEL, /width/, /measured?\b|inside|between/],
    answer: "rim width is measured between the flanges, inside; over all a rim is about 1 inch wider",
    why: "6 J is 6 inches between the flanges",
    ...standard("ISO 4000-2:2021"),
  },
  {
    topic: "rim",
    cues: [/what (?:is|does)|what's|whats|mean|which/, /\boffset\b|\bet\b.*\b(?:wheel|rim)/],
    answer:
      "offset (ET or IS): millimetres from the rim's centre line to the mounting face, plus when the face lies outboard",
    why: "back space in mm is about (width + 1 inch) × 12.7 + offset",
    ...standard("ISO 4000-2:2021; arithmetic"),
  },
  {
    topic: "rim",
    cues: [/\bjj?\b/, /\bjj\b|\bb\b|\bk\b|flange/],
    answer:
      "flange letters, height by width: B 14.0 by 10 mm, J 17.5 by 13 mm, JJ 18.0 by 13 mm; K about 19.6 mm high",
    why: "a rule decides B against J or K, never J against JJ, and JJ is also written loosely for J",
    ...practice("four published wheel guides; K from memory"),
  },
  {
    topic: "bolt circle",
    cues: [
      /\bp\.?c\.?d\b|bolt circle|stud pattern|bolt pattern/,
      /what(?:'s|s| is)|how (?:do|to|can)|measure|work out/,
    ],
    answer:
      "the circle through the bolt centres: distance between two neighbours × 1.1547 for 3 bolts, 1.4142 for 4, 1.7013 for 5, 2.0000 for 6; five bolts, next but one: × 1.0515",
    why: "circle = distance ÷ sin(180° / bolts); measure left edge to left edge, half a millimetre of tape is 0.85 mm in a five-bolt circle",
    ...standard("arithmetic"),
  },
  {
    topic: "wheel marks",
    cues: [WHEEL, /\bkba\b|five[- ](?:digit|figure)/],
    answer: "KBA with five figures: a German type approval of an aftermarket wheel",
    why: "works wheels of a car were approved with the car",
    ...FROM_MEMORY,
  },
  {
    topic: "wheel marks",
    cues: [WHEEL, /j ?2530/],
    answer: "SAE J2530 with a load: an aftermarket wheel, 2000s or later",
    why: "the practice is for aftermarket wheels",
    ...FROM_MEMORY,
  },
  {
    topic: "wheel marks",
    cues: [WHEEL, /\bdot\b/],
    answer:
      "DOT on a wheel: the maker's statement under the US rule for vehicles other than cars; wheels for US passenger cars need no marks",
    why: "no approval exists; a missing mark proves nothing",
    ...practice("FMVSS 110 and 120; NHTSA letter 1984-3.34"),
  },
  {
    topic: "wheel marks",
    cues: [WHEEL, /heat (?:number|code|mark)/],
    answer: "a heat number: the melt or the heat treatment batch of the casting, a foundry's own count",
    why: "it can be dated only by the foundry's own records; look for the casting dial instead",
    ...FROM_MEMORY,
  },
  {
    topic: "glass date",
    cues: [GLASS, HOW_READ, /\bdates?\b|dated|\bage\b|\bold\b|\bdots?\b/],
    answer:
      "a figure is the last of the year, dots beside it the month, by two opposite habits: counted down (before the figure 7 − n, after it 13 − n) or up (before n, after 6 + n)",
    why: "there is no standard; ..7 is May by the one and February by the other, and the decade comes from the car",
    ...practice("two published guides for counting up; counting down from memory"),
  },
  {
    topic: "glass mark",
    cues: [GLASS, /\b(?:bs ?(?:au ?178|857|5282)|jis ?r ?3211)\b/],
    answer:
      "BS 857, BS 5282 and JIS R 3211 are national glass marks, usual before UN Regulation 43 of 15 February 1981",
    why: "national marks went on for home markets, so they give no firm not-after",
    ...FROM_MEMORY,
  },
  {
    topic: "glass mark",
    cues: [GLASS, /roman|numeral/, /\bno\b|without|missing/],
    answer: "no roman number beside 43R: ordinary clear side or rear glass, quite normal",
    why: "I to IV are windscreens, V is under 70 percent light, VI double",
    ...standard("UN Regulation 43; three published guides"),
  },
  {
    topic: "glass mark",
    cues: [/\bv-vi\b/],
    answer: "V-VI: a double unit, not a windscreen, under 70 percent light",
    why: "VI is the double unit, V the dark pane",
    ...standard("UN Regulation 43; published guides"),
  },
  {
    topic: "glass mark",
    cues: [/laminated/, /wind(?:screen|shield)/, /law|compulsory|required|mandatory|when/],
    answer: "UK cars first used from 1 April 1985: windscreen and front side glass of the 1980 specification",
    why: "the Northern Ireland rule says so; Great Britain alike is common practice, no source",
    ...standard("SR (NI) 1999/454, regulation 37"),
  },
  {
    topic: "glass mark",
    cues: [GLASS, /\bm ?\d{2,3}\b/],
    answer: "M with figures: the maker's own model number of the glass, for its thickness and build",
    why: "only the maker's list says more; it is no date",
    ...standard("49 CFR 571.205; NHTSA letters"),
  },
  {
    topic: "glass mark",
    cues: [/toughened|tempered/, /laminated/, /\bmarks?\b|\btell\b|\bwhich\b/],
    answer:
      "beside 43R on a windscreen: I toughened, II ordinary laminated, III treated laminated, IV faced with plastics; AS1 and AS2 are classes, not kinds of glass",
    why: "AS1 laminated, AS2 tempered is habit, not rule; an edge of two panes with a line between is laminated",
    ...practice("three published guides; ANSI Z26.1"),
  },
  {
    topic: "belt mark",
    cues: [/retractor|inertia/, /type|\b[1-4]\b/],
    answer:
      "r is a retractor: 3 automatically locking, 4 emergency locking; m several senses, N a higher threshold",
    why: "so Ar4m is a three-point belt with an emergency locking retractor of multiple sensitivity",
    ...standard("UN Regulation 16; WP.29/2018/128"),
  },
  {
    topic: "date mark",
    cues: [/\bgrid\b/, /\bdots?\b|month|year/],
    answer: "month grid: the last year that has dots, and the count of its dots is the month",
    why: "all twelve filled with no next year means December or a grid nobody kept",
    ...FROM_MEMORY,
  },
  {
    topic: "lamp mark",
    cues: [/\bsae\b/, /\byears?\b|made|what does sae\b|\bsae mean/],
    answer:
      "SAE on a lens: function letters, then two figures for the year of the SAE handbook it was made to; the lens is of about that year or later",
    why: "the year is the rule's, not that of manufacture, and a design ran on for years",
    ...standard("SAE J759 (forum reprint)"),
  },
  {
    topic: "lamp mark",
    cues: [/\br2\b/, /lamp|light|lens/],
    answer:
      "R2 on a headlamp: an asymmetric headlamp for a tungsten double-filament bulb, UN Regulation 1 and 2",
    why: "halogen headlamps carry an H; on a rear lamp R2 is a rear position lamp of two intensities",
    ...FROM_MEMORY,
  },
  {
    topic: "date mark",
    cues: [
      /date (?:clock|wheel|dial)|mou?ld(?:ing)? (?:date )?clock|\bclock\b.{0,24}(?:plastic|mou?ld|casting)/,
      /mould|mold|plastic|date wheel|casting|part/,
      /what|how|mean|read/,
    ],
    answer:
      "the tip of the arrow is the month, the figures in the middle are the year, parted by the arrow (8|1 is 81)",
    why: "the insert is turned by hand when somebody remembers: it is a not-before, and January may show last year's middle",
    ...practice("makers of inserts describe it"),
  },
  {
    topic: "date mark",
    cues: [
      /\b(?:single|one) (?:figure|number|digit)|\b[1-9] in a (?:ring|circle)/,
      /plastic|mould|mold|part|casting/,
    ],
    answer: "a single figure in a ring alone is the number of the cavity in the mould, not the year",
    why: "tools with several cavities number them, often 1 to 8 near the gate",
    ...FROM_MEMORY,
  },
  {
    topic: "material mark",
    cues: [/\b(?:gf|td|md|cf|rec)\b/, /plastic|\bmark/],
    answer:
      "after the hyphen stand filler and percent: GF glass fibre, TD talc powder, MD mineral powder, CF carbon fibre; (REC) recycled",
    why: "so >PP-TD20< is polypropylene with 20 percent of talc powder",
    ...standard("ISO 1043-2; ISO 11469"),
  },
  {
    topic: "material mark",
    cues: [/triangle|recycl/, /plastic|\bnumbers?\b|\b[1-7]\b/, /what|mean/],
    answer: "a figure in a triangle: 1 PET, 2 PE-HD, 3 PVC, 4 PE-LD, 5 PP, 6 PS, 7 any other",
    why: "the code of 1988 for sorting plastics: not before 1988",
    ...practice("ASTM D7611, from memory"),
  },
  {
    topic: "density",
    cues: [
      /how (?:do|to|can)|measure/,
      /weigh(?:ing)? .{0,16}(?:in|under) water|measure.{0,16}density|find.{0,16}density/,
    ],
    answer:
      "weigh it dry, then hung on a thread in water, wholly under and free of bubbles: density = dry ÷ (dry − in water)",
    why: "two weighings, about 0.03 g/cm³ either way; a part that floats needs a sinker weighed alone and with it",
    ...standard("ASTM D792; Tanaka et al. 2001, Metrologia 38:301"),
  },
  {
    topic: "process",
    cues: [/gel ?coats?\b/, /what (?:is|are)|how thick|thickness/],
    answer:
      "gel coat: the pigmented resin skin brushed or sprayed into the mould first, 0.4 to 0.8 mm, about 0.5 mm usual",
    why: "it is the outer face of open-mould glass fibre; no mat shows in it",
    ...practice("process descriptions"),
  },
  {
    topic: "area weight",
    cues: [/\b(?:225|300|450|600)\b/, /\bmat\b|chopped strand|\bcsm\b/],
    answer:
      "mat is sold by g/m² (225, 300, 450, 600); with resin 2.5 to 1 one layer of 450 weighs about 1.6 kg/m² and cures to about 1.0 mm",
    why: "450 g glass and 2.5 times as much resin; 30 percent glass by weight",
    ...practice("small-craft note; thickness from memory"),
  },
  {
    topic: "small-run spread",
    cues: [/batch|run|how many/, /small (?:makers?|works|production)|typical/],
    answer:
      "running changes of small works overlap by 2 to 20 cars or 2 to 16 weeks, and left-over parts go in to the end",
    why: "special order and export cars lag or lead; what a works ordered at a time stands only in its own papers",
    ...FROM_MEMORY,
  },
  {
    topic: "spanner",
    cues: [/spanner|wrench|socket/, /whitworth|\bbsw\b/, /metric|\bmm\b/],
    answer:
      "no metric spanner is a true fit: Whitworth hexagons are 0.445, 0.525, 0.600 and 0.710 inch (11.3, 13.3, 15.2, 18.0 mm) for 3/16, 1/4, 5/16 and 3/8",
    why: "a near metric size rounds the corners; from war time heads were one size down",
    ...FROM_MEMORY,
  },
  {
    topic: "thread",
    cues: [/\bbsw\b|whitworth/, /\bunc\b/],
    answer:
      "BSW and UNC have the same pitch at 1/4, 5/16, 3/8, 7/16, 9/16, 5/8 and 3/4 inch and differ at 1/2 (12 against 13)",
    why: "flanks 55° against 60°: only a thread gauge tells, and mixing them strips",
    ...standard("BS 84; ASME B1.1"),
  },
  {
    topic: "thread",
    cues: [
      /\bba\b|\bbsw\b|\bbsf\b|whitworth|metric|british threads?/,
      /\bwhen\b/,
      /stop|\bend|chang|switch|metric|\bgo|drop|obsolete/,
    ],
    answer:
      "on 23 November 1965 British industry was told to treat BSW, BSF and BA as obsolescent, metric first, Unified second",
    why: "makers changed slowly: BA stayed in instruments and switches long after, so a thread shows the design age of the component",
    ...standard("Hansard, 7 December 1965"),
  },
  {
    topic: "vehicle number",
    cues: [VIN, /third|3rd|position 3/, /\b9\b|nine/],
    answer:
      "third character 9: a small maker; positions 12 to 14 complete the maker's identifier, only 15 to 17 are the serial",
    why: "fewer than 500 a year under the rule to 2008, fewer than 1,000 since",
    ...standard("49 CFR 565; 73 FR 23367"),
  },
  {
    topic: "vehicle number",
    cues: [
      /\bvins?\b|check digit|chassis number/,
      /check digit|position (?:9|nine)|(?:9th|ninth) (?:digit|character|position)/,
    ],
    answer:
      "position 9 is a check digit under the US and Canada rule only; in Europe it is free and a failed sum is no fault",
    why: "weights and letter values are those of the US rule; passing is weak evidence, one in eleven passes by chance",
    ...standard("49 CFR 565; ISO 3779"),
  },
  {
    topic: "vehicle number",
    cues: [
      VIN,
      /\bonly\b|short|fewer|not 17|less than 17/,
      /\b(?:[4-9]|1[0-6]) ?(?:digits?|characters?|numbers?|letters?)\b|short|not 17|less than/,
    ],
    answer: "a short number is normal before 1981: each maker had its own, often type letters and a serial",
    why: "17 characters are asked in the US from model year 1981; ISO 3779 was first issued in 1977",
    ...standard("49 CFR 565; ISO 3779"),
  },
  {
    topic: "vehicle number",
    cues: [VIN, /how many (?:digits|characters|letters|figures|numbers)|how long/],
    answer: "17 characters without I, O and Q; any length before 1981, when each maker had its own scheme",
    why: "17 are asked in the US from model year 1981; ISO 3779 was first issued in 1977",
    ...standard("49 CFR 565; ISO 3779"),
  },
  {
    topic: "vehicle number",
    cues: [VIN, /(?:10th|tenth) (?:digit|character)|(?:position|digit|character) (?:10|ten)\b/],
    answer:
      "position 10 is the model year under the US and Canada rule: B 1981 to Y 2000, figures 2001 to 2009, A 2010",
    why: "elsewhere it need not be a year; model year is not build year",
    ...standard("49 CFR 565, table VII"),
  },
  {
    topic: "paint",
    cues: [/lead(?:ed)? paint|lead in paint/, /\bwhen\b|banned|\bban\b|what year/],
    answer:
      "US consumer paint: lead banned after 27 February 1978; car paint was not reached, so assume old layers hold lead",
    why: "the rule was for consumer goods and dwellings",
    ...standard("16 CFR 1303"),
  },
  {
    topic: "mirror mark",
    cues: [/mirror/, /\bclass(?:es)?\b/, /what|which/],
    answer:
      "mirror classes: I inside, II large outside, III the usual outside mirror of cars, IV wide-angle, V and VI close views",
    why: "a roman figure near the E mark, UN Regulation 46; before, Directive 71/127/EEC",
    ...FROM_MEMORY,
  },
  {
    topic: "paint",
    cues: [/gauge|\bmeter\b|magnet/, /fib(?:re|er)|\bgrp\b/],
    answer:
      "a magnetic or eddy-current paint gauge reads nothing on glass fibre: an ultrasonic one is needed",
    why: "both kinds need metal under the paint",
    ...FROM_MEMORY,
  },
  {
    topic: "provenance",
    cues: [/\bfiva\b/],
    answer:
      "FIVA classes: A standard, B period-modified, C replica or reproduction, D modified out of period, E exceptions",
    why: "changes out of period are to be recorded and reversible (Charter of Turin)",
    ...standard("national FIVA pages; Charter of Turin"),
  },
  {
    topic: "safety",
    cues: [
      /\bburn(?:ing)?\b|hot needle|\bacetone\b|brake fluid|\bscratch/,
      /test|\bsee what|to see|find out|identify|check/,
    ],
    answer:
      "do not burn a sliver, prick with a hot needle, use acetone or brake fluid, or scratch: it harms the part and you",
    why: "weigh it in water, look at the inner face and edge, float it, press with a fingernail instead",
    ...practice("restorers' practice"),
  },
];
