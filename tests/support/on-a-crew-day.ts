// The house, the company and the truck's day that the tests of a file stand on. Its own hooks set them anew for every file,
// because files of one worker share this module.
import { afterAll, beforeAll, beforeEach } from "vitest";
import { aCompany, type TestCompany } from "./crew";
import { aCrewDay, type CrewDay } from "./crew-day";
import { openHouse, type TestHouse } from "./house";

export let house: TestHouse;
export let company: TestCompany;
export let day: CrewDay;

/** Each test of the file is on a crew day of its own, in a company of its own. */
export function eachOnACrewDay(tank?: Parameters<typeof aCrewDay>[2]): void {
  inAHouse();
  beforeEach(() => onACrewDay(tank));
}

/** All tests of the file are on one crew day. */
export function allOnACrewDay(tank?: Parameters<typeof aCrewDay>[2]): void {
  inAHouse();
  beforeAll(() => onACrewDay(tank));
}

function inAHouse(): void {
  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(() => house.close());
}

async function onACrewDay(tank: Parameters<typeof aCrewDay>[2]): Promise<void> {
  company = await aCompany(house);
  day = await aCrewDay(house, company, tank);
}
