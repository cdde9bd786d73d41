import { describe, test } from "vitest";
import { published } from "../support/published-check";
import { AREA_CHECKS } from "./checks/area-checks";

describe("published areas", () => {
  test.each(published(AREA_CHECKS))("$title", ({ run }) => run());
});
