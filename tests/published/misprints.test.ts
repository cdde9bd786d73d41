import { describe, test } from "vitest";
import { published } from "../support/published-check";
import { MISPRINT_CHECKS } from "./checks/misprint-checks";

describe("published misprints are not repeated", () => {
  test.each(published(MISPRINT_CHECKS))("$title", ({ run }) => run());
});
