import { describe, expect, test } from "vitest";
import { drawsTogether, fillsOfDraw, refuseOddDraw } from "#application/register/draws-together";
import { type MixAsked } from "#application/register/mixes-asked";
import { type MixEntered } from "#application/register/mix-entered";

const lone = (line: number, productId: string, ground = "front"): MixAsked => ({ key: String(line), lines: [line], lawns: [], ground, treatment: { line, productId } as never });
const mixed = (line: number, ground = "front"): MixAsked => ({ key: String(line), lines: [line], lawns: [], ground, mix: {} as never });
const metered = (amount: string, fillId: string | null, ...more: readonly (readonly [string, string])[]): MixEntered => ({
  measuredBy: "meter", amount, fillId, alsoFrom: more.map(([id, gallons], row) => ({ row: String(row), fillId: id, amount: gallons })),
});

describe("one pass out of one fill", () => {
  const keysOf = (asked: readonly MixAsked[], entered: Record<string, MixEntered>) => drawsTogether(asked, entered).map(({ lead, others }) => [lead.key, ...others.map(({ key }) => key)]);
  const SAME = { "1": metered("10", "7"), "2": metered("10", "7"), "3": metered("10", "7") };

  test("is what products without a ticket say that name the same fill for the same lawns", () => {
    expect(keysOf([lone(1, "iron"), lone(2, "herb")], SAME)).toEqual([["1", "2"]]);
    expect(keysOf([mixed(1), lone(2, "herb"), lone(3, "dye")], SAME)).toEqual([["1", "2", "3"]]);
    expect(keysOf([lone(1, "iron"), lone(2, "herb")], { ...SAME, "2": metered("10", "8", ["7", "10"]) })).toEqual([["1", "2"]]);
  });

  test("is not what goes on other lawns, out of another fill or none, the same product again, or two mixes with tickets", () => {
    expect(keysOf([lone(1, "iron"), lone(2, "herb", "back")], SAME)).toEqual([["1"], ["2"]]);
    expect(keysOf([lone(1, "iron"), lone(2, "herb")], { ...SAME, "2": metered("10", "8") })).toEqual([["1"], ["2"]]);
    expect(keysOf([lone(1, "iron"), lone(2, "herb")], { ...SAME, "2": metered("10", null) })).toEqual([["1"], ["2"]]);
    expect(keysOf([lone(1, "iron"), lone(2, "herb")], { "1": metered("10", "7") })).toEqual([["1"], ["2"]]);
    expect(keysOf([lone(1, "iron"), lone(2, "iron")], SAME)).toEqual([["1"], ["2"]]);
    expect(keysOf([mixed(1), mixed(2)], SAME)).toEqual([["1"], ["2"]]);
  });
});

test("its fills are each there once, with the gallons of the line that names it first", () => {
  const entered = { "1": metered("10", "7"), "2": metered("4", "8", ["7", ""]) };
  expect(fillsOfDraw({ lead: lone(1, "iron"), others: [lone(2, "herb")] }, entered)).toEqual([{ fillId: "7", amount: "10", field: "mixes.1" }, { fillId: "8", amount: "4", field: "mixes.2" }]);
});

test("lines that contradict each other are refused with the question which is right; the same in other words, or nothing, is not", () => {
  const refusal = (second: MixEntered) => refuseOddDraw({ lead: lone(1, "iron"), others: [lone(2, "herb")] }, { "1": metered("10 gal", "7"), "2": second }, () => 12);
  expect([refusal(metered("10", "7")), refusal(metered("40 qt", "7")), refusal(metered("", "7")), refusal(metered("10.0", "7", ["8", "3"]))]).toEqual([undefined, undefined, undefined, undefined]);
  const which = "Fill 12 was drawn from once for both, and above it says 10 gal. Which is right? Write the same gallons in both places, or leave these empty.";
  expect(refusal(metered("8", "7"))).toMatchObject({ fields: { "mixes.2.amount": which } });
  expect(refusal(metered("3", "8", ["7", "some"]))).toMatchObject({ fields: { "mixes.2.alsoFrom.0.amount": which } });
  expect(refusal({ ...metered("", "7"), measuredBy: "as-planned-not-measured" })).toMatchObject({ fields: { "mixes.2.measuredBy": expect.stringContaining("was that measured or not?") as string } });
});
