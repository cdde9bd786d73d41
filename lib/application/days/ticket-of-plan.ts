import { type VisitTicket } from "#application/visits/visit-ticket";
import { toStoredJson } from "#application/stored-json";

/** What of a ticket is in the crew's hands: who goes when, and what is mixed. */
type Planned = Pick<VisitTicket, "application" | "ticket">;

/**
 * Whether an issued mix ticket still says what would be computed now: the same day, person and truck, and the same
 * mixes to the last mark. Findings may have come and gone; they do not change what is on the paper. The snapshot is a
 * ticket as {@link toStoredJson} wrote it; one of another shape is of no present plan.
 */
export function isOfPresentPlan(snapshot: unknown, present: Planned): boolean {
  return planText(snapshot) === planText(toStoredJson(present));
}

function planText(stored: unknown): string {
  const { application, ticket } = partsOf(stored, ["application", "ticket"]);
  return JSON.stringify([application, partsOf(ticket, ["mixes"])["mixes"]], inNameOrder);
}

function partsOf(value: unknown, names: readonly string[]): Record<string, unknown> {
  const record = typeof value === "object" && value !== null ? (value as Record<string, unknown>) : {};
  return Object.fromEntries(names.map((name) => [name, record[name] ?? null]));
}

/** A JSON column keeps the names of an object in an order of its own. */
function inNameOrder(_name: string, value: unknown): unknown {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).sort(([one], [other]) => (one < other ? -1 : 1)));
}
