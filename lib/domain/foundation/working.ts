/** One figure that a calculation starts from: what it is, how much, and who says so. */
export interface WorkingInput {
  readonly name: string;
  readonly figure: string;
  /** Where the figure comes from in words, as "the label" or "calibration of April 2 by Sam Ortiz"; none where it was typed. */
  readonly from?: string;
}

/** How a number is worked out, in words and figures that a person can follow by hand. */
export interface Working {
  /** What is worked out, as "Granular feed for the front lawn". */
  readonly title: string;
  /** The rule in words and signs: "pounds = area ÷ 1,000 × pounds per 1,000 sq ft". */
  readonly formula: string;
  readonly inputs: readonly WorkingInput[];
  /** One line of arithmetic each, in order, with units and with what it comes to. */
  readonly steps: readonly string[];
  readonly result: string;
  /** The publication that prints the rule, or "common practice". */
  readonly source: string;
}
