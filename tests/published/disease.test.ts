import { describe, test } from "vitest";
import { published } from "../support/published-check";
import { DISEASE_CHECKS } from "./checks/disease-checks";

describe("published disease models", () => {
  test.each(published(DISEASE_CHECKS))("$title", ({ run }) => run());
});
