import { expect, test } from "vitest";
import { addEquipment } from "#application/equipment/add-equipment";
import { latestCleanOuts } from "#application/fills/clean-outs-on-file";
import { aCompany, valueOf } from "../../support/crew";
import { aCleanOut, aFedVisit, inWorkOf } from "../../support/crew-day";
import { sprayerForm } from "../../support/gear";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay("not-known");

const latest = () => inWorkOf(house, company, latestCleanOuts);
const record = (change: Parameters<typeof aCleanOut>[3]) => aCleanOut(house, company, day, change);

test("the latest by the clock, whichever was entered last, with who, how and where the rinsate went", async () => {
  expect(await latest()).toEqual(new Map());
  const { cleanOutId } = await record({ cleanedAt: "7:30" });
  await record({ cleanedAt: "6:00", rinsateWent: "elsewhere", rinsateWhere: "Gravel behind the shop" });
  expect(await inWorkOf(house, await aCompany(house, "Other Turf"), latestCleanOuts)).toEqual(new Map());
  expect(await latest()).toEqual(
    new Map([
      [
        day.sprayerId,
        {
          cleanOutId, cleanedOn: "2026-04-14", cleanedAt: new Date("2026-04-14T11:30:00Z"), doneBy: company.owner.name,
          how: "Three times with ten gallons of water", rinsate: "into the shop's rinsate tank",
        },
      ],
    ]),
  );
});

test("each sprayer has its own, and of one minute the one that was entered last", async () => {
  const { equipmentId } = valueOf(await addEquipment(house, company.owner.key, sprayerForm(day.vehicleId)));
  await record({ equipmentId, cleanedAt: "6:30", how: "Twice with water" });
  house.pass(1);
  const { cleanOutId } = await record({ equipmentId, cleanedAt: "6:30", how: "Once more with cleaner" });
  const found = await latest();
  expect([...found.keys()].toSorted()).toEqual([day.sprayerId, equipmentId].toSorted());
  expect(found.get(equipmentId)).toMatchObject({ cleanOutId, how: "Once more with cleaner" });
});

test("a visit whose lawn took the rinsate is named by its street, and a site in words by those", async () => {
  const { visitId, propertyId } = await aFedVisit(house, company, day);
  const [row] = await house.ask<{ street: string }>("select street from property where property_id = $1", [propertyId]);
  await record({ cleanedAt: "7:40", rinsateWent: "labeled-site", rinsateVisitId: visitId });
  expect((await latest()).get(day.sprayerId)?.rinsate).toBe(`onto ${row?.street ?? ""}, within the label`);
  await record({ cleanedAt: "7:50", rinsateWent: "labeled-site", rinsateWhere: "The shop's own lawn" });
  expect((await latest()).get(day.sprayerId)?.rinsate).toBe("onto The shop's own lawn, within the label");
});
