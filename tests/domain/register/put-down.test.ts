import { expect, test } from "vitest";
import { type LabelFacts, type LabelUse } from "#domain/label/label-facts";
import { massInVolume, percentByWeight } from "#domain/quantities/active-ingredient";
import { densityOf } from "#domain/quantities/density";
import { settle } from "#domain/quantities/exact-quantity";
import { allocate, of, sum } from "#domain/quantities/quantity";
import { type Rate, rateOf, times } from "#domain/quantities/rate";
import { sharePutDown, takeDown } from "#domain/register/put-down";
import { type TreatedLawn } from "#domain/mixing/treated-area";
import { FEED, IRON } from "../../support/ticket";

const lot = (lotId: string, stockLocationId: string, amount: bigint, receivedOrder = 0, expiresOn: string | null = null) => ({ lotId, stockLocationId, amount, receivedOrder, expiresOn }) as Parameters<typeof takeDown>[2][number][number];
const used = (amount: bigint) => ({ dimension: "mass", amount }) as const;

test("takes the first to expire first, place by place", () => {
  const truck = [lot("late", "truck", 5n, 0), lot("early", "truck", 5n, 1, "2026-05-01")];
  expect(takeDown("Greenmere", used(12n), [truck, [lot("shop", "shop", 9n)]])).toEqual({
    taken: [{ lotId: "early", stockLocationId: "truck", amount: 5n }, { lotId: "late", stockLocationId: "truck", amount: 5n }, { lotId: "shop", stockLocationId: "shop", amount: 2n }],
    findings: [],
  });
});

test("what the books do not have comes from the last lot that was taken from, else from the first at hand, and asks for a count", () => {
  const over = takeDown("Greenmere", used(12n), [[lot("one", "truck", 5n), lot("two", "truck", 5n, 1)]]);
  expect(over.taken).toEqual([{ lotId: "one", stockLocationId: "truck", amount: 5n }, { lotId: "two", stockLocationId: "truck", amount: 7n }]);
  expect(over.findings.map(({ rule }) => rule)).toEqual(["count-it"]);
  expect(takeDown("Greenmere", used(3n), [[lot("one", "truck", -1n)]]).taken).toEqual([{ lotId: "one", stockLocationId: "truck", amount: 3n }]);
  expect(takeDown("Greenmere", used(3n), [])).toMatchObject({ taken: [], findings: [{ figure: "No lot of it is on file." }] });
});

const lawn = (zoneId: string, squareFeet: string) => ({ zoneId, letter: "A", name: zoneId, lawnArea: of("sq ft", squareFeet), keptClear: of("sq ft", "0"), treatedArea: of("sq ft", squareFeet) }) satisfies TreatedLawn;

test("the lawns add up to what was used; without a label nothing is held against it", () => {
  const total = of("lb", "10.01");
  const { lawns, findings, notCountable } = sharePutDown("not-on-file", total, [lawn("front", "1000"), lawn("back", "2000"), lawn("bed", "0")]);
  expect(lawns.map(({ zoneId }) => zoneId)).toEqual(["front", "back"]);
  expect(sum("mass", lawns.map(({ amount }) => amount as typeof total))).toEqual(total);
  expect([findings, lawns.flatMap(({ activeIngredients }) => activeIngredients)]).toEqual([[], []]);
  expect(notCountable).toBe("not-read");
});

test("an active ingredient that can't be counted is named, and none is taken for none", () => {
  const byWeight = { name: "oxathrin", concentration: percentByWeight("30"), modeOfAction: "none" } as const;
  const byVolume = { name: "velodiamine", concentration: massInVolume("4", "lb per gal"), modeOfAction: "none" } as const;
  const share = (more: Partial<LabelFacts>) => sharePutDown({ label: { ...IRON.label, density: "unknown", activeIngredients: [byWeight, byVolume], ...more }, use: IRON.use }, of("fl oz", "3"), [lawn("front", "2000")]);
  const counted = ({ lawns }: ReturnType<typeof share>) => lawns.flatMap(({ activeIngredients }) => activeIngredients.map(({ name }) => name));
  expect([counted(share({})), share({}).notCountable]).toEqual([["velodiamine"], ["oxathrin"]]);
  const weighed = share({ density: densityOf("11", "lb per gal") });
  expect([counted(weighed), weighed.notCountable]).toEqual([["oxathrin", "velodiamine"], []]);
  expect(share({ activeIngredients: "unknown" }).notCountable).toBe("not-read");
  expect(share({ activeIngredients: [] }).notCountable).toEqual([]);
});

test("a real rate just above the label's highest does not read like it", () => {
  const { findings } = sharePutDown({ label: FEED.label, use: FEED.use }, of("lb", "6.04"), [lawn("front", "2000")]);
  expect(findings).toMatchObject([{ rule: "put-down-above-label", figure: "It came to 3.02 lb per 1,000 sq ft; the label's highest is 3 lb per 1,000 sq ft." }]);
});

test("a strength is held against the spray that it came out with, and ground only against a most over it", () => {
  const perGallon = (value: string) => rateOf("product-volume-per-spray-volume", value, "fl oz per gal");
  const rates = { basis: "product-volume-per-spray-volume", low: perGallon("1"), high: perGallon("2") } as const;
  const found = (draws: Parameters<typeof sharePutDown>[3], besideRates: LabelUse["besideRates"] = {}) =>
    sharePutDown({ label: IRON.label, use: { ...IRON.use, rates, besideRates } }, of("fl oz", "3"), [lawn("front", "100")], draws).findings.map(({ what, figure }) => [what, figure]);
  const drawn = (product: string, sprayed: string) => ({ product: of("fl oz", product), sprayed: of("gal", sprayed) });
  expect([found(undefined), found([drawn("3", "1.5")])]).toEqual([[], []]);
  expect(found([drawn("3", "1")])).toEqual([["Rustwater Iron was sprayed stronger than its label allows.", "It came to 3 fl oz per gal; the label's highest is 2 fl oz per gal."]]);
  // Two fills of 2 gal together are weak enough; the one of them is not.
  expect(found([drawn("2.5", "1"), drawn("0.5", "1")])).toEqual([["Rustwater Iron was sprayed stronger than its label allows.", "It came to 2\u00BD fl oz per gal; the label's highest is 2 fl oz per gal."]]);
  const mostOnArea = rateOf("product-volume-per-area", "20", "fl oz per 1,000 sq ft");
  expect(found([drawn("3", "2")], { mostOnArea })).toEqual([["More Rustwater Iron went on front than its label allows.", "It came to 30 fl oz per 1,000 sq ft; the label's highest is 20 fl oz per 1,000 sq ft."]]);
});

test("of a use that nobody knows, nothing is above the label that one of its uses allows", () => {
  const other = { ...FEED.use, useName: "Sports turf", rates: { ...FEED.use.rates, high: { ...FEED.use.rates.high, amount: FEED.use.rates.high.amount * 2n } } } as typeof FEED.use;
  const label = { ...FEED.label, uses: [FEED.use, other] };
  const rules = (pounds: string) => sharePutDown({ label, use: "not-known" }, of("lb", pounds), [lawn("front", "2000")]).findings.map(({ citation }) => citation);
  expect(rules("11")).toEqual([]);
  expect(rules("13")).toEqual(["label of Harrowgate 32, Sports turf"]);
});

test("any more than the label's highest is said, down to what no scale shows", () => {
  const found = (amount: bigint, squareFeet = "10000") => sharePutDown({ label: FEED.label, use: FEED.use }, { dimension: "mass", amount }, [lawn("front", squareFeet)]).findings.map(({ figure }) => figure);
  const highest = of("lb", "30").amount;
  expect(found(of("lb", "30.14").amount)).toEqual(["It came to 3.01 lb per 1,000 sq ft; the label's highest is 3 lb per 1,000 sq ft."]);
  expect(found(of("lb", "30.01").amount)).toHaveLength(1);
  expect([found(highest), found(highest + 100n), found(highest + 101n).length]).toEqual([[], [], 1]);
});

test("what was used as planned at the label's highest is above it on no lawn, however the grounds divide it", () => {
  for (const grounds of [["1000", "1000", "1000"], ["333.33", "1234.57", "7001"], ["1", "2", "3", "5", "7", "11", "13"], ["2399.99", "0.01"]]) {
    const lawns = grounds.map((squareFeet, index) => lawn(`lawn ${String(index)}`, squareFeet));
    const planned = settle(times(FEED.use.rates.high as Rate<"product-mass-per-area">, sum("area", lawns.map(({ treatedArea }) => treatedArea))), "nearest");
    expect(sharePutDown({ label: FEED.label, use: FEED.use }, planned, lawns).findings).toEqual([]);
    // The lawns that were reached, each with the share that the plan had for it.
    const shares = allocate(planned, lawns.map(({ treatedArea }) => treatedArea.amount));
    const reached = lawns.slice(0, -1);
    expect(sharePutDown({ label: FEED.label, use: FEED.use }, sum("mass", shares.slice(0, -1)), reached).findings).toEqual([]);
  }
});

test("volumes are held against their label as exactly", () => {
  const found = (fluidOunces: string) => sharePutDown({ label: IRON.label, use: IRON.use }, of("fl oz", fluidOunces), [lawn("front", "1000")]).findings.map(({ rule }) => rule);
  expect([found("2"), found("2.001")]).toEqual([[], ["put-down-above-label"]]);
});
