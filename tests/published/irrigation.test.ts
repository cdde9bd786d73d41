import { describe, test } from "vitest";
import { published } from "../support/published-check";
import { IRRIGATION_CHECKS } from "./checks/irrigation-checks";

describe("published irrigation", () => {
  test.each(published(IRRIGATION_CHECKS))("$title", ({ run }) => run());
});
