/** The furniture of the pages: headings, labels and buttons. What is said about parts comes from the bot and the handbooks. */

export const siteName = "witness-mark";
export const skipToContent = "Skip to the content";
export const mainNavigation = "Pages";
export const navigation = {
  ask: "Ask",
  handbook: "Handbook",
  desk: "Keepers’ desk",
  doors: "For forums",
} as const;
export const pageTitle = (title: string) => `${title} · ${siteName}`;

export const visitorCalled = (mark: string) => `visitor ${mark}`;

const withArticle = (noun: string) => `${/^[aeiou]/iu.test(noun) ? "an" : "a"} ${noun}`;

// The chat
export const chat = {
  title: "Ask about a part",
  lead: "Say in your own words what you see on the part. You are told which version it is, how sure that is, and what would settle it.",
  conversation: "Conversation",
  youSaid: "You",
  itSaid: "Answer",
  youSent: "Photograph you sent",
  saySomething: "What do you see?",
  photographs: "Photographs",
  photographsHint: "JPEG, PNG or WebP, up to four, 8 MB each. Their place and camera data are removed.",
  tooManyPhotographs: "Send at most four photographs at once, of 8 MB each.",
  send: "Send",
  sending: "Sending…",
  sendReading: "Give this",
  fields: { measurement: "Reading", date: "Date", words: "Your answer", choice: "Your answer" },
  unit: "Unit",
  dateHint: "Month and year is best, such as May 1980",
  examples: "For example",
  whichIsThis: (part: string) => `which ${part} is this?`,
  answers: "Answers",
  share: "Make a page of this answer",
  shareHint: "It gets an address that anybody who has it can read. You can withdraw it.",
  lost: "That did not get through. Nothing was kept; please send it again.",
  savedFile: (name: string) => `Save ${name}`,
} as const;

// Page of an answer
export const answerPage = {
  asked: "Asked",
  wanted: (part: string, goal: string) => `About ${withArticle(part)}: ${goal}.`,
  thing: (thing: string) => `The ${thing}`,
  seen: "What was seen",
  saidAs: (words: string) => `said as “${words}”`,
  bySomebodyElse: "by somebody else",
  couldNotTell: (names: string) => `Could not tell: ${names}.`,
  nothingSeen: "Nothing was told yet.",
  standing: "Where it stands",
  answer: "Answer",
  open: "What is open",
  sources: "Sources",
  cite: "Cite",
  citeHint: "To quote this page:",
  copy: "Copy",
  copied: "Copied",
  withdraw: "Withdraw this page",
  withdrawn: "The page is withdrawn.",
  sharedOn: (date: string) => `as of ${date}`,
  askYourself: "Ask about your own part",
  citation: (title: string, edition: string, date: string, address: string) =>
    `${title}. ${edition}. ${date}. ${address}`,
} as const;

export const evidence = {
  speaksFor: (name: string) => `for ${name}`,
  caption:
    "Weights of evidence: bars to the right speak for the first, to the left, hatched, for the second; longer is heavier.",
} as const;

// What is refused
export const refusals = {
  notFound: "There is no such page",
  notFoundText: "The address may be misspelt, or what stood here was withdrawn.",
  tooMuch: "Too many requests",
  tooMuchText: "Wait a minute, then try again.",
  tooLarge: "Too large",
  tooLargeText: "Send fewer or smaller photographs, or a shorter text.",
  noAnswer: "There is no answer to make a page of",
  noAnswerText: "The handbook it came from may no longer answer here. Ask again, then share the new answer.",
  stale: "This page has grown old",
  staleText: "Open it again and repeat what you did; nothing was changed.",
  notAllowed: "Not for you",
  notAllowedText: "This is open to keepers who have signed in.",
  fault: "Something went wrong here",
  faultText: "It is noted. What was said before still stands.",
  unavailable: "Not able to answer just now",
  unavailableText:
    "What you sent was not kept. Send it again in a minute; what was said before still stands.",
  openAgain: "Open it again",
  sent: "What you sent, to copy it",
} as const;

// Handbook
export const handbookPage = {
  title: "Handbook",
  search: "Search",
  searchHint: "Part, version, mark, fixing; slips of the pen are forgiven.",
  found: (count: number, words: string) =>
    count === 0
      ? `Nothing in the handbook is like “${words}”.`
      : count === 1
        ? `One entry for “${words}”:`
        : `${count} entries for “${words}”:`,
  contents: "On this page",
  versions: (count: number) => (count === 1 ? "1 version" : `${count} versions`),
  when: "When each was fitted",
  whenHint:
    "A bar is a fitted period, hatched where its end is not sure: as far as the handbook knows it, or to nine in ten from the cars that members have seen, which are the marks below.",
  wanted: "Cars wanted",
  whose: {
    "signed-in": (community: string) =>
      `From the sightings accepted in ${community}, the community you have signed in to, together with the handbook’s periods. The pinned answers and the marks above are its own too.`,
    only: (community: string) =>
      `From the sightings accepted in ${community}, the one community here, together with the handbook’s periods. The pinned answers and the marks above are its own too.`,
    own: () =>
      "From the sightings accepted in this site’s own community, together with the handbook’s periods. The pinned answers and the marks above are its own too; other communities keep theirs.",
  },
  period: "period",
  version: "version",
  origin: "where it comes from",
  sideBySide: "Side by side",
  choose: "Lay side by side",
  chosen: "Show these",
  feature: "feature",
  each: "Each version",
  tells: "Tells, and how to check them",
  check: "How to check",
  effort: "Effort",
  tools: "Tools",
  photographDoes: "A photograph does.",
  misbeliefs: "Often said, and not so",
  pinned: "Pinned answers",
  noPins: "Nothing is pinned here yet.",
  needs: "Also needs",
  material: "Material",
  resembles: "Easily taken for it",
  sources: "Sources",
  noSources: "The handbook names no source.",
  edition: (name: string, edition: string, edited: string) => `${name}, edition ${edition}, closed ${edited}`,
  askAbout: (part: string) => `Ask about ${withArticle(part)}`,
  kinds: { part: "part", version: "version", tell: "tell", misbelief: "often said", pin: "pinned answer" },
} as const;

// Doors for forums
export const embed = {
  title: "Ask about a part",
  openPage: "Open in a window of its own",
} as const;

export const doors = {
  title: "For forums",
  lead: "A forum, a club’s page or any program can ask here, in three ways.",
  link: "Link to a page",
  linkText:
    "Every part kind has a page in the handbook, every version and tell a place on it, and every answer that its asker shared a page of its own.",
  box: "Put the ask box on a page",
  boxText:
    'These two lines put it there. It grows with its content, keeps its own origin and cookies, and takes the units of the page’s language; data-units="imperial" or "metric" says otherwise.',
  webhook: "Send posts, receive replies",
  webhookText:
    "A post that is sent as JSON and signed as the Standard Webhooks specification says is answered with the reply as text, as HTML and as JSON. Whoever runs this site gives a forum its name and secret.",
  fields:
    "id is the forum’s own id of the post: sent again in a new delivery, it gets the first reply. The posts of a thread are one conversation. Another member’s post that is asked about goes into quoted. private says that only the author reads the thread.",
  statuses: "What is refused",
  statusHead: ["status", "why"] as const,
  statusRows: [
    ["400", "not a post in this form"],
    ["401", "the signature does not fit, or its time is more than five minutes off"],
    ["404", "no such source"],
    ["409", "this delivery was made before"],
    ["413", "too large"],
    ["429", "too many deliveries in a minute"],
    ["503", "not able to answer just now: nothing was kept, send it again later"],
  ] as const,
} as const;

// Signing in
export const signIn = {
  title: "Keepers sign in",
  how: "Ask the bot for a link in a chat where you are a keeper: say “sign in”. Whoever runs the program can make one with its command “sign-in”.",
  ready: "This link signs you in once.",
  button: "Sign in",
  spent: "This link was used or is too old. Ask for a new one.",
  out: "Sign out",
  isOut: "You have signed out.",
} as const;

// The keepers' desk
export const desk = {
  title: "Keepers’ desk",
  sections: "Sections of the desk",
  waiting: "Waiting",
  observations: "Observations",
  pins: "Pins",
  board: "Open questions",
  audit: "Audit",
  people: "People",
  exports: "Export",
  signedInAs: (name: string, community: string) => `${name}, ${community}`,
  justDone: "Just now",
  cases: "Cases put to the keepers",
  noCases: "No case waits.",
  caseLine: (part: string, asker: string, date: string) => `${part}, asked by ${asker}, ${date}`,
  noPart: "part not named",
  answer: "Answer",
  askBack: "Ask back",
  close: "Close",
  reason: "Because",
  yourAnswer: "Your answer",
  yourQuestion: "Your question",
  notes: "Notes of the case",
  accept: "Accept",
  decline: "Decline",
  ask: "Ask about it",
  noObservations: "No observation waits.",
  observation: (id: string) => `Observation ${id}`,
  noPins: "Nothing is pinned yet. Pin from a conversation with “pin this: the answer”, or here:",
  replace: "New words",
  replaceButton: "Replace",
  withdraw: "Withdraw",
  pinLine: (id: string) => `Pinned answer ${id}`,
  newPin: "Pin an answer to a plain question",
  question: "The question, as somebody would ask it",
  pinButton: "Show what would be pinned",
  when: "when",
  who: "who",
  what: "what",
  nothingDone: "Nothing was done yet.",
  since: "since",
  standing: "may act as",
  noPeople: "Nobody was made a keeper by invitation; who acts is vouched for by their platform.",
  invite: "Invite",
  inviteHint: "You get a code that works once; give it to that person alone.",
  inviteWho: ["contributor", "keeper", "owner"] as const,
  dismiss: "Dismiss",
  exportHint:
    "As files, to keep or to work with elsewhere. The sightings are in the form that the changeover command reads.",
  everything: "Of all handbooks",
  sightings: (part: string) => `Sightings of the ${part}, as CSV`,
  sayAnything: "Say anything else to the bot as yourself",
  say: "Say",
} as const;

// The car sheet
export const carSheet = {
  title: (thing: string, handbook: string) =>
    `${thing.charAt(0).toUpperCase()}${thing.slice(1)} sheet: ${handbook}`,
  asPdf: "The same as PDF",
  thingUnknown: (thing: string) => `Nothing was told of the ${thing} itself.`,
  atAGlance: "At a glance",
  part: "part",
  verdict: "where it stands",
  notLooked: "not looked at yet",
  gaps: "Not looked at yet",
  photograph: (part: string, number: number) => `Photograph ${number} of the ${part}`,
  judge:
    "Each likelihood is that of the handbook and of what its community has seen, given what was told; it is no expert’s opinion and no guarantee.",
  page: (page: number, of: number) => `${page} of ${of}`,
  fileName: "car-sheet.pdf",
} as const;
