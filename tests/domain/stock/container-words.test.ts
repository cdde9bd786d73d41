import { expect, test } from "vitest";
import { of } from "#domain/quantities/quantity";
import { amountInContainers, containersOf, stockInWords } from "#domain/stock/container-words";

const bag = of("lb", "50");
const jug = of("gal", "2.5");

test.each([
  [1n, "bag", bag, "1 bag of 50 lb"],
  [12n, "bag", bag, "12 bags of 50 lb"],
  [2n, "jug", jug, "2 jugs of 2\u00BD gal"],
  [3n, "box", of("lb", "10"), "3 boxes of 10 lb"],
] as const)("%s %s", (count, container, size, words) => expect(containersOf(count, container, size)).toBe(words));

test("an amount is counted in whole containers and what is in an open one", () => {
  expect(amountInContainers(of("lb", "600").amount, "bag", bag)).toBe("12 bags of 50 lb");
  expect(amountInContainers(of("lb", "573").amount, "bag", bag)).toBe("11 bags of 50 lb and 23 lb");
  expect(amountInContainers(of("lb", "23").amount, "bag", bag)).toBe("23 lb");
  expect(amountInContainers(0n, "bag", bag)).toBe("0 oz wt");
  expect(amountInContainers(-of("lb", "23").amount, "bag", bag)).toBe("23 lb too few");
});

test("a sum is said in the unit of its size, and below zero what is missing", () => {
  expect(stockInWords(of("gal", "5").amount, "volume")).toBe("5 gal");
  expect(stockInWords(-of("fl oz", "24").amount, "volume")).toBe("24 fl oz too few");
});
