// A process of its own that runs one use case and stands still at the n-th statement that writes, until it
// is killed. Told by one line of JSON on its input; says "stopped" or "done" on its output.
import { randomUUID } from "node:crypto";
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
  return /^\s*select/iu.test(textOf(query));
}

function textOf(query: unknown): string {
  return typeof query === "string" ? query : (query as { readonly text: string }).text;
}

function stopAt({ stopsBefore, sendsIt }: WriterOrder): void {
  const connection = pg.Client.prototype as unknown as { query: AnyQuery };
  const send = connection.query;
  let sent = 0;
  let isStopped = false;
  connection.query = function (this: unknown, ...given: unknown[]): unknown {
    if (!isStopped && isRead(given[0])) return send.apply(this, given);
    sent += 1;
    isStopped = isStopped || (stopsBefore === "commit" ? /^\s*commit/iu.test(textOf(given[0])) : sent === stopsBefore);
    if (!isStopped) return send.apply(this, given);
    if (sendsIt) void send.apply(this, given);
    process.stdout.write("stopped\n");
    return new Promise(() => undefined);
  };
}

for await (const line of createInterface({ input: process.stdin })) {
  const order = JSON.parse(line) as WriterOrder;
  stopAt(order);
  const client = openClient(order.appUrl, 2);
  const house = { client, now: () => new Date(order.nowEpochMilliseconds), newId: randomUUID, newSecret: () => "unused" };
  const answer = await USE_CASES[order.useCase](house, order.key, order.input as never);
  process.stdout.write(`done ${JSON.stringify(answer)}\n`);
}
