import { beforeAll, expect, test } from "vitest";
import { previewTankReading } from "#application/fills/preview-tank-reading";
import { of } from "#domain/quantities/quantity";
import { valueOf } from "../../support/crew";
import { aSharedFill, tankReadingForm } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay("not-known");
beforeAll(async () => {
  await aSharedFill(house, company, day);
});

const preview = (change: Parameters<typeof tankReadingForm>[3] = {}) => previewTankReading(house, company.owner.key, tankReadingForm(house, day, company.owner.personId, change));

test("says what was found beside the books, in gallons and in every lot, and writes nothing", async () => {
  const before = await house.books();
  const reading = valueOf(await preview({ volume: "36", missingWent: "loss", note: "Spilled" }));
  expect(reading).toMatchObject({ readBy: company.owner.name, how: "Dipstick", volume: of("gal", 36n), missingWent: "loss", note: "Spilled", tank: { inTheBooks: of("gal", 40n), ofNoFill: of("gal", 0n) } });
  expect(reading.tank.lots).toMatchObject([{ lotNumber: "IR-1", inTheBooks: of("fl oz", 30n).amount, found: of("fl oz", 27n).amount, leaves: of("fl oz", 3n).amount }]);
  expect(reading.tank.fills).toMatchObject([{ inTheBooks: of("gal", 40n), left: of("gal", 36n) }]);
  expect(await house.books()).toEqual(before);
});

test("visits that are not recorded, more than the books have and more than the tank holds want care", async () => {
  const rulesOf = async (volume: string, missingWent: "loss" | "" = "") => valueOf(await preview({ volume, missingWent })).findings.map(({ rule }) => rule);
  expect(await rulesOf("36", "loss")).toEqual(["visits-not-recorded"]);
  expect(await rulesOf("41")).toEqual(["reading-above-books", "visits-not-recorded"]);
  expect(await rulesOf("104")).toEqual(["reading-above-capacity", "reading-above-books", "visits-not-recorded"]);
  const { openStreets } = valueOf(await preview({ volume: "36", missingWent: "loss" })).tank;
  expect(openStreets).toHaveLength(3);
});

test("refuses what recording it would refuse", async () => {
  expect(await preview({ volume: "36" })).toMatchObject({ ok: false, refusal: { kind: "bad-input" } });
  expect(await preview({ readAt: "9:01" })).toMatchObject({ ok: false, refusal: { kind: "bad-input" } });
  expect(await preview({ equipmentId: house.newId() })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});
