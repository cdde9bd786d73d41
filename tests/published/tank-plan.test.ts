import { describe, test } from "vitest";
import { published } from "../support/published-check";
import { TANK_PLAN_CHECKS } from "./checks/tank-plan-checks";

describe("published tank loads along a route", () => {
  test.each(published(TANK_PLAN_CHECKS))("$title", ({ run }) => run());
});
