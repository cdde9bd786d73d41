import { describe, expect, test } from "vitest";
import { seedingRates } from "#domain/turf/seed";
import { published } from "../support/published-check";
import { CARE_CHECKS, SEEDING_RATES_PRINTED } from "./checks/care-checks";
import { LIME_CHECKS } from "./checks/lime-checks";

describe("published seed and topdressing", () => {
  test.each(published(CARE_CHECKS))("$title", ({ run }) => run());
});

describe("published lime", () => {
  test.each(published(LIME_CHECKS))("$title", ({ run }) => run());
});

test("no seeding rate stands in the product's table that is not printed", () => {
  expect(seedingRates).toHaveLength(SEEDING_RATES_PRINTED);
});
