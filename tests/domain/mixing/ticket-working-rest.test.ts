import { expect, test } from "vitest";
import { exactly } from "#domain/quantities/exact-quantity";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { of, type Quantity } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { ticketRate } from "#domain/mixing/stated-rate";
import { allWorkings } from "#domain/mixing/ticket-working";
import { drawnWorking, leftOfProductWorking, leftWorking } from "#domain/mixing/ticket-working-rest";
import { sprayWorkings } from "#domain/mixing/ticket-working-spray";
import { faultsOf } from "../../support/read-working";
import { IRON, LAWN, QUESTION, SPRAYER, sprayOf, ticketOf } from "../../support/ticket";

const us = (amount: Quantity<"mass" | "volume">) => formatQuantity(amount, "us");
const strength = (value: string) => rateOf("product-volume-per-spray-volume", value, "fl oz per gal");
const USE = { ...IRON.use, rates: { basis: "product-volume-per-spray-volume", low: strength("1"), high: strength("2.5") } as const };
const TENTH = { name: "tenth cup", mark: exactly("fl oz", "0.1") };
const WEED = { ...IRON, line: 7, productId: "weed", label: { ...IRON.label, productName: "Tarnweed" }, ...ticketRate(strength("2.5"), USE, SPRAYER), rateText: "2.5 fl oz/gal", tool: TENTH };

/** 750 sq ft on two lawns take 1.125 gal, and marks of 1 gal make 2. */
const LAWNS = [{ ...LAWN, area: of("sq ft", 500n) }, { ...LAWN, zoneId: "back", letter: "B", name: "Back", area: of("sq ft", 250n) }];
const question = {
  ...QUESTION,
  lawns: LAWNS,
  treatments: [{ ...IRON, tool: TENTH, zoneIds: ["front", "back"] }, { ...WEED, zoneIds: ["front", "back"] }],
  settings: { ...QUESTION.settings, tankMark: exactly("gal", 1n) },
};
const mix = sprayOf(question);
const rest = mix?.rest;
if (mix === undefined || rest === undefined) throw new Error("Some of this tank is left.");

test("in a tank with anything by strength, everything is measured for the spray, and the ground gets the planned rates", () => {
  // By hand: 2 gal at 1 fl oz of the iron and 2.5 of the other in each; 1.125 gal of them go down, 1.5 gal on 1,000 sq ft.
  expect(mix.loads).toMatchObject([{ finished: of("gal", 2n), products: [{ line: 2, amount: of("fl oz", 2n) }, { line: 7, amount: of("fl oz", 5n) }] }]);
  expect(mix.lawns.map(({ finished, products }) => [finished, ...products.map(({ amount }) => amount)])).toEqual([
    [of("gal", "0.75"), of("fl oz", "0.75"), of("fl oz", "1.875")],
    [of("gal", "0.375"), of("fl oz", "0.375"), of("fl oz", "0.9375")],
  ]);
  expect(rest.finished).toEqual(of("gal", "0.875"));
  // To the last canonical unit, so that lawns and rest are what the loads are.
  expect(rest.products.map(({ line, amount }) => [line, us(amount)])).toEqual([[2, "0.875 fl oz"], [7, "2.19 fl oz"]]);
  for (const [index, { total }] of mix.products.entries()) {
    expect([...mix.lawns, rest].reduce((sum, { products }) => sum + (products[index]?.amount.amount ?? 0n), 0n)).toBe(total.amount);
  }
  expect(ticketOf(question).findings.filter(({ rule }) => rule === "rounded-off-plan")).toEqual([]);
});

test("every amount of it can be followed", () => {
  expect(allWorkings({ question, ticket: ticketOf(question), aftercare: [] }).flatMap(faultsOf)).toEqual([]);
  const workings = sprayWorkings(mix, question, ticketOf(question));
  expect(workings?.loads[0]?.products.map(({ working }) => working.steps[0])).toEqual(["2 gal ÷ 1 gal × 1 fl oz = 2 fl oz", "2 gal ÷ 1 gal × 2½ fl oz = 5 fl oz"]);
  expect(workings?.loads[0]?.products[0]?.working.inputs[1]).toEqual({ name: "Strength", figure: "1 fl oz per gal", from: "planned at 1.5 fl oz per 1,000 sq ft, in what the sprayer puts out" });
  expect(workings?.products.map(({ rate }) => rate.steps)).toEqual([["2 fl oz ÷ 2 gal × 1½ gal = 1½ fl oz"], ["5 fl oz ÷ 2 gal = 2½ fl oz per gal"]]);
  expect(workings?.rest?.products.map(({ line, working }) => [line, working.result])).toEqual([[2, "0.875 fl oz"], [7, "2.19 fl oz"]]);
});

test("what is left of the spray, and each product by volume", () => {
  const iron = { name: "Rustwater Iron", share: of("fl oz", "0.875"), whole: of("fl oz", 2n) };
  const [front] = mix.lawns;
  expect(leftWorking(mix, rest).steps).toEqual(["96 fl oz + 48 fl oz = 144 fl oz", "256 fl oz − 144 fl oz = 112 fl oz"]);
  expect(leftOfProductWorking(mix, rest, iron).steps).toEqual(["2 fl oz × 112 fl oz ÷ 256 fl oz = 0.875 fl oz"]);
  expect(front && drawnWorking(mix, front, { ...iron, share: of("fl oz", "0.75") }).steps).toEqual(["2 fl oz × 96 fl oz ÷ 256 fl oz = ¾ fl oz"]);
});

test("where nothing is left, lawns share all of it by their ground", () => {
  const even = { ...question, lawns: [{ ...LAWN, area: of("sq ft", 2000n) }], treatments: [WEED] };
  const whole = sprayOf(even);
  expect(whole?.rest).toEqual({ finished: of("gal", 0n), products: [{ line: 7, amount: of("fl oz", 0n), marks: null }] });
  const workings = whole && sprayWorkings(whole, even, ticketOf(even));
  expect([workings?.rest, workings?.lawns[0]?.products[0]?.working.steps]).toEqual([undefined, ["7½ fl oz × 2,000 sq ft ÷ 2,000 sq ft = 7½ fl oz"]]);
});
