import { describe, test } from "vitest";
import { published } from "../support/published-check";
import { NOZZLE_CHECKS } from "./checks/nozzle-checks";
import { SPRAYER_CHECKS } from "./checks/sprayer-checks";

describe("published sprayers", () => {
  test.each(published(SPRAYER_CHECKS))("$title", ({ run }) => run());
});

describe("published nozzles and densities", () => {
  test.each(published(NOZZLE_CHECKS))("$title", ({ run }) => run());
});
