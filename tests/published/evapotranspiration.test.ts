import { describe, test } from "vitest";
import { published } from "../support/published-check";
import { EVAPOTRANSPIRATION_CHECKS } from "./checks/evapotranspiration-checks";

describe("published evapotranspiration", () => {
  test.each(published(EVAPOTRANSPIRATION_CHECKS))("$title", ({ run }) => run());
});
