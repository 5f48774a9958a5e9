/** What is said of a community's settings. */

export const settingsLead = "Settings of this community:";
export const settingsHandbooks = (names: string) => `handbooks: ${names}`;
export const settingsUnits = (units: string) => `units: ${units}`;
export const settingsRetention = (months: number | null) =>
  months === null ? "cases are kept" : `cases untouched for ${months} months are forgotten`;
export const settingsHow =
  "To change them: “set units to metric”, “imperial” or “both”; “set handbooks to NAME, NAME” or “all”; “forget cases after 24 months” or “keep cases”.";
export const unitsSet = (units: string) =>
  `Sizes are said in ${units === "both" ? "both units" : `${units} units`} from now on.`;
export const handbooksSet = (names: string) => `These handbooks answer here from now on: ${names}.`;
export const noSuchHandbook = (named: string, known: string) =>
  `No handbook is called ${named}. Served are: ${known}.`;
export const retentionSet = (months: number) => `Cases untouched for ${months} months will be forgotten.`;
export const retentionOff = "Cases are kept until their owner erases them.";
export const retentionOutOfRange = "Say a number of months from 1 to 1200.";
