import { describe, test } from "vitest";
import { published } from "../support/published-check";
import { NITROGEN_CAP_CHECKS } from "./checks/nitrogen-cap-checks";

describe("what law and handbooks let of nitrogen down", () => {
  test.each(published(NITROGEN_CAP_CHECKS))("$title", ({ run }) => run());
});
