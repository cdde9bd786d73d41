import { expect, test } from "vitest";
import { AFTERCARE_FIELDS, readAftercare, readSeedingAfter } from "#domain/label/label-aftercare";
import { AFTERCARE_KINDS, unreadFacts } from "#domain/label/aftercare-constraint";
import { accept } from "#domain/foundation/outcome";
import { A_PREVENTER_TEXT, aUseText } from "../../support/label-texts";

const AUTHORITY = { basis: "label", source: "label of Wardlow 19-0-7, page 2" } as const;

function factsOf(use: Parameters<typeof aUseText>[0]) {
  const read = readAftercare("Wardlow 19-0-7", aUseText(use), AUTHORITY);
  if (!read.ok) throw new Error(JSON.stringify(read.refusal));
  return read.value;
}

test("every kind of fact has a field", () => expect(Object.keys(AFTERCARE_FIELDS)).toEqual(AFTERCARE_KINDS));

test("what nobody has read is unknown, and is told so", () => {
  expect(unreadFacts(factsOf({}))).toEqual(AFTERCARE_KINDS);
});

test("a whole label: each stated fact has its words and who says so, and the rest is none", () => {
  const [use] = A_PREVENTER_TEXT.uses;
  const { facts } = factsOf(use);
  expect(facts["people-and-pets"]).toEqual({
    kind: "people-and-pets", untilLaterOf: [{ anchor: "state", state: "watered-in-and-dry" }],
    labelWords: "Keep people and pets off until watered in and dry.", ...AUTHORITY,
  });
  expect(facts["watering-in"]).toMatchObject({ by: { anchor: "days", from: "not-said", days: 7 }, rain: "counts", labelWords: "0.5 in within 7 days, rain counts", ...AUTHORITY });
  expect(facts["leaf-at-application"]).toMatchObject({ state: "dry", labelWords: "dry", ...AUTHORITY });
  expect(facts["mowing-after"]).toMatchObject({ untilLaterOf: [{ anchor: "state", state: "watered-in" }], ...AUTHORITY });
  expect(facts["seeding-before"]).toMatchObject({ within: { anchor: "days", from: "application-start", days: 60 }, ...AUTHORITY });
  expect(facts["seeding-after"]).toMatchObject({ intervals: [{ method: "any", until: { anchor: "calendar-month", months: 4 } }], ...AUTHORITY });
  for (const kind of ["watering-not-before", "rain-that-spoils", "soil-at-application", "mowing-before", "posting-sign"] as const) expect(facts[kind]).toBe("none");
});

test("seeding by method", () => {
  expect(readSeedingAfter("broadcast 3 months, slit seeding 4 months")).toEqual(
    accept({
      kind: "seeding-after",
      intervals: [
        { method: "broadcast", until: { anchor: "calendar-month", months: 3 } },
        { method: "slit", until: { anchor: "calendar-month", months: 4 } },
      ],
    }),
  );
  // The intervals of a study by method: Keeley and Zhou, Weed Technology 19(1), 2005.
  const weeks = (count: number) => ({ anchor: "days", from: "not-said", days: 7 * count });
  const byMethod = accept({ kind: "seeding-after", intervals: [{ method: "broadcast", until: weeks(6) }, { method: "slit", until: weeks(11) }] });
  for (const words of ["broadcast 6 weeks, slit 11 weeks", "broadcast seeding: 6 weeks; slit seeding: 11 weeks", "6 weeks for broadcast seeding, 11 weeks for slit seeding", "6 weeks before broadcast, 11 weeks when slit-seeded"]) {
    expect(readSeedingAfter(words), words).toEqual(byMethod);
  }
  expect(readSeedingAfter("broadcast 6 weeks, broadcast 11 weeks").ok).toBe(false);
  expect(readSeedingAfter("drilled 6 weeks").ok).toBe(false);
  expect(readSeedingAfter("3 months, 4 months").ok).toBe(false);
  expect(readSeedingAfter("until fall").ok).toBe(false);
});

test("mowings instead of a time, after a product and after seed", () => {
  expect(readSeedingAfter("after 2 mowings")).toEqual(accept({ kind: "seeding-after", intervals: [{ method: "any", until: { anchor: "mowings", count: 2 } }] }));
  expect(readSeedingAfter("broadcast after 2 mowings, slit 4 weeks")).toMatchObject({ value: { intervals: [{ method: "broadcast", until: { count: 2 } }, { method: "slit", until: { days: 28 } }] } });
  expect(factsOf({ seedingBefore: "until after the second mowing" }).facts["seeding-before"]).toMatchObject({ within: { anchor: "mowings", count: 2 } });
  const read = readAftercare("Wardlow", aUseText({ seedingBefore: "after 40 mowings", seedingAfter: "after some mowing", mowingAfter: "after 2 mowings" }), AUTHORITY);
  expect(read.ok ? [] : Object.keys(read.refusal).sort()).toEqual(["mowingAfter", "seedingAfter", "seedingBefore"]);
});

test("what can't be meant is complained of at its own field", () => {
  const read = readAftercare("Wardlow", aUseText({ wateringNotBefore: "until watered in", peopleAndPets: "90 months", leafAtApplication: "wet", mowingAfter: "until dry" }), AUTHORITY);
  expect(read.ok ? [] : Object.keys(read.refusal).sort()).toEqual(["leafAtApplication", "peopleAndPets", "wateringNotBefore"]);
});
