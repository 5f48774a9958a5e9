/** What only a terminal has to say: files by their path. Everything else comes from the bot. */

export const noSuchFile = (path: string) => `There is no file ${path}.`;
export const notAFile = (path: string) => `${path} is not a file.`;
export const notReadable = (path: string) => `${path} cannot be read; look at its permissions.`;
/** The bot's own reason, with the file it is about. */
export const notTakenIn = (path: string, reason: string) => `${path}: ${reason}`;
export const tooManyPhotographs = (most: number) => `At most ${most} photographs go along with one message.`;
export const notSaved = (name: string, reason: string) =>
  `${name} could not be saved (${reason}); here it is:`;
