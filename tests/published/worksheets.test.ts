import { describe, test } from "vitest";
import { published } from "../support/published-check";
import { WORKSHEET_CHECKS } from "./checks/worksheet-checks";

describe("what worksheets show of published examples", () => {
  test.each(published(WORKSHEET_CHECKS))("$title", ({ run }) => run());
});
