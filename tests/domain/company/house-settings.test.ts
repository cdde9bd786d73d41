import { expect, test } from "vitest";
import { exactly } from "#domain/quantities/exact-quantity";
import { DEFAULT_HOUSE_SETTINGS } from "#domain/company/house-settings";

test("what holds until a company says otherwise", () => {
  expect(DEFAULT_HOUSE_SETTINGS).toEqual({
    calibrationValidDays: 365,
    samePressureWithinPsi: 2,
    granularPasses: "two-at-half-rate-crosswise",
    tankLoads: "same-size-every-time",
    heatCautionFromF: 80,
    heatCautionWarmFromF: 90,
    minutesPerStop: 8,
    minutesPerThousandSquareFeet: 4,
    tankMark: exactly("gal", "0.1"),
    lineAtTheEnd: "pushed-out-with-water",
  });
});
