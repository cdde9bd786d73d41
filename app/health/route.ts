import { databaseClient } from "#adapters/postgres/client";

/** Says whether this copy can serve: 200 when the database answers, 503 when it does not. */
export async function GET(): Promise<Response> {
  try {
    await databaseClient().$queryRaw`SELECT 1 AS one`;
    return new Response("ok\n", { headers: { "cache-control": "no-store" } });
  } catch {
    return new Response("the database does not answer\n", { status: 503, headers: { "cache-control": "no-store" } });
  }
}
