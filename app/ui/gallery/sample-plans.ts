import { type PlanArea, type PlanLawn } from "#ui/drawings/lawn-plan";

/** Two lawns around a house, a bed, a drive, and a strip kept clear of a pond. Feet. */
export const ordinaryLawns: readonly PlanLawn[] = [
  {
    id: "a",
    letter: "A",
    name: "front",
    outline: [
      { x: 0, y: 0 },
      { x: 72, y: 0 },
      { x: 72, y: 36 },
      { x: 0, y: 36 },
    ],
    sizeSquareFeet: 2592,
    takenOffSquareFeet: 120,
    keptClearSquareFeet: 0,
    treatedSquareFeet: 2472,
    measured: "wheel, April 2, 2026",
    measuredLines: [
      [
        { x: 0, y: 18 },
        { x: 72, y: 18 },
      ],
    ],
  },
  {
    id: "b",
    letter: "B",
    name: "back",
    outline: [
      { x: 0, y: 86 },
      { x: 118, y: 86 },
      { x: 118, y: 116 },
      { x: 76, y: 132 },
      { x: 0, y: 128 },
    ],
    sizeSquareFeet: 4940,
    takenOffSquareFeet: 0,
    keptClearSquareFeet: 869,
    treatedSquareFeet: 4071,
    measured: "wheel and tape, four ties, April 2, 2026",
    measuredLines: [
      [
        { x: 19, y: 86 },
        { x: 19, y: 129 },
      ],
      [
        { x: 38, y: 86 },
        { x: 38, y: 130 },
      ],
      [
        { x: 57, y: 86 },
        { x: 57, y: 131 },
      ],
      [
        { x: 76, y: 86 },
        { x: 76, y: 132 },
      ],
    ],
  },
];

/** What lies between and upon those lawns. */
export const ordinaryAreas: readonly PlanArea[] = [
  {
    id: "house",
    kind: "building",
    name: "house",
    outline: [
      { x: 14, y: 46 },
      { x: 66, y: 46 },
      { x: 66, y: 78 },
      { x: 14, y: 78 },
    ],
  },
  {
    id: "bed",
    kind: "bed",
    name: "bed",
    outline: [
      { x: 52, y: 22 },
      { x: 67, y: 22 },
      { x: 67, y: 30 },
      { x: 52, y: 30 },
    ],
  },
  {
    id: "drive",
    kind: "drive",
    name: "drive",
    outline: [
      { x: 76, y: 0 },
      { x: 90, y: 0 },
      { x: 90, y: 78 },
      { x: 76, y: 78 },
    ],
  },
  {
    id: "clear",
    kind: "kept-clear",
    name: "25 ft kept clear",
    outline: [
      { x: 93, y: 86 },
      { x: 118, y: 86 },
      { x: 118, y: 116 },
      { x: 93, y: 125.5 },
    ],
  },
  {
    id: "pond",
    kind: "water",
    name: "pond",
    outline: [
      { x: 122, y: 84 },
      { x: 136, y: 88 },
      { x: 146, y: 100 },
      { x: 142, y: 116 },
      { x: 130, y: 124 },
      { x: 122, y: 118 },
    ],
  },
];

/** Slips of lawn too small for any word, side by side: every label needs a leader. */
export const smallLawns: readonly PlanLawn[] = Array.from({ length: 5 }, (_, index) => ({
  id: `s${index}`,
  letter: "ABCDE".charAt(index),
  name: index === 2 ? "Nordwesthangbewässerungsstreifen" : `slip ${index + 1}`,
  outline: [
    { x: index * 40, y: 0 },
    { x: index * 40 + 14, y: 0 },
    { x: index * 40 + 14, y: 160 },
    { x: index * 40, y: 160 },
  ],
  sizeSquareFeet: 2240,
  takenOffSquareFeet: 0,
  keptClearSquareFeet: 0,
  treatedSquareFeet: 2240,
  measured: "typed sides, April 2, 2026",
}));
