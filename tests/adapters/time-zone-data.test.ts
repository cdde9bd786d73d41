import { expect, test } from "vitest";
import { timeZoneDataVersion } from "#adapters/time-zone-data";

test("the edition of the time zone data is a year and a letter", () => {
  expect(timeZoneDataVersion()).toMatch(/^20\d\d[a-z]$/u);
});
