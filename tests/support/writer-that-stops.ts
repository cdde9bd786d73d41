// A process of its own that runs one use case and stands still at the n-th statement it sends to the database, until it
// is killed. Told by one line of JSON on its input; says "stopped" or "done" on its output.
import { createInterface } from "node:readline";
import pg from "pg";
import { openClient } from "#adapters/postgres/client";
import { recordFill } from "#application/fills/record-fill";
import { completeVisit } from "#application/register/complete-visit";

/** What the process is told. */
export interface WriterOrder {
  readonly appUrl: string;
  readonly useCase: "complete-visit" | "record-fill";
  readonly key: { readonly accountId: string; readonly companyId: string; readonly sessionVersion: number };
  readonly input: unknown;
  readonly nowEpochMilliseconds: number;
  /** The statement that is not sent any more; it counts from one. */
  readonly stopsBefore: number;
  /** Sends that statement too, and stops without waiting for its answer. */
  readonly sendsIt: boolean;
}

const USE_CASES = { "complete-visit": completeVisit, "record-fill": recordFill } as const;

type AnyQuery = (...given: unknown[]) => unknown;

function stopAt({ stopsBefore, sendsIt }: WriterOrder): void {
  const connection = pg.Client.prototype as unknown as { query: AnyQuery };
  const send = connection.query;
  let sent = 0;
  connection.query = function (this: unknown, ...given: unknown[]): unknown {
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
