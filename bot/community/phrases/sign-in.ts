/** What is said when a keeper asks for the desk on the pages. */

export const signInHere = "To the keepers’ desk";
export const signInOnce = "The link signs you in once, within ten minutes. Give it to nobody.";
export const whyLink = "link to the desk asked for";
