/** By what names the errand of observations and its questions go, told apart from features of parts. */

/** The affair that resumes the errand. */
export const observingErrand = "observations";

/** In front of a step's name where questions are told apart: "observation.car". */
export const stepPrefix = "observation.";
