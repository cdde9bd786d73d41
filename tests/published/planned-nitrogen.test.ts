import { describe, test } from "vitest";
import { published } from "../support/published-check";
import { PLANNED_NITROGEN_CHECKS } from "./checks/planned-nitrogen-checks";

describe("nitrogen of a planned feed", () => {
  test.each(published(PLANNED_NITROGEN_CHECKS))("$title", ({ run }) => run());
});
