// A house for the builders of the tests, on the database of a started installation: real ids and secrets, and a clock
// that stands at the moment at which a test house opens.
import { randomBytes, randomUUID } from "node:crypto";
import process from "node:process";
import pg from "pg";
import { openClient } from "#adapters/postgres/client";
import { type TestHouse } from "../../tests/support/house";

/** The day of the builders, 9 in the morning where their company is. */
const MOMENT = new Date("2026-04-14T13:00:00.000Z");

function variable(name: string): string {
  const value = process.env[name];
  if (value === undefined) throw new Error(`${name} is not set.`);
  return value;
}

/** Opens a house on the database that the environment names, with so many connections at most. */
export async function openBenchHouse(connections: number): Promise<TestHouse> {
  const [appUrl, ownerUrl] = [variable("DATABASE_APP_URL"), variable("DATABASE_OWNER_URL")];
  const client = openClient(appUrl, connections);
  const owner = new pg.Client({ connectionString: ownerUrl });
  await owner.connect();
  return {
    database: { appUrl, ownerUrl, drop: () => Promise.resolve() },
    client,
    now: () => MOMENT,
    newId: randomUUID,
    newSecret: () => randomBytes(32).toString("base64url"),
    ask: async <Row extends pg.QueryResultRow>(sql: string, values: readonly unknown[] = []) => (await owner.query<Row>(sql, [...values])).rows,
    pass: () => {
      throw new Error("The clock of the bench stands.");
    },
    books: () => Promise.reject(new Error("The bench compares no books.")),
    close: async () => {
      await client.$disconnect();
      await owner.end();
    },
  };
}
