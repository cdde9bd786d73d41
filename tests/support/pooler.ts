// PgBouncer in transaction mode in front of the test server: what a large installation has between the web servers
// and the database.
import { spawn } from "node:child_process";
import { once } from "node:events";
import { chown, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chooseDatabaseAccount } from "../../scripts/launch/database-account.mjs";
import { findFreePort } from "../../scripts/launch/ports.mjs";
import { waitUntilReady } from "./until-ready.mjs";

/** The variable with the place of the PgBouncer program; the test runner sets it. */
const PROGRAM_VARIABLE = "HALFPASS_PGBOUNCER";

export interface Pooler {
  /** The pooler's address for a database that has the given address on the server itself. */
  readonly addressOf: (databaseUrl: string) => string;
  readonly stop: () => Promise<void>;
}

/**
 * Starts a pooler on a free port of 127.0.0.1 that hands out a given number of server connections per database.
 * It ends with {@link Pooler.stop}, or with this process.
 */
export async function startPooler(databaseUrl: string, serverConnections: number): Promise<Pooler> {
  const program = process.env[PROGRAM_VARIABLE];
  if (program === undefined) throw new Error(`${PROGRAM_VARIABLE} is not set: tests through a pooler cannot run.`);
  const folder = await mkdtemp(join(tmpdir(), "halfpass-pooler-"));
  // Like PostgreSQL, PgBouncer refuses to serve root, who lends it another user of the machine.
  const account = chooseDatabaseAccount(join(folder, "data"));
  const port = await findFreePort();
  const { username, password } = new URL(databaseUrl);
  const users = join(folder, "users.txt");
  const settings = join(folder, "pooler.ini");
  await writeFile(users, `"${username}" "${password}"\n`, { mode: 0o600 });
  await writeFile(settings, settingsOf(new URL(databaseUrl), { port, users, serverConnections }));
  if (account !== null) for (const path of [folder, users, settings]) await chown(path, account.uid, account.gid);

  const supervisor = spawn("sh", ["-c", SUPERVISOR, folder, program, settings], {
    ...account,
    cwd: "/",
    stdio: ["pipe", "ignore", "pipe"],
  });
  let log = "";
  supervisor.stderr.on("data", (chunk: Buffer) => (log = (log + chunk.toString()).slice(-10_000)));
  const stop = async () => {
    const ended = supervisor.exitCode === null ? once(supervisor, "exit") : undefined;
    supervisor.stdin.end();
    await ended;
    await rm(folder, { recursive: true, force: true });
  };
  const addressOf = (url: string) => {
    const address = new URL(url);
    address.port = String(port);
    return address.href;
  };
  try {
    await waitUntilReady(addressOf(databaseUrl), { name: "The pooler", supervisor, readLog: () => log });
  } catch (error) {
    await stop();
    throw error;
  }
  return { addressOf, stop };
}

/** Runs the pooler until the end of its own input, which comes when the test process closes it or dies. */
const SUPERVISOR = '"$@" & pooler=$!; cat > /dev/null; kill -TERM $pooler; wait $pooler; rm -rf "$0"';

function settingsOf(server: URL, { port, users, serverConnections }: { port: number; users: string; serverConnections: number }): string {
  return [
    "[databases]",
    `* = host=${server.hostname} port=${server.port}`,
    "[pgbouncer]",
    "listen_addr = 127.0.0.1",
    `listen_port = ${String(port)}`,
    "unix_socket_dir =",
    "auth_type = scram-sha-256",
    `auth_file = ${users}`,
    "pool_mode = transaction",
    `default_pool_size = ${String(serverConnections)}`,
    "max_client_conn = 50",
    "",
  ].join("\n");
}
