import { PrismaPg } from "@prisma/adapter-pg";
import { PrismaClient } from "#adapters/postgres/generated/client";
import { readEnvironment } from "#adapters/environment";

// Next bundles this module several times over; the pool lives on globalThis so that there is one.
const keeper = globalThis as typeof globalThis & { halfpassClient?: PrismaClient };

/** The one client of this process, connected as the web role. */
export function databaseClient(): PrismaClient {
  keeper.halfpassClient ??= openClient(readEnvironment().DATABASE_APP_URL, readEnvironment().DATABASE_POOL_SIZE ?? 10);
  return keeper.halfpassClient;
}

/** A client of one's own on another address, for commands and tests; end it with $disconnect. */
export function openClient(address: string, poolSize: number): PrismaClient {
  const adapter = new PrismaPg(
    { connectionString: address, max: poolSize, connectionTimeoutMillis: 10_000 },
    { onPoolError: () => undefined }, // An idle connection that the server closed is replaced at the next use.
  );
  return new PrismaClient({ adapter, transactionOptions: { maxWait: 10_000, timeout: 20_000 } });
}
