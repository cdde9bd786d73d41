import { describe, expect, test } from "vitest";
import { type DrawOfFill, type FillAtHand, fromFills, lessDrawn } from "#application/register/drawn-from-fills";
import { type ProductPutDown } from "#application/register/record-plan";
import { of } from "#domain/quantities/quantity";
import { IRON } from "../../support/ticket";

const ounces = (value: string) => of("fl oz", value).amount;

/** A fill of 40 gal with so much of each of these lots; a lot is named after its product. */
function fillOf(number: number, products: Readonly<Record<string, string>>, more: Partial<FillAtHand> = {}): FillAtHand {
  const lots = Object.entries(products).map(([productId, amount]) => ({ lotId: `${productId}-lot`, amount: ounces(amount) }));
  return {
    ...{ fillId: `fill ${String(number)}`, number, mixingPlace: "Shop yard", fillRestId: null, sources: [{ stockLocationId: "tank", upTo: null }], finished: of("gal", 40n), drawn: of("gal", 0n), lots },
    productOfLot: new Map(Object.keys(products).map((productId) => [`${productId}-lot`, productId])),
    numberOfLot: new Map(Object.keys(products).map((productId) => [`${productId}-lot`, productId.toUpperCase()])),
    ...more,
  };
}
const drawn = (fill: FillAtHand, gallons: string): DrawOfFill => ({ fill, sprayed: of("gal", gallons) });

const iron: ProductPutDown = { line: 1, productId: "iron", productName: "Rustwater Iron", countedBy: "volume", rateText: "1.5 fl oz/1,000 sq ft", reason: "color", equipmentName: "Tank", label: { label: IRON.label, use: IRON.use }, lawns: [] };
const dye: ProductPutDown = { ...iron, line: 2, productId: "dye", productName: "Marker Dye", label: "not-on-file" };
const at = (...beside: readonly number[]) => ({ treatmentOf: (line: number) => (line === 1 ? iron : dye), beside, isPlannedOn: () => false, grassesOf: () => [] });
const totalsOf = ({ used }: ReturnType<typeof fromFills>) => used.map(({ line, total }) => [line, total]);

describe("two fills of one mix", () => {
  test("give each product by the strength of their own, lot by lot", () => {
    const [strong, weak] = [fillOf(7, { iron: "40" }), fillOf(8, { iron: "20" })];
    const answer = fromFills([1], [drawn(strong, "40"), drawn(weak, "10")], "meter", at());
    expect(totalsOf(answer)).toEqual([[1, of("fl oz", "45")]]);
    expect(answer.used[0]?.lots).toEqual([{ lotId: "iron-lot", from: "tank", amount: ounces("40") }, { lotId: "iron-lot", from: "tank", amount: ounces("5") }]);
    expect(answer.used[0]?.draws.map(({ fill, sprayed, product }) => [fill.number, sprayed, product])).toEqual([[7, of("gal", 40n), of("fl oz", "40")], [8, of("gal", 10n), of("fl oz", "5")]]);
    expect(answer.findings).toEqual([]);
  });

  test("have findings each for itself: more than the one held, nothing planned in the other, measured since", () => {
    const [full, other] = [fillOf(7, { iron: "40" }), fillOf(8, { dye: "8" }, { fillRestId: "rest" })];
    const { findings } = fromFills([1], [drawn(full, "42"), drawn(other, "10")], "meter", at());
    expect(findings.map(({ rule, what }) => [rule, what])).toEqual([
      ["more-sprayed-than-filled", "More was sprayed than fill 7 held."],
      ["fill-settled-since", "The tank of fill 8 was measured or cleaned out after this visit."],
      ["fill-of-another-mix", "Fill 8 is not the mix that was planned here."],
    ]);
  });

  test("name only the fill that holds a product with it, and say of each what nobody planned", () => {
    const answer = fromFills([1], [drawn(fillOf(7, { iron: "40" }), "20"), drawn(fillOf(8, { iron: "40", dye: "8" }), "10")], "meter", at(2));
    expect(answer.used.map(({ line, total, draws }) => [line, total, draws.map(({ fill }) => fill.number)])).toEqual([[1, of("fl oz", "30"), [7, 8]], [2, of("fl oz", "2"), [8]]]);
    expect(answer.findings.map(({ what, figure }) => [what, figure?.slice(0, 44)])).toEqual([["Marker Dye was in fill 8 and was not planned here.", "2 fl oz of it came out with what was sprayed"]]);
  });

  test("of which the one gave nothing are one draw; where none gave any the first stands for it", () => {
    const [one, other] = [fillOf(7, { iron: "40" }), fillOf(8, { iron: "40" })];
    expect(fromFills([1], [drawn(one, "0"), drawn(other, "4")], "meter", at()).draws.map(({ fill }) => fill.number)).toEqual([8]);
    const nothing = fromFills([1], [drawn(one, "0"), drawn(other, "0")], "meter", at());
    expect([totalsOf(nothing), nothing.draws.map(({ fill }) => fill.number)]).toEqual([[[1, of("fl oz", "0")]], [7]]);
  });
});

describe("the fill of a tank that was measured after the visit", () => {
  const settled = fillOf(7, { iron: "30" }, { fillRestId: "rest", drawn: of("gal", 10n), sources: [{ stockLocationId: "loss", upTo: of("gal", 4n) }, { stockLocationId: "count-difference", upTo: null }] });

  test("has so much less for the next draw of the same visit", () => {
    expect(lessDrawn({ fill: settled, sprayed: of("gal", 3n) })).toMatchObject({ drawn: of("gal", 13n), sources: [{ upTo: of("gal", 1n) }, { upTo: null }] });
    expect(lessDrawn({ fill: settled, sprayed: of("gal", 6n) })).toMatchObject({ drawn: of("gal", 16n), sources: [{ upTo: of("gal", 0n) }, { upTo: null }] });
  });

  test("and another one are drawn from in their order", () => {
    const { used } = fromFills([1], [drawn(settled, "6"), drawn(fillOf(8, { iron: "40" }), "1")], "meter", at());
    expect(used[0]?.lots.map(({ from, amount }) => [from, amount])).toEqual([["loss", ounces("3")], ["count-difference", ounces("1.5")], ["tank", ounces("1")]]);
  });
});
