import { describe, test } from "vitest";
import { published } from "../support/published-check";
import { SPREADER_CHECKS } from "./checks/spreader-checks";

describe("published spreaders", () => {
  test.each(published(SPREADER_CHECKS))("$title", ({ run }) => run());
});
