import { describe, test } from "vitest";
import { published } from "../support/published-check";
import { LABEL_LIMIT_CHECKS } from "./checks/label-limit-checks";

describe("limits that pages advise and labels print", () => {
  test.each(published(LABEL_LIMIT_CHECKS))("$title", ({ run }) => run());
});
