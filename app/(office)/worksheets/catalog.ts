/** The worksheets in the order of the list: where each is, and what it answers in one sentence. */
export const WORKSHEETS = {
  nutrients: { name: "Nutrients and rate", question: "How much product brings a nutrient target, what does a product bring, and what is in a bag?" },
  sprayer: { name: "Sprayer calibration", question: "How much spray does a boom, a backpack or a hose and gun put on 1,000 sq ft and on an acre?" },
  spreader: { name: "Spreader calibration", question: "How much does a spreader give at a setting, how wide is its swath, and how even does it come out?" },
  "tank-mix": { name: "Tank mix", question: "How far does a tank go, what goes into a full and a part tank, and in which order?" },
  area: { name: "Area", question: "How large is a lawn from what the tape or the wheel measured?" },
  irrigation: { name: "Irrigation minutes", question: "How many minutes put down a depth of water, and in how many cycles?" },
  "spray-hours": { name: "Spray hours", question: "Which hours of a day are open for a spray, and what closes the others?" },
  "degree-days": { name: "Degree days", question: "How many degree days do daily highs and lows add up to, and when is a number of them reached?" },
  seed: { name: "Seed", question: "How much seed from the bag does a lawn take, by a rate of pure live seed or of seed from the bag?" },
  lime: { name: "Lime", question: "How much lime does a soil test ask for, and in how many applications?" },
  potash: { name: "Potash", question: "How much product brings the potash that a soil test asks for, and in how many applications?" },
  topdressing: { name: "Topdressing", question: "How many cubic yards cover a lawn to a depth, and how deep does a load lie?" },
} as const satisfies Readonly<Record<string, { readonly name: string; readonly question: string }>>;

export type WorksheetName = keyof typeof WORKSHEETS;

/** Where a worksheet is. */
export function worksheetPath(name: WorksheetName): string {
  return `/worksheets/${name}`;
}

/** The list of all, as links with what they answer. */
export const WORKSHEET_LIST = Object.entries(WORKSHEETS).map(([name, words]) => ({ ...words, href: `/worksheets/${name}` }));
