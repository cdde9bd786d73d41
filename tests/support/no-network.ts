// A test that reaches for another machine fails: what it asks there would not be the same tomorrow.
import { Socket } from "node:net";

const OWN_MACHINE = new Set(["127.0.0.1", "::1", "localhost"]);

interface Destination {
  readonly host?: string | null;
  readonly path?: string | null;
}

/** The options of a connection, whichever of its forms `connect` was called with. */
function destinationOf(args: readonly unknown[]): Destination {
  // Node's own callers hand over arguments that they have put in order already.
  const [first, second] = Array.isArray(args[0]) ? (args[0] as unknown[]) : args;
  if (typeof first === "object" && first !== null) return first;
  if (typeof first === "string" && Number.isNaN(Number(first))) return { path: first };
  return typeof second === "string" ? { host: second } : {};
}

const connect = Reflect.get(Socket.prototype, "connect") as (...args: unknown[]) => Socket;

Reflect.set(Socket.prototype, "connect", function connectToOwnMachine(this: Socket, ...args: unknown[]): Socket {
  const { host, path } = destinationOf(args);
  if (typeof path === "string" || typeof host !== "string" || OWN_MACHINE.has(host)) return connect.apply(this, args);
  throw new Error(`A test may not reach other machines, and this one reaches for ${host}.`);
});
