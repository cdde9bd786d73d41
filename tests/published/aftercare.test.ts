import { describe, test } from "vitest";
import { published } from "../support/published-check";
import { AFTERCARE_CHECKS } from "./checks/aftercare-checks";

describe("published aftercare", () => {
  test.each(published(AFTERCARE_CHECKS))("$title", ({ run }) => run());
});
