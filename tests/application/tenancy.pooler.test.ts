// Through PgBouncer in transaction mode, where a server connection goes from one client's transaction to the next's.
import pg from "pg";
import { afterAll, beforeAll, expect, test } from "vitest";
import { asGuest, inCompany } from "#adapters/postgres/company-work";
import { listPeople } from "#application/people/list-people";
import { changePerson } from "#application/people/change-person";
import { aCompany, anInvitation, aPerson, type TestCompany, valueOf } from "../support/crew";
import { openHouse, type TestHouse } from "../support/house";
import { type Pooler, startPooler } from "../support/pooler";
import { writeSeasonRows } from "../support/season-rows";
import { tenancyFaults } from "../support/tenancy-walk";
import { openClient } from "#adapters/postgres/client";
import { type House } from "#application/use-case";

let house: TestHouse;
let pooler: Pooler;
let pooled: House;
let first: TestCompany;
let second: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  // One server connection, so that every transaction runs where the last one ran.
  pooler = await startPooler(house.database.appUrl, 1);
  pooled = { ...house, client: openClient(pooler.addressOf(house.database.appUrl), 4) };
  first = await aCompany(house, "First Crew");
  second = await aCompany(house, "Second Crew");
  for (const company of [first, second]) {
    await anInvitation(house, company, await aPerson(house, company), "invited@crew.example");
    await writeSeasonRows(house, company);
  }
});
afterAll(async () => {
  await pooled.client.$disconnect();
  await pooler.stop();
  await house.close();
});

test("the walk over every table finds nothing through the pooler either", async () => {
  const walk = { ownerUrl: house.database.ownerUrl, webUrl: pooler.addressOf(house.database.appUrl) };
  expect(await tenancyFaults({ ...walk, victimId: first.companyId, intruderId: second.companyId })).toEqual([]);
});

const PRESENT = "select pg_backend_pid() as server, current_company() as company, (select count(*)::int from person) as people";

interface Present {
  readonly server: number;
  readonly company: string | null;
  readonly people: number;
}

test.each([["commit"], ["rollback"]])("the company of a transaction that ends with %s is not the next one's", async (ending) => {
  const clients = [new pg.Client(pooler.addressOf(house.database.appUrl)), new pg.Client(pooler.addressOf(house.database.appUrl))] as const;
  await Promise.all(clients.map((client) => client.connect()));
  const [one, next] = clients;
  try {
    await one.query("begin");
    await one.query("select open_guest_work($1)", [first.companyId]);
    const open = (await one.query<Present>(PRESENT)).rows[0];
    await one.query(ending);
    const after = (await next.query<Present>(PRESENT)).rows[0];
    expect(open).toMatchObject({ company: first.companyId, people: 2 });
    expect(after).toEqual({ server: open?.server, company: null, people: 0 });
  } finally {
    await Promise.all(clients.map((client) => client.end()));
  }
});

test("use cases of two companies take turns on one server connection and see their own people only", async () => {
  const turns = Array.from({ length: 20 }, (_, turn) => (turn % 2 === 0 ? first : second));
  const answers = await Promise.all(turns.map((company) => listPeople(pooled, company.owner.key, {})));
  answers.forEach((answer, turn) => {
    const names = valueOf(answer).people.map(({ name }) => name);
    expect(names).toEqual([turn % 2 === 0 ? "Owner of First Crew" : "Owner of Second Crew", "Robin Vale"]);
  });
  const present = await pooled.client.$queryRawUnsafe<{ company: string | null; people: number }[]>(PRESENT);
  expect(present).toMatchObject([{ company: null, people: 0 }]);
});

test("work that throws leaves no company behind, and a session that ended opens none", async () => {
  const thrown = asGuest(pooled.client, first.companyId, () => Promise.reject(new Error("thrown inside")));
  await expect(thrown).rejects.toThrow("thrown inside");
  expect(await pooled.client.$queryRawUnsafe(PRESENT)).toMatchObject([{ company: null, people: 0 }]);
  const stale = { ...first.owner.key, sessionVersion: 2 };
  expect(await inCompany(pooled.client, stale, () => Promise.reject(new Error("never run")))).toBe("signed-out");
});

test("another company's person is changed by nobody through the pooler", async () => {
  const before = await house.books();
  const form = { personId: first.owner.personId, version: 1, name: "Stolen", phone: "", leftOn: "" };
  expect(await changePerson(pooled, second.owner.key, form)).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  expect(await house.books()).toEqual(before);
});
