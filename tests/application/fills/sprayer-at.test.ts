import { expect, test } from "vitest";
import { sprayerAt } from "#application/fills/sprayer-at";
import { valueOf } from "../../support/crew";
import { CREW_DAY, inWorkOf } from "../../support/crew-day";
import { day as dateOf } from "../../support/domain-answers";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay("not-known");

const asked = (equipmentId: string, minuteOfDay: number) => inWorkOf(house, company, (work) => sprayerAt(work, equipmentId, { on: dateOf(CREW_DAY), minuteOfDay, field: "cleanedAt" }));

test("a sprayer with the moment, by the clock of the company", async () => {
  expect(valueOf(await asked(day.sprayerId, 450))).toMatchObject({ sprayer: { equipmentId: day.sprayerId }, at: new Date("2026-04-14T11:30:00Z") });
});

test("refused: what is not on file, what is no sprayer, and a moment that has not come yet", async () => {
  expect(await asked(house.newId(), 450)).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  expect(await asked(day.spreaderId, 450)).toMatchObject({ ok: false, refusal: { kind: "bad-input", fields: { equipmentId: expect.stringContaining("is no sprayer") as string } } });
  expect(await asked(day.sprayerId, 1439)).toMatchObject({ ok: false, refusal: { kind: "bad-input", fields: { cleanedAt: "This moment has not come yet." } } });
});
