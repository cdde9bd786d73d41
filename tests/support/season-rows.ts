// One row of a company in each table of its season, for tests of what holds for every table whatever its use cases.
import { createHash } from "node:crypto";
import { type Prisma } from "#adapters/postgres/generated/client";
import { asGuest } from "#adapters/postgres/company-work";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { type TestCompany } from "./crew";
import { type TestHouse } from "./house";

/** Writes the rows as the web role, under the company's own policy. */
export async function writeSeasonRows(house: TestHouse, company: TestCompany): Promise<void> {
  const { companyId } = company;
  const personId = company.owner.personId;
  const at = house.now();
  const day = new Date("2026-04-14T00:00:00Z");
  const ids = Object.fromEntries(
    ["client", "property", "zone", "station", "product", "entry", "lot", "supplier", "shop", "posting", "vehicle", "equipment", "program", "round", "visit", "day", "fill", "record", "reading"].map(
      (name) => [name, house.newId()] as const,
    ),
  ) as Record<string, string>;
  const id = (name: string) => ids[name] ?? "";
  const area = of("sq ft", 2000n).amount;
  const rate = rateOf("product-mass-per-area", "2.5", "lb per 1,000 sq ft");
  const rateColumns = { rateBasis: rate.basis, rateAmount: rate.amount, ratePer: rate.per, rateText: "2.5 lb per 1,000 sq ft" };
  await asGuest(house.client, companyId, async (tx) => {
    await tx.client.create({ data: { companyId, clientId: id("client"), name: "Avery Thorn", createdAt: at } });
    await tx.property.create({
      data: { companyId, propertyId: id("property"), clientId: id("client"), street: "4 Sorrel Lane", city: "Millbrook", state: "IN", zip: "46304", createdAt: at },
    });
    await tx.zone.create({
      data: { companyId, zoneId: id("zone"), propertyId: id("property"), letter: "A", name: "Front", grasses: ["tall fescue"], grassesAssumed: false, pieces: [], area, areaOrigin: "entered", createdAt: at },
    });
    await tx.waterEdge.create({ data: { companyId, waterEdgeId: house.newId(), zoneId: id("zone"), name: "Pond", createdAt: at } });
    await tx.soilTest.create({
      data: { companyId, soilTestId: house.newId(), zoneId: id("zone"), sampledOn: day, laboratory: "A laboratory", phosphorusWord: "Low", phosphorus: "deficient", createdAt: at },
    });
    await tx.seeding.create({ data: { companyId, seedingId: house.newId(), zoneId: id("zone"), date: day, kind: "sod", standing: "done", createdAt: at } });
    await tx.lawnLook.create({
      data: { companyId, lawnLookId: house.newId(), requestId: house.newId(), zoneId: id("zone"), seenAt: at, enteredAt: at, seenById: personId, personId, blooms: "no" },
    });
    await tx.station.create({ data: { companyId, stationId: id("station"), propertyId: id("property"), number: 1, name: "Front", createdAt: at } });
    await tx.stationZone.create({ data: { companyId, stationId: id("station"), zoneId: id("zone") } });

    await tx.product.create({ data: { companyId, productId: id("product"), name: "Feed", form: "granular", countedBy: "mass", createdAt: at } });
    await tx.labelEntry.create({ data: { companyId, labelEntryId: id("entry"), productId: id("product"), number: 1, facts: {}, personId, enteredAt: at } });
    await tx.labelConfirmation.create({ data: { companyId, labelConfirmationId: house.newId(), labelEntryId: id("entry"), personId, confirmedAt: at } });
    await tx.lot.create({
      data: { companyId, lotId: id("lot"), productId: id("product"), number: "L1", container: "bag", containerSize: of("lb", 50n).amount, createdAt: at },
    });
    await tx.vehicle.create({ data: { companyId, vehicleId: id("vehicle"), number: 1, name: "Truck", createdAt: at } });
    await tx.equipment.create({
      data: { companyId, equipmentId: id("equipment"), vehicleId: id("vehicle"), name: "Tank", kind: "hose-and-gun", capacity: of("gal", 100n).amount, createdAt: at },
    });
    await tx.measuringTool.create({ data: { companyId, measuringToolId: house.newId(), name: "Scale", dimension: "mass", mark: "0.25 lb", createdAt: at } });
    await tx.calibration.create({
      data: {
        companyId, calibrationId: house.newId(), equipmentId: id("equipment"), operatorId: personId, method: "timed course", inputs: {},
        rateBasis: "carrier-volume-per-area", rateAmount: 1n, ratePer: 1n, madeOn: day, enteredAt: at,
      },
    });
    for (const kind of ["supplier", "shop"]) {
      await tx.stockLocation.create({ data: { companyId, stockLocationId: id(kind), kind, name: kind, createdAt: at } });
    }
    await tx.stockPosting.create({
      data: { companyId, stockPostingId: id("posting"), kind: "receive", requestId: house.newId(), happenedAt: at, enteredAt: at, personId },
    });
    const entry = { companyId, stockPostingId: id("posting"), lotId: id("lot") };
    await tx.stockEntry.create({ data: { ...entry, line: 1, stockLocationId: id("supplier"), amount: -of("lb", 50n).amount } });
    await tx.stockEntry.create({ data: { ...entry, line: 2, stockLocationId: id("shop"), amount: of("lb", 50n).amount } });
    await tx.deliveryPrice.create({
      data: { companyId, stockPostingId: id("posting"), line: 2, number: 1, requestId: house.newId(), paidPerContainerCents: 3375n, statedAt: at, personId },
    });

    await tx.program.create({ data: { companyId, programId: id("program"), name: "Feeding", season: 2026, createdAt: at } });
    await tx.round.create({
      data: { companyId, roundId: id("round"), programId: id("program"), position: 1, name: "Spring feed", opensOn: day, closesOn: day, createdAt: at },
    });
    await tx.roundTreatment.create({
      data: { companyId, roundId: id("round"), line: 1, productId: id("product"), labelUse: "Feeding", ...rateColumns, reason: "feed" },
    });
    await tx.visit.create({
      data: { companyId, visitId: id("visit"), propertyId: id("property"), roundId: id("round"), name: "Spring feed", opensOn: day, closesOn: day, serviceMinutes: 30, createdAt: at },
    });
    await tx.visitTask.create({
      data: { companyId, visitId: id("visit"), line: 1, kind: "treatment", productId: id("product"), labelUse: "Feeding", ...rateColumns, reason: "feed" },
    });
    await tx.visitTaskZone.create({ data: { companyId, visitId: id("visit"), line: 1, zoneId: id("zone") } });
    await tx.routeDay.create({
      data: { companyId, routeDayId: id("day"), date: day, vehicleId: id("vehicle"), operatorId: personId, startsAtMinute: 420, endsAtMinute: 1020, createdAt: at },
    });
    await tx.stop.create({ data: { companyId, visitId: id("visit"), routeDayId: id("day"), position: 1 } });
    await tx.mixTicket.create({
      data: { companyId, mixTicketId: house.newId(), visitId: id("visit"), number: 1, snapshot: {}, rulesVersion: "1", personId, issuedAt: at },
    });
    await tx.holdAnswer.create({
      data: { companyId, holdAnswerId: house.newId(), visitId: id("visit"), rule: "a-rule", answeredHold: "", reason: "It does not apply.", personId, licenseId: company.licenseId, answeredAt: at },
    });
    await tx.fill.create({
      data: {
        companyId, fillId: id("fill"), equipmentId: id("equipment"), number: 1, finishedVolume: of("gal", 40n).amount, filledAt: at, enteredAt: at, personId,
        mixingPlace: "Shop", stockPostingId: id("posting"), plannedVisitIds: [id("visit")],
      },
    });
    await tx.cleanOut.create({
      data: {
        companyId, cleanOutId: house.newId(), requestId: house.newId(), equipmentId: id("equipment"), cleanedAt: at, enteredAt: at, doneById: personId, personId,
        how: "Three rinses", rinsateWent: "labeled-site", rinsateVisitId: id("visit"),
      },
    });
    await tx.houseSettings.create({
      data: {
        companyId, calibrationValidDays: 365, samePressureWithinPsi: 2, granularPasses: "one-with-overlap", tankLoads: "same-size-every-time", heatCautionFromF: 80, heatCautionWarmFromF: 90,
        minutesPerStop: 8, minutesPerThousandSquareFeet: 4, tankMark: "0.1 gal", lineAtTheEnd: "left-as-it-is", version: 2,
      },
    });
    await tx.dailyTemperature.create({
      data: {
        companyId, source: "Yard", date: day, entryNumber: 1, requestId: house.newId(), scale: "fahrenheit", highTenths: 650, lowTenths: 400, figuresFrom: "The thermometer",
        enteredAt: at, personId,
      },
    });
    await tx.tankReading.create({
      data: {
        companyId, tankReadingId: id("reading"), requestId: house.newId(), equipmentId: id("equipment"), readAt: at, enteredAt: at, readById: personId, personId,
        how: "Dipstick", volume: of("gal", 36n).amount, inTheBooks: of("gal", 40n).amount, ofNoFill: 0n, missingWent: "loss",
      },
    });
    await tx.fillRest.create({
      data: {
        companyId, fillRestId: house.newId(), fillId: id("fill"), tankReadingId: id("reading"), settledAt: at, inTheBooks: of("gal", 40n).amount, remaining: of("gal", 36n).amount,
      },
    });
    const content = '{"said":"once"}';
    const previousHash = new Uint8Array(32);
    const hash = new Uint8Array(createHash("sha256").update(previousHash).update(content, "utf8").digest());
    await tx.registerEntry.create({
      data: {
        companyId, registerEntryId: id("record"), number: 1, kind: "record", visitId: id("visit"), requestId: house.newId(), content, hash, previousHash,
        startedAt: at, endedAt: at, applicatorId: personId, writtenAt: at, personId,
      },
    });
    await tx.fillDraw.create({
      data: { companyId, fillId: id("fill"), visitId: id("visit"), registerEntryId: id("record"), volume: of("gal", 4n).amount, isMeasured: true },
    });
    await tx.issuedPaper.create({
      data: { companyId, issuedPaperId: house.newId(), kind: "route-sheet", subjectId: id("day"), data: {} satisfies Prisma.InputJsonObject, rulesVersion: "1", personId, issuedAt: at },
    });
  });
}
