import { describe, test } from "vitest";
import { published } from "../support/published-check";
import { MIX_TICKET_CHECKS } from "./checks/mix-ticket-checks";

describe("published figures through a mix ticket", () => {
  test.each(published(MIX_TICKET_CHECKS))("$title", ({ run }) => run());
});
