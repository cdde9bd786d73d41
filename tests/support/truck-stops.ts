// Stops of a truck as loading and fills see them, from tickets of invented products: tests say only what differs.
import { type LoadedStop } from "#domain/mixing/loading-list";
import { makeMixTicket } from "#domain/mixing/mix-ticket";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { of } from "#domain/quantities/quantity";
import { valueOf } from "./crew";
import { LAWN, QUESTION } from "./ticket";

/** A stop with one lawn of so many square feet. */
export function truckStop(visitId: string, treatments: readonly TicketTreatment[], areaSquareFeet = 2000n): LoadedStop {
  const lawns = [{ ...LAWN, area: of("sq ft", areaSquareFeet) }];
  return { visitId, treatments, wantsSign: false, mixes: valueOf(makeMixTicket({ ...QUESTION, lawns, treatments })).mixes };
}
