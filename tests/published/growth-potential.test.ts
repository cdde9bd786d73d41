import { describe, test } from "vitest";
import { published } from "../support/published-check";
import { GROWTH_CHECKS } from "./checks/growth-checks";

describe("published growth potential", () => {
  test.each(published(GROWTH_CHECKS))("$title", ({ run }) => run());
});
