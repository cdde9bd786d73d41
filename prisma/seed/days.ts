/**
 * Today and tomorrow of the demonstration: two trucks each, with stops, customers' hours, a forecast, and an order found
 * by the house itself. Tomorrow's second truck has an applicator whose license ran out, so that there is something to decide.
 */
import { type SessionKey } from "#adapters/postgres/company-work";
import { addRouteDay } from "#application/days/add-route-day";
import { enterForecast } from "#application/days/enter-forecast";
import { orderDay } from "#application/days/order-day";
import { pinVisit } from "#application/days/pin-visit";
import { placeVisit } from "#application/days/place-visit";
import { readDay } from "#application/days/read-day";
import { setShopPosition } from "#application/days/set-shop-position";
import { listEquipment } from "#application/equipment/list-equipment";
import { listPeople } from "#application/people/list-people";
import { type House } from "#application/use-case";
import { issueMixTicket } from "#application/visits/issue-mix-ticket";
import { listVisits } from "#application/visits/list-visits";
import { addDays, type CalendarDate } from "#domain/foundation/calendar-date";
import { must } from "./must";

export interface DaysSeed {
  readonly key: SessionKey;
  readonly house: House;
  /** The company's own today. */
  readonly today: CalendarDate;
}

interface Run {
  readonly truck: number;
  readonly operator: string;
  /** Which visits, by their names; the first of each that is on no day. */
  readonly visits: readonly (readonly [string, number])[];
}

interface DayOfTrucks {
  readonly daysAhead: number;
  readonly highF: number;
  /** Of the three days after. */
  readonly laterHighsF: readonly [number, number, number];
  readonly runs: readonly Run[];
}

const DAYS: readonly DayOfTrucks[] = [
  {
    daysAhead: 0,
    highF: 71,
    laterHighsF: [84, 79, 76],
    runs: [
      { truck: 1, operator: "Ray Odum", visits: [["Spot work", 1], ["Iron", 2], ["Second feed", 3]] },
      { truck: 2, operator: "Lou Parrish", visits: [["Call-back", 1], ["Second feed", 2]] },
    ],
  },
  {
    daysAhead: 1,
    highF: 84,
    laterHighsF: [79, 76, 74],
    runs: [
      { truck: 1, operator: "Ray Odum", visits: [["Color by the fence", 1], ["Iron", 1], ["Second feed", 4]] },
      { truck: 2, operator: "Mina Feld", visits: [["Second feed", 3]] },
    ],
  },
];

/** Sends two trucks out today and tomorrow and puts their stops in order; today's papers are issued where nothing holds them. */
export async function makeDays(seed: DaysSeed): Promise<void> {
  const { key, house } = seed;
  must(await setShopPosition(house, key, { zip: "46341" }));
  for (const day of DAYS) await makeDay(seed, day);
}

async function makeDay({ key, house, today }: DaysSeed, { daysAhead, highF, laterHighsF, runs }: DayOfTrucks): Promise<void> {
  const date = addDays(today, daysAhead);
  const { vehicles } = must(await listEquipment(house, key, {}));
  const { people } = must(await listPeople(house, key, {}));
  const { visits } = must(await listVisits(house, key, {}));
  // Town by town, so that a truck does not cross the state line and back between two lawns.
  const byTown = [...visits].sort((one, other) => `${one.property.state} ${one.property.city}`.localeCompare(`${other.property.state} ${other.property.city}`, "en"));
  const taken = new Set<string>();
  const take = ([name, count]: readonly [string, number]) => {
    const free = byTown.filter((visit) => visit.name === name && visit.state === "planned" && visit.stop === null && !taken.has(visit.visitId));
    const chosen = free.slice(0, count).map(({ visitId }) => visitId);
    for (const visitId of chosen) taken.add(visitId);
    return chosen;
  };
  for (const { truck, operator, visits: wanted } of runs) {
    const vehicleId = vehicles.find(({ number }) => number === truck)?.vehicleId ?? "";
    const operatorId = people.find(({ name }) => name === operator)?.personId ?? "";
    const { routeDayId } = must(await addRouteDay(house, key, { date, vehicleId, operatorId, startsAt: "07:30", endsAt: "16:30" }));
    for (const visitId of wanted.flatMap(take)) must(await placeVisit(house, key, { visitId, routeDayId }));
  }
  const [next, second, third] = laterHighsF.map(String);
  must(await enterForecast(house, key, { date, highF: String(highF), followingHighsF: { next, second, third }, source: "the county airport's forecast" }));
  const { trucks } = must(await readDay(house, key, { date }));
  for (const { routeDayId, version } of trucks) must(await orderDay(house, key, { routeDayId, version, withoutPlace: "take-off" }));
  const ordered = must(await readDay(house, key, { date })).trucks;
  const last = ordered[0]?.stops.at(-1);
  if (last !== undefined) must(await pinVisit(house, key, { visitId: last.visit.visitId, pin: "pin" }));
  // A hold keeps its ticket back; the screen says which and why.
  if (daysAhead === 0) for (const { visit } of ordered.flatMap(({ stops }) => stops)) await issueMixTicket(house, key, { visitId: visit.visitId });
}
