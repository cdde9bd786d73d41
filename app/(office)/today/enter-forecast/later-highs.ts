/** The days after the one whose forecast is entered, as the form names their highs. */
export const LATER_HIGHS = ["next", "second", "third"] as const;
