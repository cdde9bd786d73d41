import { expect, test } from "vitest";
import { daysWords } from "#domain/foundation/days-words";

test("one day is one, and all other counts are days", () => {
  expect([0, 1, 2, 366].map(daysWords)).toEqual(["0 days", "1 day", "2 days", "366 days"]);
});
