import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { answeredBefore } from "#domain/register/former-answer";

const GIVEN = { reason: "the test is in the mail", by: "Dana Quill", license: "IL C-1", answeredAt: "2026-04-14T01:00:00.000Z" };
const ZONE = "America/Chicago";
const HOLD = { rule: "a-law", what: "Greenmere has phosphate.", figure: "No soil test shows a need on Front.", citation: "an act", about: ["Greenmere", "Front"], on: "2026-04-15" as CalendarDate };

test("says which hold was answered, for which day, by whom, when where the company is, and why", () => {
  expect(answeredBefore({ ...GIVEN, answered: HOLD }, ZONE)).toEqual({
    level: "note",
    rule: "answered-before-the-plan-changed",
    source: "law",
    what: "A hold was answered for Apr 15, 2026, before the plan changed.",
    figure: "It said: Greenmere has phosphate. No soil test shows a need on Front. Dana Quill, license IL C-1, on Apr 13, 2026: the test is in the mail.",
    citation: "an act",
    about: ["Greenmere", "Front"],
  });
});

test("a hold without a figure or a citation is said without them", () => {
  const said = answeredBefore({ ...GIVEN, answered: { ...HOLD, figure: null, citation: null } }, ZONE);
  expect(said.figure).toBe("It said: Greenmere has phosphate. Dana Quill, license IL C-1, on Apr 13, 2026: the test is in the mail.");
  expect(said).not.toHaveProperty("citation");
});

test("where it was not kept what was answered it is said so", () => {
  const said = { what: "A hold was answered, and it was not kept which.", figure: "Dana Quill, license IL C-1, on Apr 13, 2026: the test is in the mail.", about: [] };
  expect(answeredBefore(GIVEN, ZONE)).toMatchObject(said);
  expect(answeredBefore({ ...GIVEN, answered: null }, ZONE)).toMatchObject(said);
});
