import { expect, test } from "vitest";
import { previewCleanOut } from "#application/fills/preview-clean-out";
import { valueOf } from "../../support/crew";
import { aFedVisit, aFill, cleanOutForm } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay("not-known");

const preview = (change: Parameters<typeof cleanOutForm>[3] = {}) => previewCleanOut(house, company.owner.key, cleanOutForm(house, day, company.owner.personId, change));

test("says what would be written, in names, and writes nothing", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  const before = await house.books();
  expect(valueOf(await preview())).toMatchObject({
    cleanedAt: new Date("2026-04-14T11:30:00Z"), doneBy: company.owner.name, how: "Three times with ten gallons of water", rinsate: "into the shop's rinsate tank", findings: [],
  });
  expect(valueOf(await preview({ rinsateWent: "labeled-site", rinsateVisitId: visitId })).rinsate).toMatch(/^onto .+, within the label$/u);
  expect(await house.books()).toEqual(before);
});

test("a fill since then is said before it is written", async () => {
  const { number } = await aFill(house, company, day, [], { filledAt: "7:45" });
  expect(valueOf(await preview()).findings).toMatchObject([{ rule: "filled-since-clean-out", figure: `Fill ${String(number)} is what the tank held last; it is not cleaned out.` }]);
  expect(valueOf(await preview({ cleanedAt: "7:46" })).findings).toEqual([]);
});

test("refuses what recording it would refuse", async () => {
  expect(await preview({ cleanedAt: "9:01" })).toMatchObject({ ok: false, refusal: { kind: "bad-input" } });
  expect(await preview({ equipmentId: house.newId() })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});
