// The small words that tell whose part a clause speaks of, and in which mood. Everyday English, from memory.

const words = (list: string): ReadonlySet<string> => new Set(list.split(" "));

export const groundWords = {
  /** Verbs that stand between a subject and what is said of it. */
  verbs: words(
    "is are was were has have had isnt arent wasnt hasnt its theyre got came comes looks look feels feel seems seem says say shows show reads sits weighs measures appears went goes runs",
  ),
  prepositions: words(
    "of in on at to from by with for into onto off up under behind inside along round around over",
  ),
  owners: words("my his her our their your mates neighbours"),
  firstPerson: words("i im ive my mine me we our"),
  thirdPerson: words(
    "he she his her hers him they their theirs someone somebody people guy bloke chap seller mate mates friend friends everybody everyone who whose",
  ),
  secondPerson: words("you your yours youre u"),
  past: words("was were had used once previous old ago"),
  business: words(
    "quid pound pounds euro euros dollar dollars bucks price prices cheap worth cost sold sell selling sale buy bought paid pay ordered order auction ebay",
  ),
  times: words(
    "tomorrow tonight yesterday weekend week month today monday tuesday wednesday thursday friday saturday sunday summer winter night nights evening morning",
  ),
  generic: words(
    "usually normally always never all every any ones them these those copies originals early late later genuine repro both",
  ),
  wishes: words(
    "want wants wanted need needs would could should might may id wish hope if going will prefer rather thinking",
  ),
  asking: words(
    "is are was were do does did can could should would will has have which what who where when why how any anyone anybody",
  ),
  negations: words("not never dont cant didnt no isnt arent nor"),
} as const;
