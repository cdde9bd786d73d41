// Companies of two sizes for the pages, made by the use cases, and how many visits are completed in a second. Works on
// the database that the environment names. Prints JSON: the measured rows, and how to sign in. Part of npm run bench.
import { inCompany } from "#adapters/postgres/company-work";
import { orderDay } from "#application/days/order-day";
import { addRound } from "#application/programs/add-round";
import { putOnProgram } from "#application/programs/put-on-program";
import { completeVisit } from "#application/register/complete-visit";
import { listRegister } from "#application/register/list-register";
import { receiveDelivery } from "#application/stock/receive-delivery";
import { issueMixTicket } from "#application/visits/issue-mix-ticket";
import { aCompany, PASSWORD, type TestCompany, valueOf } from "../../tests/support/crew";
import { aCrewDay, aGround, aRouteDay, aVisitWith, completeForm, type CrewDay, feedAndIron, type Ground } from "../../tests/support/crew-day";
import { aShop, versionOf } from "../../tests/support/days";
import { type TestHouse } from "../../tests/support/house";
import { aProgram, roundForm } from "../../tests/support/season";
import { aConfirmedLabel, aFeed, deliveryForm } from "../../tests/support/shed";
import { aFeedText } from "../../tests/support/label-texts";
import { openBenchHouse } from "./bench-house";
import { rowsOfRounds } from "./report.mjs";

const AT_ONCE = 8;
const ROUNDS = 5;
const ONE_AFTER_ANOTHER = 16;
const EACH_OF_EIGHT = 3;
const EMPTY_TRANSACTIONS = 100;

const BARE = "an empty transaction of a company, one at a time";
const ONE_AT_A_TIME = "a visit completed, one at a time";
const EIGHT_AT_ONCE = "a visit completed, eight at once";
const SAME_REQUEST = "eight presses of one request at once";

/** How much of everything a company has. */
interface Size {
  readonly properties: number;
  /** Stops by the day on which they are. */
  readonly days: Readonly<Record<string, number>>;
  readonly products: number;
  readonly programs: number;
}

const BUSY: Size = { properties: 60, days: { "2026-04-15": 40, "2026-04-16": 10 }, products: 30, programs: 6 };
const SMALL: Size = { properties: 6, days: { "2026-04-15": 4, "2026-04-16": 1 }, products: 3, programs: 1 };
const BAGS = 150;
const JUGS = 20;
const ROUNDS_OF_PROGRAM = 4;

interface BenchCompany {
  readonly company: TestCompany;
  readonly day: CrewDay;
  readonly grounds: readonly Ground[];
}

function groundAt({ grounds }: BenchCompany, index: number): Ground {
  const ground = grounds[index % grounds.length];
  if (ground === undefined) throw new Error("A company of the bench has ground.");
  return ground;
}

async function makeCompany(house: TestHouse, name: string, size: Size): Promise<BenchCompany> {
  const company = await aCompany(house, name);
  const day = await aCrewDay(house, company);
  await aShop(house, company);
  const to = `vehicle:${day.vehicleId}`;
  valueOf(await receiveDelivery(house, company.owner.key, { ...deliveryForm(house, day.feedId), count: BAGS, lotNumber: "GM-9", to }));
  valueOf(await receiveDelivery(house, company.owner.key, { ...deliveryForm(house, day.ironId), count: JUGS, container: "jug", containerSize: "2.5 gal", lotNumber: "IR-9", to }));
  const grounds: Ground[] = [];
  for (let index = 0; index < size.properties; index += 1) {
    const ground = await aGround(house, company);
    // A town of streets ten by ten, some 300 ft apart.
    const place = [41.54 + (index % 10) * 0.0009, -87.06 + Math.floor(index / 10) * 0.0012];
    await house.ask("update property set latitude = $2, longitude = $3, position_origin = 'entered' where property_id = $1", [ground.propertyId, ...place]);
    grounds.push(ground);
  }
  const made = { company, day, grounds };
  await fillShed(house, made, size);
  await fillPrograms(house, made, size);
  for (const [date, stops] of Object.entries(size.days)) await fillDay(house, made, date, stops);
  return made;
}

async function fillShed(house: TestHouse, { company }: BenchCompany, { products }: Size): Promise<void> {
  for (let count = 0; count < products; count += 1) {
    const productId = await aFeed(house, company);
    await aConfirmedLabel(house, company, productId, aFeedText({ grade: "32-0-0", nitrogenRelease: "none" }));
    for (const lotNumber of ["A", "B"]) valueOf(await receiveDelivery(house, company.owner.key, { ...deliveryForm(house, productId), lotNumber }));
  }
}

async function fillPrograms(house: TestHouse, { company, day, grounds }: BenchCompany, { programs }: Size): Promise<void> {
  const { key } = company.owner;
  for (let count = 0; count < programs; count += 1) {
    const programId = await aProgram(house, company);
    for (let round = 1; round <= ROUNDS_OF_PROGRAM; round += 1) {
      valueOf(await addRound(house, key, { ...roundForm(programId, day.feedId), name: `Round ${String(round)}`, opensOn: `2026-0${String(4 + round)}-01`, closesOn: `2026-0${String(4 + round)}-20` }));
    }
    const own = grounds.filter((_, index) => index % programs === count);
    valueOf(await putOnProgram(house, key, { programId, properties: Object.fromEntries(own.map(({ propertyId }) => [propertyId, "yes" as const])) }));
  }
}

/** A day of one truck with its stops in the best order, each with its mix ticket. */
async function fillDay(house: TestHouse, made: BenchCompany, date: string, stops: number): Promise<void> {
  const { company, day } = made;
  const { key } = company.owner;
  const routeDayId = await aRouteDay(house, company, day.vehicleId, date);
  const visitIds: string[] = [];
  for (let stop = 0; stop < stops; stop += 1) {
    const ground = groundAt(made, stop);
    visitIds.push(await aVisitWith(house, company, { propertyId: ground.propertyId, routeDayId }, feedAndIron(day, ground)));
  }
  valueOf(await orderDay(house, key, { routeDayId, version: await versionOf(house, routeDayId) }));
  for (const visitId of visitIds) valueOf(await issueMixTicket(house, key, { visitId }));
}

type CompletedVisit = Ground & { readonly visitId: string };

async function visitsToComplete(house: TestHouse, made: BenchCompany, count: number): Promise<readonly CompletedVisit[]> {
  const visits: CompletedVisit[] = [];
  for (let index = 0; index < count; index += 1) {
    const ground = groundAt(made, index);
    visits.push({ ...ground, visitId: await aVisitWith(house, made.company, { propertyId: ground.propertyId, routeDayId: made.day.routeDayId }, feedAndIron(made.day, ground)) });
  }
  return visits;
}

/** How often in a second something is done that is done so many times by a piece of work. */
async function timesASecond(times: number, work: () => Promise<void>): Promise<number> {
  const begin = performance.now();
  await work();
  return (times / (performance.now() - begin)) * 1000;
}

/** One round: each way of completing visits, on visits of its own. */
async function completeInTurns(house: TestHouse, { company: { owner } }: BenchCompany, visits: CompletedVisit[]): Promise<Readonly<Record<string, number>>> {
  const next = (): CompletedVisit => {
    const visit = visits.pop();
    if (visit === undefined) throw new Error("Too few visits were planned for the measurement.");
    return visit;
  };
  const complete = async (form: ReturnType<typeof completeForm>) => valueOf(await completeVisit(house, owner.key, form)).number;
  const completeSome = async (count: number) => {
    for (let done = 0; done < count; done += 1) await complete(completeForm(house, owner.personId, next()));
  };
  const pressedForm = completeForm(house, owner.personId, next());
  const hands = Array.from({ length: AT_ONCE });
  return {
    [BARE]: await timesASecond(EMPTY_TRANSACTIONS, async () => {
      for (let done = 0; done < EMPTY_TRANSACTIONS; done += 1) await inCompany(house.client, owner.key, () => Promise.resolve());
    }),
    [ONE_AT_A_TIME]: await timesASecond(ONE_AFTER_ANOTHER, () => completeSome(ONE_AFTER_ANOTHER)),
    [EIGHT_AT_ONCE]: await timesASecond(AT_ONCE * EACH_OF_EIGHT, async () => {
      await Promise.all(hands.map(() => completeSome(EACH_OF_EIGHT)));
    }),
    [SAME_REQUEST]: await timesASecond(AT_ONCE, async () => {
      const numbers = new Set(await Promise.all(hands.map(() => complete(pressedForm))));
      if (numbers.size !== 1) throw new Error(`One request wrote ${String(numbers.size)} records.`);
    }),
  };
}

const VISITS_OF_A_ROUND = ONE_AFTER_ANOTHER + AT_ONCE * EACH_OF_EIGHT + 1;

/** What the measurement wrote must be as whole as what a crew writes. */
async function verify(house: TestHouse, { company }: BenchCompany, records: number): Promise<void> {
  const { chain } = valueOf(await listRegister(house, company.owner.key, {}));
  if (chain.kind !== "whole" || chain.entries !== records) throw new Error(`The register is not whole: ${JSON.stringify(chain)}, and ${String(records)} were written.`);
  const [wrong] = await house.ask<{ count: number }>(
    `select count(*)::int as count from stock_balance b
     full join (select lot_id, stock_location_id, sum(amount) as amount from stock_entry where company_id = $1 group by lot_id, stock_location_id) e
       on e.lot_id = b.lot_id and e.stock_location_id = b.stock_location_id
     where (b.company_id is null or b.company_id = $1) and coalesce(b.amount, 0) <> coalesce(e.amount, 0)`,
    [company.companyId],
  );
  if (wrong?.count !== 0) throw new Error(`${String(wrong?.count)} balances are not the sum of their entries.`);
}

const house = await openBenchHouse(AT_ONCE);
try {
  const small = await makeCompany(house, "Small Bench Lawns", SMALL);
  const busy = await makeCompany(house, "Busy Bench Lawns", BUSY);
  const visits = [...(await visitsToComplete(house, busy, ROUNDS * VISITS_OF_A_ROUND))];
  const warmUp = [...(await visitsToComplete(house, small, VISITS_OF_A_ROUND))];
  await completeInTurns(house, small, warmUp);
  const rounds: Readonly<Record<string, number>>[] = [];
  for (let round = 0; round < ROUNDS; round += 1) rounds.push(await completeInTurns(house, busy, visits));
  await verify(house, small, VISITS_OF_A_ROUND);
  await verify(house, busy, ROUNDS * VISITS_OF_A_ROUND);
  const accountOf = ({ company }: BenchCompany) => ({ email: company.owner.email, password: PASSWORD });
  const pick = (names: readonly string[]) => rounds.map((figures) => Object.fromEntries(names.map((name) => [name, figures[name] ?? Number.NaN])));
  const rows = [
    ...rowsOfRounds("1/s", BARE, pick([BARE, ONE_AT_A_TIME])),
    ...rowsOfRounds("1/s", ONE_AT_A_TIME, pick([ONE_AT_A_TIME, EIGHT_AT_ONCE, SAME_REQUEST])).slice(1),
  ];
  process.stdout.write(JSON.stringify({ rows, busy: accountOf(busy), small: accountOf(small) }));
} finally {
  await house.close();
}
