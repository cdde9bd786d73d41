import { describe, expect, test } from "vitest";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { roundedOffPlan } from "#domain/mixing/rounded-rate";
import { IRON, LAWN, ticketOf, withFeed, withIron } from "../../support/ticket";

const ounces = (value: string) => rateOf("product-volume-per-area", value, "fl oz per 1,000 sq ft");
const at = (rate: string) => roundedOffPlan({ ...IRON, rate: ounces("2") }, ounces(rate), "Measured out");

describe("what marks make of a plan", () => {
  test.each([
    ["2", []],
    ["2.04", []],
    ["2.05", ["note"]],
    ["2.2", ["note"]],
    ["2.21", ["take-care"]],
    ["1.96", []],
    ["1.95", ["note"]],
    ["1.79", ["take-care"]],
  ] as const)("2 fl oz planned that become %s: %j", (rate, levels) => expect(at(rate).map(({ level }) => level)).toEqual(levels));

  test("both rates are said, and by how much they differ", () => {
    expect(at("3")).toMatchObject([
      {
        rule: "rounded-off-plan",
        source: "house",
        what: "Measured out, Rustwater Iron comes to more than planned.",
        figure: "It becomes 3 fl oz per 1,000 sq ft, 50% more than the 2 fl oz per 1,000 sq ft that are planned.",
        about: ["Rustwater Iron"],
      },
    ]);
    expect(at("1.95")[0]).toMatchObject({ what: "Measured out, Rustwater Iron comes to less than planned.", figure: "It becomes 1.95 fl oz per 1,000 sq ft, 2.5% less than the 2 fl oz per 1,000 sq ft that are planned." });
  });

  test("a plan by strength is held against the strength, and another measure against nothing", () => {
    const strength = (value: string) => rateOf("product-volume-per-spray-volume", value, "fl oz per gal");
    const byStrength = { ...IRON, asStated: { rate: strength("1"), rates: { basis: "product-volume-per-spray-volume", low: strength("1"), high: strength("2") } as const } };
    expect(roundedOffPlan(byStrength, strength("1.5"), "Measured out")[0]?.figure).toBe("It becomes 1½ fl oz per gal, 50% more than the 1 fl oz per gal that are planned.");
    expect(roundedOffPlan(byStrength, ounces("9"), "Measured out")).toEqual([]);
    expect(roundedOffPlan({ ...IRON, rate: ounces("0") }, ounces("1"), "Measured out")).toEqual([]);
  });
});

const offPlan = (question: Parameters<typeof ticketOf>[0]) => ticketOf(question).findings.filter(({ rule }) => rule === "rounded-off-plan" || rule === "rounded-below-lowest");
const onArea = (squareFeet: bigint) => ({ lawns: [{ ...LAWN, area: of("sq ft", squareFeet) }] });

test("a small lawn whose spray a coarse cup doubles is told so", () => {
  // 500 sq ft at 1 fl oz are half a fluid ounce; the cup's one mark is 1 fl oz, which is 2 fl oz per 1,000 sq ft.
  const cup = withIron({ rate: ounces("1"), tool: { name: "ounce cup", mark: exactly("fl oz", "1") } });
  expect(offPlan({ ...onArea(500n), ...cup })).toMatchObject([
    {
      level: "take-care",
      what: "Measured out for this visit alone, Rustwater Iron comes to more than planned.",
      figure: "It becomes 2 fl oz per 1,000 sq ft, 100% more than the 1 fl oz per 1,000 sq ft that are planned.",
    },
  ]);
  // 960 sq ft: 1.0417 fl oz per 1,000 sq ft.
  expect(offPlan({ ...onArea(960n), ...cup })).toMatchObject([{ level: "note", figure: "It becomes 1.04 fl oz per 1,000 sq ft, 4.2% more than the 1 fl oz per 1,000 sq ft that are planned." }]);
  expect(offPlan({ ...onArea(1000n), ...cup })).toEqual([]);
  expect(offPlan({ ...onArea(500n), ...withIron({ rate: ounces("1"), tool: "none" }) })).toEqual([]);
});

test("what comes below the label's lowest rate says that, and is not said twice", () => {
  const cup = withIron({ rate: ounces("1"), tool: { name: "ounce cup", mark: exactly("fl oz", "1") } });
  expect(offPlan({ ...onArea(1200n), ...cup }).map(({ rule }) => rule)).toEqual(["rounded-below-lowest"]);
});

test("what is spread is told by the visit, once for all its lawns", () => {
  const lawns = [380n, 420n].map((area, index) => ({ ...LAWN, zoneId: String(index), name: `Lawn ${String(index)}`, area: of("sq ft", area) }));
  // At 2.5 lb 0.95 lb and 1.05 lb, each weighed as 1 lb: 2 lb on 800 sq ft are the plan, and each lawn's own rate stands in its line.
  expect(offPlan({ lawns, ...withFeed({ zoneIds: ["0", "1"] }) })).toEqual([]);
  // 110 sq ft at 2.5 lb are 0.275 lb, weighed as a quarter pound.
  expect(offPlan({ ...onArea(110n), ...withFeed({}) })).toMatchObject([{ level: "note", what: "Weighed out, Harrowgate 32 comes to less than planned.", figure: "It becomes 2.27 lb per 1,000 sq ft, 9.1% less than the 2½ lb per 1,000 sq ft that are planned." }]);
  expect(offPlan({ ...onArea(110n), ...withFeed({ tool: "none" }) })).toEqual([]);
});
