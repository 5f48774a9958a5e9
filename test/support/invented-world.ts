// The world that invented owners live in. In one it is exactly as the model assumes; in the other nearly everything the
// model takes for granted is a little wrong at once (identification method, section 9).

export interface World {
  readonly name: string;
  /** Share of reports that are firm; the others are said with a doubt, and are guesses as often as that doubt says. */
  readonly firm: number;
  /** Mistakes of owners, as a multiple of what the handbook says. */
  readonly mistakes: number;
  /** One owner in so many is careless: mistakes are doubled once more. 0: none. */
  readonly carelessShare: number;
  /** Correlation of how typical a part is, within groups of four features that no handbook names. */
  readonly correlation: number;
  /** Deviation of the noise on the logarithm of the odds between any two states of a frequency in the handbook. */
  readonly frequencyNoise: number;
  /** Makers' spreads, and the median of the lead time, as a multiple of what the handbook says. */
  readonly spread: number;
  readonly lead: number;
  /** Share of careful readings taken in the wrong place. */
  readonly outliers: number;
  /** Share of cars on which the part was replaced; the handbook says .25. */
  readonly replaced: number;
  /** Share of parts not in the handbook; the model says .03 for a handbook called good. */
  readonly unknown: number;
  /** True: an unknown part is a known one with five of its fourteen features changed. False: as the model has it. */
  readonly unknownIsCopy: boolean;
}

export const wellSpecifiedWorld: World = {
  name: "as the model assumes",
  firm: 1,
  mistakes: 1,
  carelessShare: 0,
  correlation: 0,
  frequencyNoise: 0,
  spread: 1,
  lead: 1,
  outliers: 0.03,
  replaced: 0.25,
  unknown: 0.03,
  unknownIsCopy: false,
};

/** The same, with owners who are often not sure. */
export const doubtfulWorld: World = {
  ...wellSpecifiedWorld,
  name: "as assumed, three in ten in doubt",
  firm: 0.7,
};

export const misspecifiedWorld: World = {
  name: "everything a little wrong",
  firm: 1,
  mistakes: 2,
  carelessShare: 0.1,
  correlation: 0.8,
  frequencyNoise: 0.5,
  spread: 1.5,
  lead: 1.5,
  outliers: 0.06,
  replaced: 0.35,
  unknown: 0.06,
  unknownIsCopy: true,
};
