import { describe, expect, test } from "vitest";
import { accessNoteOnPaper, seemsToHoldCode } from "#domain/papers/route-sheet";

describe("a note that holds a code stays off paper", () => {
  test.each([
    "Keypad code 4417# at the gate.",
    "Gate code: 12 34",
    "alarm off with 9021",
    "Lockbox on the rail, 0042",
    "PIN is *771",
    "The combination of the padlock is 12-34-05",
  ])("%s", (note) => {
    expect(seemsToHoldCode(note)).toBe(true);
    expect(accessNoteOnPaper(note)).not.toMatch(/\d/);
  });
});

describe("an ordinary note is printed as it is", () => {
  test.each(["Gate is 36 in wide.", "Park at 1412, not at 1418.", "Dog in the yard until 9.", "Pin oak at the drive: keep 10 ft off.", "Ask for the code at the desk."])("%s", (note) => {
    expect(accessNoteOnPaper(note)).toBe(note);
  });
});
