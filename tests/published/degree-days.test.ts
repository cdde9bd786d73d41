import { describe, test } from "vitest";
import { published } from "../support/published-check";
import { DEGREE_DAY_CHECKS } from "./checks/degree-day-checks";

describe("published degree days", () => {
  test.each(published(DEGREE_DAY_CHECKS))("$title", ({ run }) => run());
});
