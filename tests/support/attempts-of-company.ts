// Attempts with accounts, the company, its crew, its customers' ground, its gear and its shed.
import { changePassword } from "#application/accounts/change-password";
import { issueResetLink } from "#application/accounts/issue-reset-link";
import { changeCompany } from "#application/companies/change-company";
import { changeHouseSettings } from "#application/companies/change-house-settings";
import { readHouseSettings } from "#application/companies/read-house-settings";
import { readCompany } from "#application/companies/read-company";
import { addEquipment } from "#application/equipment/add-equipment";
import { addMeasuringTool } from "#application/equipment/add-measuring-tool";
import { addVehicle } from "#application/equipment/add-vehicle";
import { calibrateSprayer } from "#application/equipment/calibrate-sprayer";
import { calibrateSpreader } from "#application/equipment/calibrate-spreader";
import { changeEquipment } from "#application/equipment/change-equipment";
import { changeVehicle } from "#application/equipment/change-vehicle";
import { listEquipment } from "#application/equipment/list-equipment";
import { readCalibration } from "#application/equipment/read-calibration";
import { readEquipment } from "#application/equipment/read-equipment";
import { standDownEquipment } from "#application/equipment/stand-down-equipment";
import { standDownMeasuringTool } from "#application/equipment/stand-down-measuring-tool";
import { standDownVehicle } from "#application/equipment/stand-down-vehicle";
import { addLicense } from "#application/people/add-license";
import { addPerson } from "#application/people/add-person";
import { changePerson } from "#application/people/change-person";
import { changeRole } from "#application/people/change-role";
import { endMembership } from "#application/people/end-membership";
import { invitePerson } from "#application/people/invite-person";
import { listPeople } from "#application/people/list-people";
import { readPerson } from "#application/people/read-person";
import { withdrawInvitation } from "#application/people/withdraw-invitation";
import { withdrawLicense } from "#application/people/withdraw-license";
import { addProduct } from "#application/products/add-product";
import { confirmLabel } from "#application/products/confirm-label";
import { enterLabel } from "#application/products/enter-label";
import { listProducts } from "#application/products/list-products";
import { readProduct } from "#application/products/read-product";
import { retireProduct } from "#application/products/retire-product";
import { listMovements } from "#application/stock/list-movements";
import { listStock } from "#application/stock/list-stock";
import { moveStock } from "#application/stock/move-stock";
import { readPrices } from "#application/stock/read-prices";
import { receiveDelivery } from "#application/stock/receive-delivery";
import { stateDeliveryPrice } from "#application/stock/state-delivery-price";
import { addClient } from "#application/properties/add-client";
import { addProperty } from "#application/properties/add-property";
import { addSeeding } from "#application/properties/add-seeding";
import { addSoilTest } from "#application/properties/add-soil-test";
import { addStation } from "#application/properties/add-station";
import { addWaterEdge } from "#application/properties/add-water-edge";
import { addZone } from "#application/properties/add-zone";
import { changeClient } from "#application/properties/change-client";
import { changeProperty } from "#application/properties/change-property";
import { changeSeeding } from "#application/properties/change-seeding";
import { changeStation } from "#application/properties/change-station";
import { changeZone } from "#application/properties/change-zone";
import { checkCustomerList } from "#application/properties/check-customer-list";
import { importCustomers } from "#application/properties/import-customers";
import { listProperties } from "#application/properties/list-properties";
import { measureZone } from "#application/properties/measure-zone";
import { readCustomerList } from "#application/properties/read-customer-list";
import { readNutrientLedger } from "#application/properties/read-nutrient-ledger";
import { readProperty } from "#application/properties/read-property";
import { removeSeeding } from "#application/properties/remove-seeding";
import { removeWaterEdge } from "#application/properties/remove-water-edge";
import { removeZone } from "#application/properties/remove-zone";
import { sayNoWater } from "#application/properties/say-no-water";
import { chooseTemperatureSource } from "#application/temperatures/choose-temperature-source";
import { keepTemperatures } from "#application/temperatures/keep-temperatures";
import { previewTemperatures } from "#application/temperatures/preview-temperatures";
import { readTemperatures } from "#application/temperatures/read-temperatures";
import { aMember, aPerson, anInvitation, PASSWORD, type TestCompany, valueOf } from "./crew";
import { aCalibration, aMeasuringTool, aProduct, aSprayer, aSpreader, aVehicle, MEASURING_TOOL_FORM, sprayerCalibrationForm, sprayerForm, spreaderCalibrationForm, vehicleForm } from "./gear";
import { type TestHouse } from "./house";
import { aClient, aRow, aSeeding, aStation, aWaterEdge, aZone, clientForm, propertyForm, RECTANGLE, seedingForm, soilTestForm, stationForm, zoneForm } from "./ground";
import { aDelivery, aFeed, aLabelEntry, aTruck, deliveryForm, labelForm, lotOf, moveForm, priceForm, productForm } from "./shed";
import { attempt, type Prepare } from "./attempt";
import { aSource, temperaturesForm } from "./temperatures";

let members = 0;
const aPasserBy = (house: TestHouse, company: TestCompany) => aMember(house, company, "technician", `Passer-by ${String((members += 1))}`);

/** The license form, filled in; each number is used once. */
export function licenseForm(personId: string) {
  const number = `L-${String((members += 1))}`;
  return { personId, kind: "registered-technician", state: "IN", number, category: "3b Turf", issuedOn: "2026-01-02", expiresOn: "2026-12-31" } as const;
}

/** Every house setting another than the default. */
export const HOUSE_SETTINGS_CHANGE = {
  version: 1, calibrationValidDays: "180", samePressureWithinPsi: "3", granularPasses: "one-with-overlap", tankLoads: "full-tanks-then-a-short-one", heatCautionFromF: "85", heatCautionWarmFromF: "95",
  minutesPerStop: "10", minutesPerThousandSquareFeet: "5", tankMark: "0.5 gal", lineAtTheEnd: "left-as-it-is",
} as const;

/** The company form, as it is filled in when nobody has changed the company yet. */
export const COMPANY_CHANGE = {
  version: 1,
  name: "Foxtail Turf and Trees",
  state: "IL",
  timeZone: "America/Chicago",
  phone: "317 555 0142",
  address: "12 Clover Court, Millbrook, IN",
  businessLicenseNumber: "B-77",
  businessLicenseExpiresOn: "2026-12-31",
  insuranceExpiresOn: "2026-09-30",
} as const;

export const ATTEMPTS_OF_COMPANY = {
  "accounts/change-password": () => attempt(changePassword, { present: PASSWORD, next: "five other words in a row" }),
  "accounts/issue-reset-link": async (house, company) =>
    attempt(issueResetLink, { personId: (await aPasserBy(house, company)).personId }),
  "companies/change-company": () => attempt(changeCompany, COMPANY_CHANGE),
  "companies/change-house-settings": async (house, company) => {
    const [row] = await house.ask<{ version: number }>("select version from house_settings where company_id = $1", [company.companyId]);
    return attempt(changeHouseSettings, { ...HOUSE_SETTINGS_CHANGE, version: row?.version ?? 1 });
  },
  "companies/read-company": () => attempt(readCompany, {}),
  "companies/read-house-settings": () => attempt(readHouseSettings, {}),
  "people/add-license": async (house, company) => attempt(addLicense, licenseForm(await aPerson(house, company))),
  "people/add-person": () => attempt(addPerson, { name: "Robin Vale", phone: "317 555 0100" }),
  "people/change-person": async (house, company) =>
    attempt(changePerson, { personId: await aPerson(house, company), version: 1, name: "Robin Dale", phone: "", leftOn: "2026-04-01" }),
  "people/change-role": async (house, company) =>
    attempt(changeRole, { personId: (await aPasserBy(house, company)).personId, role: "office" }),
  "people/end-membership": async (house, company) => attempt(endMembership, { personId: (await aPasserBy(house, company)).personId }),
  "people/invite-person": async (house, company) =>
    attempt(invitePerson, { personId: await aPerson(house, company), email: "robin@vale.example", role: "applicator" }),
  "people/list-people": () => attempt(listPeople, {}),
  "people/read-person": (_house, company) => attempt(readPerson, { personId: company.owner.personId }),
  "people/withdraw-invitation": async (house, company) => {
    const { invitationId } = await anInvitation(house, company, await aPerson(house, company), "someone@vale.example");
    return attempt(withdrawInvitation, { invitationId });
  },
  "people/withdraw-license": async (house, company) => {
    const license = await addLicense(house, company.owner.key, licenseForm(await aPerson(house, company)));
    return attempt(withdrawLicense, { licenseId: valueOf(license).licenseId });
  },
  // The first of a company is in use at once, so that another one can be chosen.
  "temperatures/choose-temperature-source": async (house, company) => {
    await aSource(house, company);
    return attempt(chooseTemperatureSource, { source: await aSource(house, company) });
  },
  "temperatures/keep-temperatures": (house) => attempt(keepTemperatures, temperaturesForm(house, { source: `Yard ${house.newId()}` })),
  "temperatures/preview-temperatures": (house) => attempt(previewTemperatures, temperaturesForm(house, { source: `Yard ${house.newId()}` })),
  "temperatures/read-temperatures": () => attempt(readTemperatures, {}),
  "properties/add-client": () => attempt(addClient, clientForm()),
  "properties/add-property": async (house, company) => {
    const { street, city, state, zip } = clientForm();
    return attempt(addProperty, { clientId: (await aClient(house, company)).clientId, street, city, state, zip });
  },
  "properties/add-seeding": async (house, company) => attempt(addSeeding, { zoneId: (await aZone(house, company)).zoneId, ...seedingForm() }),
  "properties/add-soil-test": async (house, company) => attempt(addSoilTest, soilTestForm((await aZone(house, company)).zoneId)),
  "properties/add-station": async (house, company) => attempt(addStation, { propertyId: (await aClient(house, company)).propertyId, ...stationForm() }),
  "properties/add-water-edge": async (house, company) =>
    attempt(addWaterEdge, { zoneId: (await aZone(house, company)).zoneId, name: "Pond", length: "60 ft", width: "" }),
  "properties/add-zone": async (house, company) =>
    attempt(addZone, { propertyId: (await aClient(house, company)).propertyId, ...zoneForm(), measure: { kind: "piece" as const, piece: RECTANGLE } }),
  "properties/change-client": async (house, company) => {
    const { clientId } = await aClient(house, company);
    return attempt(changeClient, { clientId, version: 1, name: "Avery Dale", phone: "", email: "", standing: "paused" });
  },
  "properties/change-property": async (house, company) => attempt(changeProperty, propertyForm((await aClient(house, company)).propertyId)),
  "properties/change-seeding": async (house, company) => {
    const { seedingId } = await aSeeding(house, company);
    return attempt(changeSeeding, { seedingId, version: 1, ...seedingForm(), method: "broadcast" as const });
  },
  "properties/change-station": async (house, company) => {
    const { stationId } = await aStation(house, company);
    return attempt(changeStation, { stationId, version: 1, ...stationForm(), name: "Back" });
  },
  "properties/change-zone": async (house, company) =>
    attempt(changeZone, { zoneId: (await aZone(house, company)).zoneId, version: 1, ...zoneForm(), name: "Back" }),
  "properties/check-customer-list": () => attempt(checkCustomerList, { rows: [aRow()] }),
  "properties/import-customers": (house) => attempt(importCustomers, { listId: house.newId(), rows: [aRow()] }),
  "properties/list-properties": () => attempt(listProperties, {}),
  "properties/measure-zone": async (house, company) => {
    const { zoneId } = await aZone(house, company);
    return attempt(measureZone, { zoneId, version: 1, change: { kind: "enter-area" as const, area: "1,200 sq ft" } });
  },
  "properties/read-customer-list": () => attempt(readCustomerList, { text: "Customer,Street\nAvery Thorn,4 Sorrel Lane" }),
  "properties/read-nutrient-ledger": async (house, company) => attempt(readNutrientLedger, { propertyId: (await aClient(house, company)).propertyId }),
  "properties/read-property": async (house, company) => attempt(readProperty, { propertyId: (await aClient(house, company)).propertyId }),
  "properties/remove-seeding": async (house, company) => attempt(removeSeeding, { seedingId: (await aSeeding(house, company)).seedingId }),
  "properties/remove-water-edge": async (house, company) => attempt(removeWaterEdge, { waterEdgeId: await aWaterEdge(house, company) }),
  "properties/say-no-water": async (house, company) => attempt(sayNoWater, { propertyId: (await aZone(house, company, { waterBeside: "not-known" })).propertyId }),
  "properties/remove-zone": async (house, company) => attempt(removeZone, { zoneId: (await aZone(house, company)).zoneId }),
  "equipment/add-equipment": async (house, company) => attempt(addEquipment, sprayerForm(await aVehicle(house, company))),
  "equipment/add-measuring-tool": () => attempt(addMeasuringTool, MEASURING_TOOL_FORM),
  "equipment/add-vehicle": () => attempt(addVehicle, vehicleForm()),
  "equipment/calibrate-sprayer": async (house, company, actor = company.owner) =>
    attempt(calibrateSprayer, sprayerCalibrationForm(await aSprayer(house, company), actor.personId)),
  "equipment/calibrate-spreader": async (house, company, actor = company.owner) =>
    attempt(calibrateSpreader, spreaderCalibrationForm(await aSpreader(house, company), actor.personId, await aProduct(house, company))),
  "equipment/change-equipment": async (house, company) => {
    const vehicleId = await aVehicle(house, company);
    return attempt(changeEquipment, { equipmentId: await aSprayer(house, company), version: 1, ...sprayerForm(vehicleId), name: "The other tank" });
  },
  "equipment/change-vehicle": async (house, company) =>
    attempt(changeVehicle, { vehicleId: await aVehicle(house, company), version: 1, ...vehicleForm() }),
  "equipment/list-equipment": () => attempt(listEquipment, {}),
  "equipment/read-calibration": async (house, company) =>
    attempt(readCalibration, { calibrationId: await aCalibration(house, company, await aSprayer(house, company)) }),
  "equipment/read-equipment": async (house, company) => attempt(readEquipment, { equipmentId: await aSprayer(house, company) }),
  "equipment/stand-down-equipment": async (house, company) => attempt(standDownEquipment, { equipmentId: await aSprayer(house, company) }),
  "equipment/stand-down-measuring-tool": async (house, company) =>
    attempt(standDownMeasuringTool, { measuringToolId: await aMeasuringTool(house, company) }),
  "equipment/stand-down-vehicle": async (house, company) => attempt(standDownVehicle, { vehicleId: await aVehicle(house, company) }),
  "products/add-product": () => attempt(addProduct, productForm()),
  "products/confirm-label": async (house, company) =>
    attempt(confirmLabel, { labelEntryId: (await aLabelEntry(house, company, await aFeed(house, company))).labelEntryId }),
  "products/enter-label": async (house, company) => attempt(enterLabel, labelForm(await aFeed(house, company))),
  "products/list-products": () => attempt(listProducts, {}),
  "products/read-product": async (house, company) => attempt(readProduct, { productId: await aFeed(house, company) }),
  "products/retire-product": async (house, company) => attempt(retireProduct, { productId: await aFeed(house, company), version: 1 }),
  "stock/list-movements": async (house, company) => attempt(listMovements, { productId: await aFeed(house, company) }),
  "stock/list-stock": () => attempt(listStock, {}),
  "stock/move-stock": async (house, company) => {
    const productId = await aFeed(house, company);
    await aDelivery(house, company, productId);
    const lotId = await lotOf(house, productId);
    return attempt(moveStock, { ...moveForm(house, productId, `vehicle:${await aTruck(house, company)}`), lotId });
  },
  "stock/read-prices": async (house, company) => attempt(readPrices, { productId: await aFeed(house, company) }),
  "stock/state-delivery-price": async (house, company) => {
    const productId = await aFeed(house, company);
    await aDelivery(house, company, productId);
    return attempt(stateDeliveryPrice, await priceForm(house, productId));
  },
  "stock/receive-delivery": async (house, company) => attempt(receiveDelivery, deliveryForm(house, await aFeed(house, company))),
} satisfies Readonly<Record<string, Prepare>>;
