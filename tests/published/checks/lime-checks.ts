// Lime by exchangeable acidity, and the most at once, as printed.
import { expect } from "vitest";
import { rateIn, rateOf } from "#domain/quantities/rate";
import { fromNumber, toNumber } from "#domain/quantities/rational";
import { limingMaterialFor, publishedLimeCaps, recommendLime, splitLime } from "#domain/turf/lime";
import { valueOf } from "../../support/domain-answers";
import { type PublishedEntry, type PublishedRow, type PublishedStatement } from "../../support/published-check";

const perThousand = "lb per 1,000 sq ft";
const LIME_TABLE = "Penn State AASL, https://agsci.psu.edu/aasl/soil-testing/fertility/handbooks/turf/tables/lime-recommendations-turf";
const LIME_CAPS = "the caps of Penn State AASL (seen) and an NC State agent (seen-2nd)";

function split(total: string, capIndex: number): { readonly applications: number; readonly pounds: number } {
  const cap = publishedLimeCaps[capIndex];
  if (cap === undefined) throw new Error("there are two published caps");
  const result = splitLime(rateOf("product-mass-per-area", total, perThousand), cap);
  return { applications: result.applications, pounds: toNumber(rateIn(result.each, perThousand)) };
}

function capPounds(index: number): number {
  const cap = publishedLimeCaps[index];
  if (cap === undefined) throw new Error("there are two published caps");
  return toNumber(rateIn(cap.perApplication, perThousand));
}

const limeRows: readonly PublishedRow[] = [
  { row: "lime-aeration.1", inputs: "Penn State cap, lb per 1,000", expected: 100, tolerance: 0, source: "Penn State AASL, Home Lawn - Maintain, https://agsci.psu.edu/aasl/online-report/home-lawn-maintain", status: "seen", computed: () => capPounds(0), second: 100 },
  { row: "lime-aeration.2", inputs: "NC State agent's cap, lb per 1,000", expected: 50, tolerance: 0, source: "NC State Lee Co. agent (Gaster), https://www.jackjeffcoat.com/1182.news", status: "seen-2nd", computed: () => capPounds(1), second: 50 },
  { row: "care.17", inputs: "the lower of the two caps that are offered, lb per 1,000", expected: 50, tolerance: 0, source: "from memory; an NC State agent has it too", status: "memory", computed: () => Math.min(capPounds(0), capPounds(1)), second: 50 },
  { row: "lime-aeration.8", inputs: "180 lb at the cap of 100, applications", expected: 2, tolerance: 0, source: LIME_CAPS, status: "calc", computed: () => split("180", 0).applications, second: Math.ceil(180 / 100) },
  { row: "lime-aeration.8", inputs: "180 lb at the cap of 100, lb each", expected: 90, tolerance: 0, source: LIME_CAPS, status: "calc", computed: () => split("180", 0).pounds, second: 90 },
  { row: "lime-aeration.8", inputs: "180 lb at the cap of 50, applications", expected: 4, tolerance: 0, source: LIME_CAPS, status: "calc", computed: () => split("180", 1).applications, second: Math.ceil(180 / 50) },
  { row: "lime-aeration.8", inputs: "180 lb at the cap of 50, lb each", expected: 45, tolerance: 0, source: LIME_CAPS, status: "calc", computed: () => split("180", 1).pounds, second: 45 },
  { row: "lime.39", inputs: "100 lb of a material of 80%, lb (divided by 0.80)", expected: 125, tolerance: 0, source: LIME_TABLE, status: "calc", computed: () => toNumber(rateIn(valueOf(limingMaterialFor(rateOf("product-mass-per-area", "100", perThousand), "80")), perThousand)), second: 100 / 0.8 },
];

/** Exchangeable acidity, then lb of calcium carbonate equivalent per 1,000 sq ft to pH 7.0, 6.5 and 6.0. */
const limeTable: readonly (readonly [number, number, number, number])[] = [
  [2.0, 50, 50, 50],
  [2.6, 70, 50, 50],
  [3.3, 70, 50, 50],
  [3.9, 90, 70, 50],
  [4.6, 110, 70, 50],
  [5.2, 110, 90, 50],
  [5.8, 140, 90, 50],
  [6.5, 160, 110, 70],
  [7.1, 160, 110, 90],
  [7.8, 180, 140, 90],
  [8.4, 180, 140, 110],
  [9.0, 210, 160, 110],
  [9.7, 230, 180, 140],
  [10.3, 230, 180, 140],
  [11.0, 250, 210, 160],
  [11.6, 280, 210, 160],
  [12.3, 280, 230, 180],
  [12.9, 300, 250, 180],
  [13.5, 320, 250, 210],
  [14.2, 320, 280, 210],
  [14.8, 340, 280, 230],
  [15.5, 370, 300, 230],
  [16.1, 370, 320, 250],
  [16.8, 390, 320, 250],
  [17.4, 390, 340, 280],
  [18.0, 410, 340, 280],
  [18.7, 440, 370, 300],
  [19.3, 440, 390, 300],
  [20.0, 460, 390, 320],
  [20.6, 480, 410, 320],
  [21.2, 480, 410, 340],
  [21.9, 510, 460, 340],
  [22.5, 530, 460, 370],
  [23.2, 530, 460, 370],
  [23.8, 550, 480, 390],
  [24.5, 570, 480, 390],
  [25.1, 570, 510, 410],
  [25.7, 600, 530, 410],
];

const ofTable = limeTable.map(([acidity, to7, to65, to6], place): PublishedStatement => ({
  row: `lime.${String(place + 1)}`,
  says: `acidity ${String(acidity)}: ${[to7, to65, to6].join(", ")} lb per 1,000 sq ft`,
  source: LIME_TABLE,
  status: "seen",
  holds: () => {
    const exchangeableAcidity = fromNumber(acidity, 1);
    const pounds = (["7.0", "6.5", "6.0"] as const).map((target) => {
      const test = { method: "Mehlich buffer, exchangeable acidity", exchangeableAcidity } as const;
      return toNumber(rateIn(valueOf(recommendLime(test, target)).calciumCarbonateEquivalent, perThousand));
    });
    expect(pounds).toEqual([to7, to65, to6]);
  },
}));

export const LIME_CHECKS: readonly PublishedEntry[] = [...limeRows, ...ofTable];
