import { environmentFaults } from "#adapters/environment";
import { databaseClient } from "#adapters/postgres/client";
import { webRoleFaults } from "#adapters/postgres/web-role-check";

/** Ends the process, with a sentence for each fault, when the environment or the database role is not as it must be. */
export async function endUnlessSound(): Promise<void> {
  const faults = [...environmentFaults(process.env)];
  if (faults.length === 0) faults.push(...(await webRoleFaults(databaseClient())));
  if (faults.length === 0) return;
  process.stderr.write(`Halfpass does not serve like this. ${faults.join(" ")}\n`);
  process.exit(1);
}
