/** Runs once before the server answers: refuses to serve in a house that is not as it must be. */
export async function register(): Promise<void> {
  if (process.env["NEXT_RUNTIME"] === "nodejs") {
    const { endUnlessSound } = await import("#adapters/soundness");
    await endUnlessSound();
  }
}
