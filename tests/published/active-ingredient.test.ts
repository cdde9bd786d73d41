import { describe, test } from "vitest";
import { published } from "../support/published-check";
import { ACTIVE_INGREDIENT_CHECKS } from "./checks/active-ingredient-checks";

describe("published active ingredient", () => {
  test.each(published(ACTIVE_INGREDIENT_CHECKS))("$title", ({ run }) => run());
});
