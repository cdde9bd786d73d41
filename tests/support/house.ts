// A house for tests of the use cases: the database is a copy of its own, the clock stands until it is told to go on,
// and ids and secrets are counted instead of drawn.
import pg from "pg";
import { openClient } from "#adapters/postgres/client";
import { type House } from "#application/use-case";
import { type DatabaseClone, cloneDatabase } from "./database";

/** The moment at which every test house opens: a Tuesday morning in Indianapolis. */
export const OPENING = new Date("2026-04-14T13:00:00.000Z");

export interface TestHouse extends House {
  readonly database: DatabaseClone;
  /** Moves the clock on, by minutes; negative turns it back. */
  readonly pass: (minutes: number) => void;
  /** Asks the database as the role that owns it, whom no policy binds. */
  readonly ask: <Row extends pg.QueryResultRow>(sql: string, values?: readonly unknown[]) => Promise<Row[]>;
  /** Every row of every table as text, to show that something was, or was not, written. */
  readonly books: () => Promise<Readonly<Record<string, readonly string[]>>>;
  /** Ends all connections and drops the copy. */
  readonly close: () => Promise<void>;
}

/** The id that a counting house hands out at its n-th request: a real UUID. */
export function countedId(count: number): string {
  return `00000000-0000-4000-8000-${count.toString(16).padStart(12, "0")}`;
}

/** The secret that a counting house hands out at its n-th request: 43 characters of base64url. */
export function countedSecret(count: number): string {
  return `secret-${count.toString(36)}`.padEnd(43, "_");
}

/** Opens a house on a fresh copy of the migrated database; `clientUrl` may lead its client through a pooler. */
export async function openHouse(clientUrl: (appUrl: string) => string = (appUrl) => appUrl): Promise<TestHouse> {
  const database = await cloneDatabase();
  const client = openClient(clientUrl(database.appUrl), 8);
  const owner = new pg.Client({ connectionString: database.ownerUrl });
  await owner.connect();
  let minutes = 0;
  let ids = 0;
  let secrets = 0;
  const ask: TestHouse["ask"] = async (sql, values = []) => (await owner.query<never>(sql, [...values])).rows;
  return {
    database,
    client,
    now: () => new Date(OPENING.getTime() + minutes * 60_000),
    newId: () => countedId((ids += 1)),
    newSecret: () => countedSecret((secrets += 1)),
    pass: (more) => {
      minutes += more;
    },
    ask,
    books: () => booksOf(ask),
    close: async () => {
      await client.$disconnect();
      await owner.end();
      await database.drop();
    },
  };
}

async function booksOf(ask: TestHouse["ask"]): Promise<Readonly<Record<string, readonly string[]>>> {
  const tables = await ask<{ name: string }>(
    "select relname::text as name from pg_class where relnamespace = 'public'::regnamespace and relkind in ('r', 'p') order by 1",
  );
  const books: Record<string, readonly string[]> = {};
  for (const { name } of tables) {
    const rows = await ask<{ line: string }>(`select t::text as line from ${pg.escapeIdentifier(name)} t order by 1`);
    books[name] = rows.map(({ line }) => line);
  }
  return books;
}
