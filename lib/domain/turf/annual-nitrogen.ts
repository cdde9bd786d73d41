import { type UsState } from "#domain/company/us-state";
import { compareRates, type Rate, rateIn, rateOf, scaleRate } from "#domain/quantities/rate";
import { rational, toNumber } from "#domain/quantities/rational";

/** The lawn grasses of the published nitrogen tables. */
export type NitrogenTableGrass =
  | "bermudagrass"
  | "St. Augustinegrass"
  | "zoysiagrass"
  | "centipedegrass"
  | "bahiagrass"
  | "tall fescue"
  | "Kentucky bluegrass"
  | "perennial ryegrass"
  | "fine fescue";

/** Where the table was read. Every row below was read at its source. */
const SOURCES = {
  florida: {
    name: "UF/IFAS EP221, table 2",
    address: "https://www.yumpu.com/en/document/view/30608282/ (cites edis.ifas.ufl.edu/EP221)",
  },
  "north-carolina": {
    name: "NC State, Nitrogen Fertilizer Guide for Lawns",
    address: "http://www.neuse.ncsu.edu/LawnCare.htm",
  },
  virginia: {
    name: "Virginia Department of Conservation and Recreation, fertcalc",
    address: "dcr.virginia.gov/soil-and-water/fertcalc",
  },
  georgia: {
    name: "University of Georgia extension agent",
    address:
      "https://www.gainesvilletimes.com/columnists/for-fertilizer-application-quantity-and-timing-are-important/",
  },
  illinois: {
    name: "University of Illinois, 1995",
    address: "https://www.oldhouseweb.com/gardening/fertilizing.shtml",
  },
  pennsylvania: {
    name: "Penn State (Landschoot), Feast or Famine Fertility",
    address: "http://grounds-mag.com/mag/grounds_maintenance_feast_famine_fertility/",
  },
} as const;

/** One published range of nitrogen for a year. */
export interface AnnualNitrogenRange {
  readonly grass: NitrogenTableGrass;
  /** The region that the table speaks of, in its own words. */
  readonly region: string;
  /** Nitrogen on the same ground in one year. */
  readonly lowest: Rate<"nutrient-mass-per-area">;
  readonly highest: Rate<"nutrient-mass-per-area">;
  readonly source: { readonly name: string; readonly address: string };
  /** What the source adds that the two numbers don't say. */
  readonly remark: string;
}

type Row = readonly [
  grass: NitrogenTableGrass,
  region: string,
  lowest: string,
  highest: string,
  source: keyof typeof SOURCES,
  remark?: string,
];

/** In lb of nitrogen per 1,000 sq ft and year. Tables disagree; none is averaged with another. */
const ROWS: readonly Row[] = [
  ["bermudagrass", "north Florida", "3", "5", "florida"],
  ["bermudagrass", "central Florida", "4", "6", "florida"],
  ["bermudagrass", "south Florida", "5", "7", "florida"],
  ["bermudagrass", "central North Carolina", "4", "4", "north-carolina"],
  ["bermudagrass", "Virginia", "2", "4", "virginia"],
  ["bermudagrass", "Georgia", "2", "4", "georgia"],
  ["St. Augustinegrass", "north Florida", "2", "4", "florida"],
  ["St. Augustinegrass", "central Florida", "2", "5", "florida"],
  ["St. Augustinegrass", "south Florida", "4", "6", "florida"],
  ["St. Augustinegrass", "central North Carolina", "2.5", "2.5", "north-carolina"],
  ["St. Augustinegrass", "Virginia", "2", "4", "virginia"],
  ["St. Augustinegrass", "Georgia", "2", "4", "georgia"],
  ["zoysiagrass", "north Florida", "3", "5", "florida"],
  ["zoysiagrass", "central Florida", "3", "6", "florida"],
  ["zoysiagrass", "south Florida", "4", "6", "florida"],
  ["zoysiagrass", "central North Carolina", "1.5", "1.5", "north-carolina"],
  ["zoysiagrass", "Virginia", "1", "2", "virginia"],
  ["zoysiagrass", "Georgia", "2", "3", "georgia"],
  ["zoysiagrass", "Illinois", "2", "4", "illinois"],
  ["centipedegrass", "north Florida", "1", "2", "florida"],
  ["centipedegrass", "central Florida", "2", "3", "florida"],
  ["centipedegrass", "south Florida", "2", "3", "florida"],
  ["centipedegrass", "central North Carolina", "0.5", "0.5", "north-carolina"],
  ["centipedegrass", "Virginia", "1", "2", "virginia"],
  ["centipedegrass", "Georgia", "1", "2", "georgia", "1 is ample"],
  ["bahiagrass", "north Florida", "2", "3", "florida"],
  ["bahiagrass", "central Florida", "2", "4", "florida"],
  ["bahiagrass", "south Florida", "2", "4", "florida"],
  ["bahiagrass", "central North Carolina", "1", "1", "north-carolina"],
  ["tall fescue", "central North Carolina", "2.5", "3", "north-carolina"],
  ["tall fescue", "Virginia", "2", "3.5", "virginia"],
  ["tall fescue", "Illinois", "2", "4", "illinois"],
  ["tall fescue", "Pennsylvania", "2", "2", "pennsylvania", "about 2, said of fescues"],
  ["Kentucky bluegrass", "central North Carolina", "2.5", "3", "north-carolina"],
  ["Kentucky bluegrass", "Virginia", "2", "3.5", "virginia"],
  ["Kentucky bluegrass", "Pennsylvania", "3", "4", "pennsylvania"],
  ["Kentucky bluegrass", "Illinois", "1", "4", "illinois"],
  ["perennial ryegrass", "central North Carolina", "2.5", "3", "north-carolina", "mixed with Kentucky bluegrass"],
  ["perennial ryegrass", "Virginia", "2", "3.5", "virginia"],
  ["perennial ryegrass", "Pennsylvania", "3", "4", "pennsylvania"],
  ["perennial ryegrass", "Illinois", "2", "4", "illinois"],
  ["fine fescue", "Virginia", "1", "2", "virginia"],
  ["fine fescue", "Pennsylvania", "2", "2", "pennsylvania", "about 2"],
  ["fine fescue", "Illinois", "1", "3", "illinois"],
];

/** Every published range, each with its own source. Which one a company follows is the company's choice. */
export const annualNitrogenRanges: readonly AnnualNitrogenRange[] = ROWS.map(
  ([grass, region, lowest, highest, source, remark = ""]) => ({
    grass,
    region,
    lowest: rateOf("nutrient-mass-per-area", lowest, "lb per 1,000 sq ft"),
    highest: rateOf("nutrient-mass-per-area", highest, "lb per 1,000 sq ft"),
    source: SOURCES[source],
    remark,
  }),
);

type Ends = Pick<AnnualNitrogenRange, "lowest" | "highest">;

/**
 * How far a year may lie from a single published figure, in percent of it, and still be about that much: such a figure is
 * advice for a year's feeding and no bound, and what is weighed out on marks never meets it exactly. Common practice.
 */
export const ABOUT_PERCENT = 10n;

/** Whether a source names one figure and no range. */
export function isOneFigure({ lowest, highest }: Ends): boolean {
  return compareRates(lowest, highest) === 0;
}

/** The range as a year is held against it: that of the source, and around a single figure what is about that much. */
export function rangeHeldAgainst(range: Ends): Ends {
  if (!isOneFigure(range)) return range;
  return { lowest: scaleRate(range.lowest, rational(100n - ABOUT_PERCENT, 100n)), highest: scaleRate(range.highest, rational(100n + ABOUT_PERCENT, 100n)) };
}

/** "2 to 4", "about 2" where the source names one figure; in lb of nitrogen per 1,000 sq ft and year. */
export function rangeFigures({ lowest, highest }: Ends): string {
  const [low, high] = [lowest, highest].map((rate) => String(toNumber(rateIn(rate, "lb per 1,000 sq ft"))));
  return isOneFigure({ lowest, highest }) ? `about ${String(high)}` : `${String(low)} to ${String(high)}`;
}

/** Whose range it is, with what the source adds to it: "Penn State (Landschoot), Feast or Famine Fertility: about 2, said of fescues". */
export function sourceOfRange({ source, remark }: Pick<AnnualNitrogenRange, "source" | "remark">): string {
  return remark === "" ? source.name : `${source.name}: ${remark}`;
}

/** The published ranges of one grass, which may be none. */
export function annualNitrogenRangesOf(grass: string): readonly AnnualNitrogenRange[] {
  return annualNitrogenRanges.filter((range) => range.grass === grass);
}

/** The state in which each region of the tables lies. */
const STATE_OF_REGION: Readonly<Record<string, UsState>> = {
  "north Florida": "FL",
  "central Florida": "FL",
  "south Florida": "FL",
  "central North Carolina": "NC",
  Virginia: "VA",
  Georgia: "GA",
  Illinois: "IL",
  Pennsylvania: "PA",
};

/** The ranges of one grass that were published for a state: none, one, or one for each region of it. */
export function annualNitrogenRangesIn(state: UsState, grass: string): readonly AnnualNitrogenRange[] {
  return annualNitrogenRangesOf(grass).filter(({ region }) => STATE_OF_REGION[region] === state);
}
