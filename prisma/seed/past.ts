/**
 * The past of the demonstration: days on which trucks went out, with mix tickets, fills and records written through the
 * use cases at the times at which a crew would have written them.
 */
import { randomUUID } from "node:crypto";
import { type SessionKey } from "#adapters/postgres/company-work";
import { addRouteDay } from "#application/days/add-route-day";
import { enterForecast } from "#application/days/enter-forecast";
import { orderDay } from "#application/days/order-day";
import { readDay } from "#application/days/read-day";
import { placeVisit } from "#application/days/place-visit";
import { setShopPosition } from "#application/days/set-shop-position";
import { listEquipment } from "#application/equipment/list-equipment";
import { recordCleanOut } from "#application/fills/record-clean-out";
import { listFills } from "#application/fills/list-fills";
import { recordFill } from "#application/fills/record-fill";
import { recordTankReading } from "#application/fills/record-tank-reading";
import { listPeople } from "#application/people/list-people";
import { completeVisit } from "#application/register/complete-visit";
import { issueMixTicket } from "#application/visits/issue-mix-ticket";
import { lookAtLawns } from "#application/visits/look-at-lawns";
import { listVisits } from "#application/visits/list-visits";
import { readVisit, type VisitOnFile } from "#application/visits/read-visit";
import { type House } from "#application/use-case";
import { isSprayer } from "#domain/equipment/equipment-kind";
import { calendarDateIn, parseCalendarDate } from "#domain/foundation/calendar-date";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { fromAmount, of } from "#domain/quantities/quantity";
import { type SprayMix } from "#domain/mixing/spray-mix";
import { instantOfMinute } from "#domain/weather/local-hours";
import { must } from "./must";

export interface PastSeed {
  readonly key: SessionKey;
  readonly timeZone: string;
  readonly dayIn: (days: number) => string;
  /** The house at a moment. */
  readonly houseAt: (moment: number) => House;
}

interface PastDay {
  readonly daysAgo: number;
  readonly round: string;
  readonly operator: string;
  readonly stops: number;
  readonly highF: number;
  readonly wind: { readonly mph: number; readonly from: "N" | "SW" | "W" | "NW" };
}

const DAYS: readonly PastDay[] = [
  { daysAgo: 44, round: "First feed", operator: "Ray Odum", stops: 6, highF: 66, wind: { mph: 5, from: "SW" } },
  { daysAgo: 36, round: "First feed", operator: "Lou Parrish", stops: 5, highF: 61, wind: { mph: 7, from: "W" } },
  { daysAgo: 19, round: "Weeds and color", operator: "Ray Odum", stops: 6, highF: 68, wind: { mph: 4, from: "NW" } },
  { daysAgo: 4, round: "Second feed", operator: "Ray Odum", stops: 6, highF: 58, wind: { mph: 6, from: "N" } },
];

const LAST_DAY_AGO = 4;
const WATERED_AT = 20 * 60 + 30;
const TOLD_AT = 16 * 60;

const LEAVES_AT = 7 * 60 + 30;
const EVENING_BEFORE = 17 * 60;
/** So that pump and hose are not sprayed empty on the last lawn. */
const MORE_THAN_NEEDED = of("gal", "2.5");
/** After the last stop, back at the shop. */
const DIPPED_AT = 17 * 60 + 5;
const CLEANED_AT = 17 * 60 + 20;
const FILLED_AT = 7 * 60;
/** The day before the first of those days. */
const FIRST_CLEANED_AGO = 45;

/** Sends trucks out on days that have passed and writes down what they did. */
export async function makePast(seed: PastSeed): Promise<void> {
  const { key, houseAt, timeZone, dayIn } = seed;
  const atMinute = (daysAgo: number, minute: number) => {
    const date = must(parseCalendarDate("day", dayIn(-daysAgo)));
    return houseAt(instantOfMinute(date, minute, timeZone));
  };
  must(await setShopPosition(atMinute(60, EVENING_BEFORE), key, { zip: "46341" }));
  await cleanForTheSeason(seed, atMinute(FIRST_CLEANED_AGO, CLEANED_AT + 10));
  for (const day of DAYS) await makeDay(seed, day, (minute, more = 0) => atMinute(day.daysAgo - more, minute));
}

/** Before the season's first spray every tank was rinsed out: what it held the year before, nobody would know. */
async function cleanForTheSeason({ key, dayIn }: PastSeed, house: House): Promise<void> {
  const { equipment } = must(await listEquipment(house, key, {}));
  const { people } = must(await listPeople(house, key, {}));
  const doneBy = people.find(({ name }) => name === "Ray Odum")?.personId ?? "";
  for (const { equipmentId } of equipment.filter(({ kind }) => isSprayer(kind))) {
    must(
      await recordCleanOut(house, key, {
        requestId: randomUUID(), equipmentId, cleanedOn: dayIn(-FIRST_CLEANED_AGO), cleanedAt: clock(CLEANED_AT), doneById: doneBy,
        how: "Rinsed three times after the winter, filters and tips washed", rinsateWent: "shop-tank", rinsateVisitId: "", rinsateWhere: "",
      }),
    );
  }
}

type HouseAtMinute = (minute: number, daysLater?: number) => House;

async function makeDay(seed: PastSeed, day: PastDay, at: HouseAtMinute): Promise<void> {
  const { key, dayIn } = seed;
  const before = at(EVENING_BEFORE, -1);
  const { vehicles, equipment } = must(await listEquipment(before, key, {}));
  const truck = vehicles.find(({ number }) => number === 1);
  const { people } = must(await listPeople(before, key, {}));
  const operator = people.find(({ name }) => name === day.operator);
  if (truck === undefined || operator === undefined) throw new Error("The demonstration has truck 1 and its crew.");
  const date = dayIn(-day.daysAgo);
  const { routeDayId } = must(await addRouteDay(before, key, { date, vehicleId: truck.vehicleId, operatorId: operator.personId, startsAt: "07:30", endsAt: "17:00" }));
  const { visits } = must(await listVisits(before, key, { openOn: date }));
  const chosen = visits.filter(({ name, stop }) => name === day.round && stop === null).slice(0, day.stops);
  for (const { visitId } of chosen) must(await placeVisit(before, key, { visitId, routeDayId }));
  must(await enterForecast(before, key, { date, highF: String(day.highF), followingHighsF: { next: String(day.highF + 1), second: String(day.highF - 2), third: String(day.highF) }, source: "the county airport's forecast" }));
  const { trucks } = must(await readDay(before, key, { date }));
  const version = trucks.find((one) => one.routeDayId === routeDayId)?.version ?? 0;
  must(await orderDay(before, key, { routeDayId, version, withoutPlace: "take-off" }));
  const issued: VisitOnFile[] = [];
  for (const { visitId } of chosen) {
    // A visit with a hold gets no mix ticket and stays undone, as it would have.
    const ticket = await issueMixTicket(before, key, { visitId });
    const visit = ticket.ok ? must(await readVisit(before, key, { visitId })) : undefined;
    if (visit?.visit.stop !== null && visit !== undefined) issued.push(visit);
  }
  const sprayer = equipment.find(({ vehicleId, kind }) => vehicleId === truck.vehicleId && kind === "hose-and-gun");
  const fillId = sprayer === undefined ? "" : await fillFor(seed, at(FILLED_AT), sprayer.equipmentId, issued);
  for (const [index, visit] of issued.entries()) {
    await complete(seed, day, visit, fillId, at);
    // Of the last day only some customers have told; the next visits ask the others.
    if (day.daysAgo > LAST_DAY_AGO || index % 2 === 0) await tellOfWater(seed, day, visit, at);
  }
  if (sprayer === undefined || fillId === "") return;
  await dip(at(DIPPED_AT + 10), key, { equipmentId: sprayer.equipmentId, date, readById: operator.personId });
  must(
    await recordCleanOut(at(CLEANED_AT + 10), key, {
      requestId: randomUUID(), equipmentId: sprayer.equipmentId, cleanedOn: date, cleanedAt: clock(CLEANED_AT), doneById: operator.personId,
      how: "Three times with 10 gal of water through pump, hose and gun", rinsateWent: "shop-tank", rinsateVisitId: "", rinsateWhere: "",
    }),
  );
}

/** What is left in the tank after the day by its gauge, whose marks are whole gallons; what lies between them nobody knows. */
async function dip(house: House, key: SessionKey, { equipmentId, date, readById }: { readonly equipmentId: string; readonly date: string; readonly readById: string }): Promise<void> {
  const { tanks } = must(await listFills(house, key, {}));
  const left = tanks.find((tank) => tank.equipmentId === equipmentId)?.left.amount ?? 0n;
  const gallons = left / of("gal", 1n).amount;
  must(
    await recordTankReading(house, key, {
      requestId: randomUUID(), equipmentId, readOn: date, readAt: clock(DIPPED_AT), readById, how: "The tank's own gauge, truck level on the wash pad", volume: `${gallons.toString()} gal`, missingWent: "count-difference", note: "",
    }),
  );
}

function sprayOf(visit: VisitOnFile): SprayMix | undefined {
  const mixes = visit.outcome.ok ? visit.outcome.value.ticket.mixes : [];
  return mixes.find((mix): mix is SprayMix => mix.kind === "spray");
}

/** One fill for all of the day's sprays, a little more than they need; none when nothing is sprayed. */
async function fillFor({ key, timeZone }: PastSeed, house: House, equipmentId: string, visits: readonly VisitOnFile[]): Promise<string> {
  const sprays = visits.flatMap((visit) => sprayOf(visit) ?? []);
  const [first] = sprays;
  if (first === undefined) return "";
  const needed = sprays.reduce((total, mix) => total + mix.finished.amount, 0n);
  const finished = needed + MORE_THAN_NEEDED.amount;
  const products = Object.fromEntries(
    first.products.map(({ line }) => {
      const amount = sprays.reduce((total, mix) => total + (mix.products.find((product) => product.line === line)?.total.amount ?? 0n), 0n);
      const treatment = visits.flatMap(({ visit }) => visit.treatments).find((one) => one.line === line);
      return [treatment?.productId ?? "", formatQuantityIn(fromAmount("volume", (amount * finished) / needed), "fl oz", 1)];
    }),
  );
  const { fillId } = must(
    await recordFill(house, key, {
      requestId: randomUUID(), equipmentId, filledOn: calendarDateIn(timeZone, house.now().getTime()), filledAt: "6:50", mixingPlace: "Shop, mixing pad",
      gaugeBefore: "0 gal", gaugeAfter: formatQuantityIn(fromAmount("volume", finished), "gal", 1),
      products, from: "shop", visitIds: visits.filter((visit) => sprayOf(visit) !== undefined).map(({ visit }) => visit.visitId),
    }),
  );
  return fillId;
}

function clock(minute: number): string {
  return `${String(Math.floor(minute / 60))}:${String(minute % 60).padStart(2, "0")}`;
}

/** The day after, the customer tells that the sprinklers ran in the evening. */
async function tellOfWater({ key, dayIn }: PastSeed, day: PastDay, { visit }: VisitOnFile, at: HouseAtMinute): Promise<void> {
  const watered = Object.fromEntries(visit.treatments.flatMap(({ zoneIds }) => zoneIds.map((zoneId) => [zoneId, "yes" as const])));
  must(
    await lookAtLawns(at(TOLD_AT, 1), key, {
      requestId: randomUUID(), visitId: visit.visitId, seenOn: dayIn(1 - day.daysAgo), seenAt: clock(TOLD_AT), seenById: visit.stop?.operatorId ?? "", lawns: {}, said: {},
      watered, wateredOn: dayIn(-day.daysAgo), wateredAt: clock(WATERED_AT), wateredBy: "sprinklers", waterToldBy: "customer", waterDepth: "1/2 in",
    }),
  );
}

async function complete({ key, dayIn }: PastSeed, day: PastDay, visit: VisitOnFile, fillId: string, at: HouseAtMinute): Promise<void> {
  const { stop, visitId, serviceMinutes } = visit.visit;
  const starts = stop?.arrivesAtMinute ?? LEAVES_AT + 60;
  const ends = starts + serviceMinutes;
  const mixes = visit.outcome.ok ? visit.outcome.value.ticket.mixes : [];
  const lawns = mixes.flatMap((mix) => mix.lawns.map(({ zoneId }) => [zoneId, "done"] as const));
  const [date, seenBy] = [dayIn(-day.daysAgo), stop?.operatorId ?? ""];
  const bare = Object.fromEntries(lawns.map(([zoneId]) => [zoneId, "no" as const]));
  must(await lookAtLawns(at(starts), key, { requestId: randomUUID(), visitId, seenOn: date, seenAt: clock(starts), seenById: seenBy, lawns: bare, said: {} }));
  must(
    await completeVisit(at(Math.min(ends + 4, 1439)), key, {
      requestId: randomUUID(),
      visitId,
      doneOn: date,
      startedAt: clock(starts),
      endedAt: clock(ends),
      applicatorId: stop?.operatorId ?? "",
      supervisorId: "",
      temperatureF: String(day.highF - 6),
      windMph: String(day.wind.mph),
      windFrom: day.wind.from,
      instrument: "hand-held meter",
      lawns: Object.fromEntries(lawns),
      mixes: Object.fromEntries(
        mixes.map((mix) =>
          mix.kind === "spray"
            ? [String(mix.products[0]?.line ?? 0), { measuredBy: "meter" as const, amount: formatQuantityIn(mix.finished, "gal", 1), fillId }]
            : [String(mix.line), { measuredBy: "weight" as const, amount: formatQuantityIn(mix.total, "lb", 2), fillId: "" }],
        ),
      ),
      signIsUp: "yes",
      noticeWasLeft: "yes",
      remarks: "",
      signature: day.operator,
    }),
  );
}
