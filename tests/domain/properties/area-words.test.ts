import { expect, test } from "vitest";
import { squareFeetWords } from "#domain/properties/area-words";
import { of } from "#domain/quantities/quantity";

test.each([["5420", "5,420 sq ft"], ["2173.5", "2,174 sq ft"], ["314.159", "314 sq ft"], ["0.25", "0 sq ft"]])("%s", (feet, words) => {
  expect(squareFeetWords(of("sq ft", feet))).toBe(words);
});
