import { expect, test } from "vitest";
import { readDistanceToWater } from "#domain/label/label-distance";
import { of } from "#domain/quantities/quantity";

test.each([
  ["25 ft", 25n, 25n],
  ["3 ft with a deflector, 15 ft otherwise", 3n, 15n],
  ["15 ft otherwise; 3 ft with deflector", 3n, 15n],
  ["3 ft with the deflector\n15 ft without", 3n, 15n],
  ["3 ft with a deflector, 15 ft without a deflector", 3n, 15n],
  ["3 ft with a deflector, otherwise 5 yd", 3n, 15n],
  ["10 ft with a deflector, 10 ft otherwise", 10n, 10n],
] as const)("%s", (typed, withDeflector, otherwise) => {
  expect(readDistanceToWater(typed)).toEqual({ ok: true, value: { withDeflector: of("ft", withDeflector), otherwise: of("ft", otherwise) } });
});

test("inches and fractions are exact", () => {
  expect(readDistanceToWater("2 1/2 ft")).toMatchObject({ value: { otherwise: of("in", 30n) } });
});

test.each([
  ["far away", /25 ft/u],
  ["25", /25 ft/u],
  ["25 lb", /25 ft/u],
  ["0 ft", /Write none/u],
  ["3 ft with a deflector", /both distances/u],
  ["15 ft otherwise", /both distances/u],
  ["3 ft, 15 ft", /as in 25 ft/u],
  ["3 ft with a deflector, 15 ft otherwise, 20 ft near wells", /as in 25 ft/u],
  ["15 ft with a deflector, 3 ft otherwise", /farther away/u],
  ["far with a deflector, 3 ft otherwise", /25 ft/u],
  ["3 ft with a deflector, far otherwise", /25 ft/u],
] as const)("%s is refused", (typed, sentence) => {
  expect(readDistanceToWater(typed)).toMatchObject({ ok: false, refusal: expect.stringMatching(sentence) as unknown });
});
