import { describe, expect, test } from "vitest";
import { annualNitrogenRanges } from "#domain/turf/annual-nitrogen";
import { published } from "../support/published-check";
import { FERTILIZER_CHECKS } from "./checks/fertilizer-checks";
import { NITROGEN_CHECKS, RANGES_PRINTED } from "./checks/nitrogen-checks";

describe("published fertilizer arithmetic", () => {
  test.each(published(FERTILIZER_CHECKS))("$title", ({ run }) => run());
});

describe("published nitrogen of a year", () => {
  test.each(published(NITROGEN_CHECKS))("$title", ({ run }) => run());

  test("nothing stands in the product's table that is not printed", () => {
    expect(annualNitrogenRanges).toHaveLength(RANGES_PRINTED);
  });
});
