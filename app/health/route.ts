import { canServe } from "#application/office";

/** Says whether this copy can serve: 200 when the database answers, 503 when it does not. */
export async function GET(): Promise<Response> {
  const headers = { "cache-control": "no-store" };
  return (await canServe())
    ? new Response("ok\n", { headers })
    : new Response("the database does not answer\n", { status: 503, headers });
}
