/**
 * The few words that are Discord's own business and not the bot's: descriptions of commands, labels of forms, and what went
 * wrong with buttons, places and permissions. Everything about parts and cars is said by the bot.
 */

export const labels = {
  form: "in words …",
  pageBack: "back",
  pageOn: (page: number, pages: number) => `more (${page} of ${pages})`,
  chooseAnswer: "choose what you see",
  chooseNext: "choose what to do next",
} as const;

export const forms = {
  title: "Your answer",
  reading: "Your reading",
  date: "The date, as exact as you know it",
  answer: "Your answer",
  more: "What else you can see",
  car: "About the car: built when, model, market",
  complete: "What is still to be said",
  pin: "The pinned answer",
  pinTitle: "Pin an answer",
} as const;

export const trouble = {
  stale: "That button belongs to an earlier question. This is where the case stands now:",
  staleForm: "The case went on while you were writing, so this was not taken in. You wrote:",
  staleFormInFile:
    "The case went on while you were writing, so this was not taken in. What you wrote is in the file.",
  noCase: "I do not know that case any more. Ask anew, by /ask or by mentioning me.",
  lacking: (names: readonly string[]) =>
    `I may not answer there: in this channel I lack ${names.join(", ")}. Whoever runs the server can grant it.`,
  noThread: (names: readonly string[]) => `No thread, because I lack ${names.join(", ")} here.`,
  placeGone: "The message or channel of that case is gone; here is the case again.",
  onlyKeepers: "That is for the keepers of this community.",
  onlyOwners: "That is for whoever manages this server.",
  onlyInServer: "That has to be done in the server it is about.",
  inPrivate:
    "I tell you that in private only: take your direct messages from this server, or use the slash command.",
  lost: "That message was lost, and nothing of it kept. What was said before still stands.",
  notShown: "Discord did not take my answer for too long. Say it again, and you see where the case stands.",
  nothingToRead: "There are no words in that post that I could read.",
  ownPost: "That post is mine. Choose the post of a member, or ask me in your own words.",
  cannotReadHere:
    "Discord does not show me what is written here, unless it is said to me: reply to a message of mine, mention me, or press “in words …”.",
  notAnAnswer: "Only an answer of mine can be pinned in the channel.",
  pinnedHere: "Pinned in this channel.",
  photographTooLarge: (name: string) => `${name} is larger than the 25 MB that I take, and was left aside.`,
  photographLost: (name: string) => `${name} could not be read as a photograph and was left aside.`,
} as const;

export const setup = {
  lead: (step: number, steps: number) => `Setting up, ${step} of ${steps}.`,
  keepersChannel: "Where shall the keepers' queue be? Without a channel it comes when a keeper asks for it.",
  keeperRoles:
    "Which roles are keepers? They pin answers and review observations. Without a role, whoever may manage messages is one.",
  answers: "Shall an answer live in one message that is edited, or in a thread of its own?",
  channels:
    "Are there channels where I should listen without being mentioned? It needs the message content intent; without it, mention me.",
  units: "In which units shall sizes be said?",
  handbooks: "Which handbooks answer here?",
  done: "That is all. /settings shows it, /setup goes through it again.",
  next: "next",
  pick: {
    keepersChannel: "a channel for the keepers' queue",
    keeperRoles: "the keepers' roles",
    channels: "channels to listen in",
    handbooks: "handbooks",
  },
  choices: {
    message: "one message",
    thread: "a thread",
    metric: "metric",
    imperial: "imperial",
    both: "both",
    everyHandbook: "every handbook",
  },
  none: "none",
  shown: {
    keepersChannel: "Keepers' queue",
    keeperRoles: "Keepers' roles",
    answers: "Answers live in",
    channels: "Listens in",
    units: "Units",
    handbooks: "Handbooks",
    content: "Message content intent",
  },
  granted: "granted",
  notGranted: "not granted; mentions, replies, commands and direct messages work without it",
} as const;

export const commandWords = {
  ask: "Ask which version of a part you have, or whether it is right for your car",
  askQuestion: "In your own words, or the name of a part or kind",
  askPrivate: "Only you see the answer",
  askPhotograph: "A photograph of the part",
  observe: "Record what you saw on a real car",
  observations: "The observations of this community",
  pins: "The keepers' pinned answers",
  pin: "Pin an answer (keepers)",
  pinWords: "The answer in your words, or the id of a pinned answer to read",
  sheet: "Your car sheet: its parts and what they turned out to be",
  changeovers: "When one version of a part gave way to the next",
  changeoversPart: "Which part",
  mine: "What is kept of you: see, export or erase it",
  mineWhat: "What to do",
  mineShow: "show it",
  mineExport: "export it",
  mineErase: "erase it",
  keepers: "The keepers' desk: queue, list, invitations, audit (keepers)",
  keepersWhat: "What to see or do",
  keepersQueue: "the queue",
  keepersList: "who they are",
  keepersInvite: "invite one",
  keepersAudit: "what was decided",
  keepersOpen: "open questions",
  redeem: "Become a keeper with an invitation code",
  redeemCode: "The code",
  help: "What can be asked, with examples",
  setup: "Set this server up, step by step (whoever manages the server)",
  settings: "The settings of this server (whoever manages the server)",
} as const;

/** Names of what stands in the menu of a message; Discord shows them as they are. */
export const menuNames = {
  askAbout: "Ask about this post",
  observe: "Record an observation",
  pin: "Pin as the answer",
  pinHere: "Pin in this channel",
} as const;

/** Permissions in the words of Discord's own settings page. */
export const permissionWords: Readonly<Record<string, string>> = {
  ViewChannel: "View Channel",
  SendMessages: "Send Messages",
  SendMessagesInThreads: "Send Messages in Threads",
  CreatePublicThreads: "Create Public Threads",
  AttachFiles: "Attach Files",
  ReadMessageHistory: "Read Message History",
  PinMessages: "Pin Messages",
};
