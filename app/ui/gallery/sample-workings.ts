import { type Working } from "#domain/foundation/working";

/** Invented figures that add up. */
export const sampleWorking: Working = {
  title: "Greenmere 32-0-6 for A Front",
  formula: "pounds = area ÷ 1,000 × pounds per 1,000 sq ft",
  inputs: [
    { name: "Treated area", figure: "2,592 sq ft", from: "measured" },
    { name: "Rate", figure: "3 lb per 1,000 sq ft", from: "the plan; the label of Greenmere 32-0-6 allows 2 to 3½" },
    { name: "Scale", figure: "marks of ¼ lb" },
  ],
  steps: ["2,592 sq ft ÷ 1,000 sq ft = 2.592", "2.592 × 3 lb = 7.776 lb", "7.776 lb to the nearest mark of ¼ lb = 7¾ lb, 31 marks"],
  result: "7¾ lb",
  source: "the label’s own rate; rounding to a mark is common practice",
};

/** Several below one another, one of them without anything to start from. */
export const sampleWorkings: readonly Working[] = [
  sampleWorking,
  {
    title: "Greenmere 32-0-6 in all",
    formula: "in all = what the lawns get, added up",
    inputs: [],
    steps: ["7¾ lb + 5¾ lb = 13½ lb"],
    result: "13½ lb",
    source: "common practice",
  },
];
