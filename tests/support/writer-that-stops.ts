// A process of its own that runs one use case and stands still at the n-th statement that writes, until it
// is killed. Told by one line of JSON on its input; says "stopped" or "done" on its output.
import { createInterface } from "node:readline";
import pg from "pg";
import { openClient } from "#adapters/postgres/client";
import { recordFill } from "#application/fills/record-fill";
import { completeVisit } from "#application/register/complete-visit";
import { type WriterOrder } from "./killed-writers";

const USE_CASES = { "complete-visit": completeVisit, "record-fill": recordFill } as const;

type AnyQuery = (...given: unknown[]) => unknown;

/** To die before a read leaves the same books as to die before the next write, so reads are not counted. */
function isRead(query: unknown): boolean {
  const text = typeof query === "string" ? query : (query as { readonly text: string }).text;
  return /^\s*select/iu.test(text);
}

function stopAt({ stopsBefore, sendsIt }: WriterOrder): void {
  const connection = pg.Client.prototype as unknown as { query: AnyQuery };
  const send = connection.query;
  let sent = 0;
  connection.query = function (this: unknown, ...given: unknown[]): unknown {
    if (isRead(given[0])) return send.apply(this, given);
    sent += 1;
    if (sent < stopsBefore) return send.apply(this, given);
    if (sendsIt && sent === stopsBefore) void send.apply(this, given);
    process.stdout.write("stopped\n");
    return new Promise(() => undefined);
  };
}

for await (const line of createInterface({ input: process.stdin })) {
  const order = JSON.parse(line) as WriterOrder;
  stopAt(order);
  const client = openClient(order.appUrl, 2);
  let ids = 0;
  const newId = () => `0000000${String(order.stopsBefore % 10)}-0000-4000-9000-${(order.stopsBefore * 1000 + (ids += 1)).toString(16).padStart(12, "0")}`;
  const house = { client, now: () => new Date(order.nowEpochMilliseconds), newId, newSecret: () => "unused" };
  const answer = await USE_CASES[order.useCase](house, order.key, order.input as never);
  process.stdout.write(`done ${JSON.stringify(answer)}\n`);
}
