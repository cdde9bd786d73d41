import { describe, test } from "vitest";
import { published } from "../support/published-check";
import { ROUTE_CHECKS } from "./checks/route-checks";

describe("published ways and orders", () => {
  test.each(published(ROUTE_CHECKS))("$title", ({ run }) => run());
});
