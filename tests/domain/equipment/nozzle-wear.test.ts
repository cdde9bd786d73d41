import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { judgeSpread, judgeWear, USUAL_SPREAD_LIMIT } from "#domain/equipment/nozzle-wear";
import { averageOf } from "#domain/equipment/repeats";
import { compareExact, exactly } from "#domain/quantities/exact-quantity";
import { of, zero } from "#domain/quantities/quantity";
import { compareRational, decimal, rational, ZERO } from "#domain/quantities/rational";
import { refusalOf, valueOf } from "../../support/domain-answers";
import { anyQuantity } from "../../support/quantity-arbitraries";
import { saying } from "../../support/said";

const flow = (nozzle: string, fluidOunces: string) => ({ nozzle, flowPerMinute: exactly("fl oz", fluidOunces) });
const newTip = of("fl oz", 50n);

describe("wear", () => {
  test.each([
    ["55", undefined],
    ["55.1", "nozzle-worn"],
    ["45", undefined],
    ["44.9", "nozzle-gives-too-little"],
  ])("%s fl oz a minute against 50 new: %s", (caught, rule) => {
    const { findings } = valueOf(judgeWear(flow("tip 3", caught), newTip));
    expect(findings.map((finding) => finding.rule)).toEqual(rule === undefined ? [] : [rule]);
  });

  test("is said with its figures, and what to do", () => {
    const { overNew, findings } = valueOf(judgeWear(flow("tip 3", "56"), newTip));
    expect(compareRational(overNew, decimal("0.12"))).toBe(0);
    expect(findings).toEqual([
      {
        level: "take-care",
        rule: "nozzle-worn",
        source: "common-practice",
        what: "tip 3 gives 12% more than a new tip.",
        figure: "56 fl oz a minute against 50 fl oz new; up to 10% is usual.",
        toDo: "Replace the tip and calibrate again.",
        about: ["tip 3"],
      },
    ]);
  });

  test("holds both flows against each other in one unit", () => {
    const figure = (caught: string, fresh: bigint) => valueOf(judgeWear(flow("tip 3", caught), of("fl oz", fresh))).findings[0]?.figure;
    expect(figure("140", 120n)).toBe("140 fl oz a minute against 120 fl oz new; up to 10% is usual.");
    expect(figure("100", 130n)).toBe("100 fl oz a minute against 130 fl oz new; up to 10% is usual.");
    expect(figure("160", 140n)).toBe("1¼ gal a minute against 1.09 gal new; up to 10% is usual.");
    const sprayed = { ...flow("tip 3", "140"), caughtPerMinute: exactly("fl oz", "126") };
    expect(valueOf(judgeWear(sprayed, of("fl oz", 120n))).findings[0]?.figure).toBe("140 fl oz a minute of water, as 126 fl oz of the spray come to, against 120 fl oz new; up to 10% is usual.");
  });

  test("is refused for a flow of nothing", () => {
    expect(refusalOf(judgeWear(flow("tip 3", "0"), newTip))).toMatchObject({ field: "flowPerMinute", sentence: saying("tip 3") });
    expect(refusalOf(judgeWear(flow("tip 3", "50"), zero("volume"))).field).toBe("newFlowPerMinute");
  });
});

describe("the spread of a boom", () => {
  const boom = [flow("tip 1", "50"), flow("tip 2", "50"), flow("tip 3", "40"), flow("tip 4", "60")];

  test("names the nozzles that are off their average", () => {
    const { averagePerMinute, findings } = valueOf(judgeSpread(boom, USUAL_SPREAD_LIMIT));
    expect(compareExact(averagePerMinute, newTip)).toBe(0);
    expect(findings.map(({ about, what }) => [about, what])).toEqual([
      [["tip 3"], "tip 3 gives 20% less than the average of the boom."],
      [["tip 4"], "tip 4 gives 20% more than the average of the boom."],
    ]);
    expect(findings[0]).toMatchObject({ level: "take-care", source: "handbook", citation: saying("Ohio State") });
  });

  test("allows a tenth", () => {
    const pair = (left: string, right: string) => valueOf(judgeSpread([flow("left", left), flow("right", right)], USUAL_SPREAD_LIMIT)).findings;
    expect(pair("45", "55")).toHaveLength(0);
    expect(pair("44.9", "55.1")).toHaveLength(2);
  });

  test("is held against the company's own limit where it has one", () => {
    const own = { percent: decimal("20"), source: "house" } as const;
    expect(valueOf(judgeSpread(boom, own)).findings).toEqual([]);
    const [finding] = valueOf(judgeSpread(boom, { ...own, percent: decimal("19.9") })).findings;
    expect(finding).toMatchObject({ source: "house", figure: saying("up to 19.9%") });
    expect(finding).not.toHaveProperty("citation");
  });

  test("comes out even: the distances add up to nothing, whatever the flows", () => {
    fc.assert(
      fc.property(fc.array(anyQuantity("volume", 1n), { minLength: 1, maxLength: 12 }), (volumes) => {
        const flows = volumes.map((flowPerMinute, index) => ({ nozzle: `tip ${index + 1}`, flowPerMinute }));
        const { nozzles } = valueOf(judgeSpread(flows, USUAL_SPREAD_LIMIT));
        expect(compareRational(averageOf(nozzles.map(({ fromAverage }) => fromAverage)), ZERO)).toBe(0);
      }),
    );
  });

  test("of one nozzle is none", () => {
    expect(valueOf(judgeSpread([flow("wand", "50")], USUAL_SPREAD_LIMIT)).nozzles).toEqual([
      { nozzle: "wand", fromAverage: rational(0n) },
    ]);
  });

  test("is refused for no nozzle and for empty ones", () => {
    expect(refusalOf(judgeSpread([], USUAL_SPREAD_LIMIT)).field).toBe("nozzles");
    expect(refusalOf(judgeSpread([flow("tip 1", "0")], USUAL_SPREAD_LIMIT)).field).toBe("nozzles");
  });
});
