import { expect, test } from "vitest";
import { PAN_LINE_EXAMPLE, panLineWorksheet } from "#domain/worksheets/spreader";
import { stepsOf } from "../../support/worked";

test("where half falls, what lies at each place, and how far the places differ", () => {
  expect(stepsOf(panLineWorksheet({ ...PAN_LINE_EXAMPLE.typed, catches: "0, 1, 3, 4, 2, 1, 0" }))).toEqual([
    "Half of the middle's catch: 4 ÷ 2 = 2.",
    "On the left the catch comes down to that between pan 1 from the middle with 3 and pan 2 with 1.",
    "Down to half: 3 − 2 = 1; from pan to pan: 3 − 1 = 2; so after pans: 1 + 1 ÷ 2 = 1.5.",
    "To the left: 1.5 × 2 ft = 3 ft.",
    "On the right the catch comes down to that between pan 0 from the middle with 4 and pan 1 with 2.",
    "Down to half: 4 − 2 = 2; from pan to pan: 4 − 2 = 2; so after pans: 0 + 2 ÷ 2 = 1.",
    "To the right: 1 × 2 ft = 2 ft.",
    "Effective swath: 3 ft + 2 ft = 5 ft.",
    "Passes 5 ft apart lie on one another. Counted from the middle of a pass, the catches of all passes that reach a place add up to what lies there.",
    "At 0 ft (between two pans, 0.5 of them): 1 × 0.5 + 4 + 1 × 0.5 = 5.",
    "At 1.6667 ft (between two pans, 0.16667 and 0.83333 and 0.66667 and 0.33333 of them): 4 × 0.16667 + 2 × 0.83333 + 1 × 0.66667 + 3 × 0.33333 = 4.",
    "At 3.3333 ft (between two pans, 0.33333 and 0.66667 and 0.83333 and 0.16667 of them): 2 × 0.33333 + 1 × 0.66667 + 3 × 0.83333 + 4 × 0.16667 = 4.5.",
    "All 3 places: 5 + 4 + 4.5 = 13.5.",
    "Average of 3 places: 13.5 ÷ 3 = 4.5.",
    "From the average, and squared: 5 − 4.5 = 0.5; 0.5 × 0.5 = 0.25.",
    "From the average, and squared: 4.5 − 4 = 0.5; 0.5 × 0.5 = 0.25.",
    "From the average, and squared: 4.5 − 4.5 = 0; 0 × 0 = 0.",
    "Squares: 0.25 + 0.25 + 0 = 0.5.",
    "One less than the places: 3 − 1 = 2.",
    "Variance: 0.5 ÷ 2 = 0.25.",
    "Standard deviation, the root of it: √ 0.25 = 0.5.",
    "CV: 0.5 ÷ 4.5 = 11.1111%.",
  ]);
});
