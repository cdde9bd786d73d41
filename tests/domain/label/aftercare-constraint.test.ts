import { expect, test } from "vitest";
import { AFTERCARE_KINDS, aftercareFactNames, statedConstraint, unreadFacts } from "#domain/label/aftercare-constraint";
import { FEED, IRON, labelOf } from "../../support/aftercare-builders";

test("a stated fact is a list of one, with its authority and its words", () => {
  expect(statedConstraint(IRON, "watering-not-before")).toEqual([
    {
      kind: "watering-not-before",
      untilLaterOf: [{ anchor: "application-end", durationMinutes: 720 }],
      labelWords: "Do not irrigate for 12 hours.",
      basis: "label",
      source: "label, directions for use",
    },
  ]);
});

test("none and unknown are both empty, and only unknown is unread", () => {
  const label = labelOf("Alpha", { "watering-in": "unknown", "people-and-pets": "unknown" });
  expect(statedConstraint(label, "watering-in")).toEqual([]);
  expect(statedConstraint(label, "mowing-after")).toEqual([]);
  expect(unreadFacts(label)).toEqual(["people-and-pets", "watering-in"]);
  expect(unreadFacts(FEED)).toEqual([]);
});

test("every kind has a name for a sentence, each its own", () => {
  expect(AFTERCARE_KINDS).toHaveLength(11);
  expect(new Set(Object.values(aftercareFactNames)).size).toBe(11);
});
