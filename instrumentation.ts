/** Runs once before the server answers: refuses to serve in a house that is not as it must be. */
export async function register(): Promise<void> {
  if (process.env["NEXT_RUNTIME"] !== "nodejs") return;
  const { environmentFaults } = await import("#adapters/environment");
  const faults = [...environmentFaults(process.env)];
  if (faults.length === 0) {
    const { databaseClient } = await import("#adapters/postgres/client");
    const { webRoleFaults } = await import("#adapters/postgres/web-role-check");
    faults.push(...(await webRoleFaults(databaseClient())));
  }
  if (faults.length === 0) return;
  process.stderr.write(`Halfpass does not serve like this. ${faults.join(" ")}\n`);
  process.exit(1);
}
