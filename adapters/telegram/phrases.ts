/**
 * The few sentences that only this platform demands: what its list of commands says, in the languages it is shown in, and what is told
 * where Telegram itself stands in the way. Everything else is said by the bot.
 */

/** Under a question that wants words, in groups: nothing else written there reaches the bot. */
export const answerHint = "Answer by replying to this message.";

/** Shown beside a pressed button that stands for nothing any more. */
export const buttonHasLapsed = "This button has lapsed. Ask again, and use the newest message.";

/** A command that is touched in the list is sent at once, with nothing behind it. */
export const saidTogether = (example: string) =>
  `That needs a few words behind the command, in one message, as in “${example}”.`;

export const onlyInPrivate =
  "The answer is for you alone, and I may not write to you first. Open a private chat with me, press start, and ask again there.";
export const onlyToAPerson =
  "The answer is for one person alone, and you speak as the group. Say it here under your own name, and I answer you in private.";
export const openPrivateChat = "open a private chat";

export const onlyWords =
  "I take in words and photographs, nothing else. Say in words what you see on the part.";
export const photographTooLarge =
  "That file is larger than the 20 MB that Telegram hands over to me. Send it as a photograph, not as a file.";
export const photographNotRead = "That photograph could not be read. Send it once more, as a photograph.";

export const keepersMeetHere =
  "What is for the keepers comes here from now on: cases handed over, observations to review.";
export const keepersMeetElsewhere =
  "Choose the group in which the keepers meet, and add me there. Only a keeper of this group can do so.";
export const chooseKeepersGroup = "choose the keepers' group";
export const onlyKeepersChoose =
  "Only a keeper or an administrator of the club's group can choose where the keepers meet.";
export const chooseInTheGroup = "Send this in the club's group, not here.";

export const listensHere =
  "From now on I read everything that is written here, and answer what is about a part.";
export const listensOnceAllowed =
  "I will, but Telegram still shows me only what is said to me. Make me an administrator of this group, or have my privacy mode switched off with BotFather and add me again.";
export const listensNoMore =
  "From now on I answer here only when I am called by name, asked by a command, or replied to.";

/** Why is no business of members: the reason names a place on the server. */
export const lost = "That message was lost, and nothing of it kept. What was said before still stands.";
export const notShown =
  "Telegram did not take my answer for too long. Say it again, and you see where the case stands.";
export const pressLost =
  "What was pressed came to nothing, and nothing of it was kept. The button can be pressed again.";

export const inlineHint = "compare two kinds, or a few words of a pinned answer";

/** Languages in which the list of commands is shown; the first stands where the platform knows no better. */
export const languages = ["en", "de"] as const;
export type Language = (typeof languages)[number];

export type Described = Readonly<Record<Language, string>>;
