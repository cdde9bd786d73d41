// Nitrogen of a year by grass and region, and by month, as printed.
import { expect } from "vitest";
import { ratePerPass } from "#domain/equipment/spreader-calibration";
import { rateIn, rateOf } from "#domain/quantities/rate";
import { toNumber } from "#domain/quantities/rational";
import { plannedNitrogen } from "#domain/scheduling/planned-rate";
import { sumNitrogen } from "#domain/scheduling/season-nitrogen";
import { annualNitrogenRanges } from "#domain/turf/annual-nitrogen";
import { gradeOf } from "#domain/turf/nutrients";
import { type PublishedRow, type PublishedStatement } from "../../support/published-check";

const perThousand = "lb per 1,000 sq ft";
const FLORIDA_TABLE = "UF/IFAS EP221, table 2";
type Grass = (typeof annualNitrogenRanges)[number]["grass"];

const printed: readonly (readonly [Grass, string, string, number, number])[] = [
  ["bermudagrass", "north Florida", FLORIDA_TABLE, 3, 5],
  ["bermudagrass", "central Florida", FLORIDA_TABLE, 4, 6],
  ["bermudagrass", "south Florida", FLORIDA_TABLE, 5, 7],
  ["St. Augustinegrass", "north Florida", FLORIDA_TABLE, 2, 4],
  ["St. Augustinegrass", "central Florida", FLORIDA_TABLE, 2, 5],
  ["St. Augustinegrass", "south Florida", FLORIDA_TABLE, 4, 6],
  ["zoysiagrass", "north Florida", FLORIDA_TABLE, 3, 5],
  ["zoysiagrass", "central Florida", FLORIDA_TABLE, 3, 6],
  ["zoysiagrass", "south Florida", FLORIDA_TABLE, 4, 6],
  ["centipedegrass", "north Florida", FLORIDA_TABLE, 1, 2],
  ["centipedegrass", "central Florida", FLORIDA_TABLE, 2, 3],
  ["centipedegrass", "south Florida", FLORIDA_TABLE, 2, 3],
  ["bahiagrass", "north Florida", FLORIDA_TABLE, 2, 3],
  ["bahiagrass", "central Florida", FLORIDA_TABLE, 2, 4],
  ["bahiagrass", "south Florida", FLORIDA_TABLE, 2, 4],
  ["bermudagrass", "central North Carolina", "NC State", 4, 4],
  ["St. Augustinegrass", "central North Carolina", "NC State", 2.5, 2.5],
  ["zoysiagrass", "central North Carolina", "NC State", 1.5, 1.5],
  ["centipedegrass", "central North Carolina", "NC State", 0.5, 0.5],
  ["bahiagrass", "central North Carolina", "NC State", 1, 1],
  ["tall fescue", "central North Carolina", "NC State", 2.5, 3],
  ["Kentucky bluegrass", "central North Carolina", "NC State", 2.5, 3],
  ["perennial ryegrass", "central North Carolina", "NC State", 2.5, 3],
  ["bermudagrass", "Virginia", "Virginia", 2, 4],
  ["St. Augustinegrass", "Virginia", "Virginia", 2, 4],
  ["zoysiagrass", "Virginia", "Virginia", 1, 2],
  ["centipedegrass", "Virginia", "Virginia", 1, 2],
  ["tall fescue", "Virginia", "Virginia", 2, 3.5],
  ["Kentucky bluegrass", "Virginia", "Virginia", 2, 3.5],
  ["perennial ryegrass", "Virginia", "Virginia", 2, 3.5],
  ["fine fescue", "Virginia", "Virginia", 1, 2],
  ["bermudagrass", "Georgia", "University of Georgia", 2, 4],
  ["St. Augustinegrass", "Georgia", "University of Georgia", 2, 4],
  ["zoysiagrass", "Georgia", "University of Georgia", 2, 3],
  ["centipedegrass", "Georgia", "University of Georgia", 1, 2],
  ["zoysiagrass", "Illinois", "University of Illinois", 2, 4],
  ["tall fescue", "Illinois", "University of Illinois", 2, 4],
  ["Kentucky bluegrass", "Illinois", "University of Illinois", 1, 4],
  ["perennial ryegrass", "Illinois", "University of Illinois", 2, 4],
  ["fine fescue", "Illinois", "University of Illinois", 1, 3],
  ["tall fescue", "Pennsylvania", "Penn State", 2, 2],
  ["Kentucky bluegrass", "Pennsylvania", "Penn State", 3, 4],
  ["perennial ryegrass", "Pennsylvania", "Penn State", 3, 4],
  ["fine fescue", "Pennsylvania", "Penn State", 2, 2],
];

/** The published row of each grass. */
const ROW_OF_GRASS: Readonly<Partial<Record<Grass, string>>> = {
  bermudagrass: "fertilizer.21",
  "St. Augustinegrass": "fertilizer.22",
  zoysiagrass: "fertilizer.23",
  centipedegrass: "fertilizer.24",
  bahiagrass: "fertilizer.25",
  "tall fescue": "fertilizer.26",
  "Kentucky bluegrass": "fertilizer.27",
  "perennial ryegrass": "fertilizer.28",
  "fine fescue": "fertilizer.29",
};

function rangeOf(grass: Grass, region: string): readonly [number, number] {
  const found = annualNitrogenRanges.filter((range) => range.grass === grass && range.region === region);
  expect(found).toHaveLength(1);
  const [range] = found;
  if (range === undefined) throw new Error("the range is in the table");
  return [toNumber(rateIn(range.lowest, perThousand)), toNumber(rateIn(range.highest, perThousand))];
}

const ofYear = printed.map(([grass, region, source, lowest, highest]): PublishedStatement => ({
  row: ROW_OF_GRASS[grass] ?? "no row",
  says: `${grass}, ${region}: ${String(lowest)} to ${String(highest)} lb per 1,000 sq ft a year`,
  source,
  status: "seen",
  holds: () => {
    expect(rangeOf(grass, region)).toEqual([lowest, highest]);
    expect(annualNitrogenRanges.find((range) => range.grass === grass && range.region === region)?.source.name).toContain(source);
  },
}));

const GUIDE = "NC State, Nitrogen Fertilizer Guide for Lawns, http://www.neuse.ncsu.edu/LawnCare.htm";

/** Least and most of each month that has a feeding; together they are the year's. */
const months: readonly (readonly [string, Grass, readonly (readonly [number, number])[]])[] = [
  ["nitrogen-by-month.1", "tall fescue", [[0.5, 1], [1, 1], [1, 1]]],
  ["nitrogen-by-month.1", "Kentucky bluegrass", [[0.5, 1], [1, 1], [1, 1]]],
  ["nitrogen-by-month.2", "bermudagrass", [[1, 1], [1, 1], [1, 1], [1, 1]]],
  ["nitrogen-by-month.3", "St. Augustinegrass", [[0.5, 0.5], [0.5, 0.5], [1, 1], [0.5, 0.5]]],
  ["nitrogen-by-month.4", "zoysiagrass", [[0.5, 0.5], [0.5, 0.5], [0.5, 0.5]]],
  ["nitrogen-by-month.5", "bahiagrass", [[0.5, 0.5], [0.5, 0.5]]],
  ["nitrogen-by-month.6", "centipedegrass", [[0.5, 0.5]]],
];

const byMonth = months.map(([row, grass, feedings]): PublishedStatement => ({
  row,
  says: `${grass}, central North Carolina: the feedings of its months add up to the year's range`,
  source: GUIDE,
  status: "seen",
  holds: () => {
    const sum = (place: 0 | 1) => feedings.reduce((total, feeding) => total + feeding[place], 0);
    expect(rangeOf(grass, "central North Carolina")).toEqual([sum(0), sum(1)]);
  },
}));

/** Feedings of a program in order, least and most of each, and the year that they come to. */
const programs: readonly (readonly [string, string, string, readonly (readonly [string, string])[], readonly [number, number]])[] = [
  ["nitrogen-by-month.7", "Kentucky bluegrass, western Nebraska: 1 in May, 0.5 to 1 in June, 1 in September, 1.5 to 2 in fall", "Univ. of Nebraska Panhandle Bluegrass Calendar, https://extension.unl.edu/statewide/panhandle/turfgrass_calendar/", [["1", "1"], ["0.5", "1"], ["1", "1"], ["1.5", "2"]], [4, 5]],
  ["nitrogen-by-month.8", "cool-season lawns in Illinois: one to four feedings of 1 lb", "Univ. of Illinois 1995 via https://www.oldhouseweb.com/gardening/fertilizing.shtml", [["1", "1"], ["0", "1"], ["0", "1"], ["0", "1"]], [1, 4]],
];

/** The season's sum of feeds, in lb of nitrogen. */
function seasonOfFeeds(feeds: readonly string[]): number {
  const facts = { productName: "a feed", analysis: { grade: gradeOf("10", "0", "0"), release: { kind: "not-stated" } as const }, density: "unknown" } as const;
  const brought = feeds.map((pounds) => {
    const rate = rateOf("product-mass-per-area", pounds, perThousand);
    return plannedNitrogen({ ...rate, amount: rate.amount * 10n }, facts);
  });
  return toNumber(rateIn(sumNitrogen(brought).known, perThousand));
}

const bySeason = programs.map(([row, says, source, feedings, year]): PublishedStatement => ({
  row,
  says: `${says}, ${year.join(" to ")} a year`,
  source,
  status: "seen",
  holds: () => expect([seasonOfFeeds(feedings.map(([least]) => least)), seasonOfFeeds(feedings.map(([, most]) => most))]).toEqual(year),
}));
const ofIllinois: PublishedStatement = {
  row: "nitrogen-by-month.8",
  says: "one to four feedings of a pound are the year's range of Kentucky bluegrass in Illinois",
  source: "Univ. of Illinois 1995 via https://www.oldhouseweb.com/gardening/fertilizing.shtml",
  status: "seen",
  holds: () => expect(rangeOf("Kentucky bluegrass", "Illinois")).toEqual([1, 4]),
};

/** New Jersey's most, 0.9 lb N at once, is put down in two passes of 0.45. */
const passes: PublishedRow = {
  row: "fertilizer.33",
  inputs: "0.9 lb per 1,000 sq ft split in two passes, lb each",
  expected: 0.45,
  tolerance: 1e-12,
  source: "Rutgers, http://snyderfarm.rutgers.edu/fertspreader2.html",
  status: "seen",
  computed: () => toNumber(rateIn(ratePerPass(rateOf("product-mass-per-area", "0.9", perThousand), "two-passes-crosswise"), perThousand)),
  second: 0.9 / 2,
};

export const RANGES_PRINTED = printed.length;
export const NITROGEN_CHECKS = [...ofYear, ...byMonth, ...bySeason, ofIllinois, passes];
