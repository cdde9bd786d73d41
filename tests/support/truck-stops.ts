// Stops of a truck as loading and fills see them, from tickets of invented products: tests say only what differs.
import { type LoadedStop } from "#domain/mixing/loading-list";
import { makeMixTicket } from "#domain/mixing/mix-ticket";
import { treatmentsForRounding } from "#domain/mixing/rounding-room";
import { type ContainerOnHand, productsToLoad, weightsAlongRoute } from "#domain/mixing/products-to-load";
import { type TankPlanQuestion, type TreatedStop } from "#domain/mixing/tank-plan-question";
import { type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { valueOf } from "./domain-answers";
import { IRON, LAWN, QUESTION, SPRAYER } from "./ticket";

/** A treatment with the iron, whose label's highest rate is so many fluid ounces per 1,000 sq ft. */
export function upTo(treatment: TicketTreatment, fluidOunces: string): TicketTreatment {
  const { rates } = IRON.use;
  if (rates.basis !== "product-volume-per-area") throw new Error("Iron is poured.");
  return { ...treatment, use: { ...treatment.use, rates: { ...rates, high: rateOf("product-volume-per-area", fluidOunces, "fl oz per 1,000 sq ft") } } };
}

/** A stop with one lawn of so many square feet. */
export function truckStop(visitId: string, treatments: readonly TicketTreatment[], areaSquareFeet = 2000n, more: Partial<TreatedStop> = {}): LoadedStop {
  const lawns = [{ ...LAWN, area: of("sq ft", areaSquareFeet) }];
  return stopOf({ ...QUESTION, lawns, treatments }, { visitId, name: visitId, ...more });
}

/** A stop for a ticket's question. */
export function stopOf(question: TicketQuestion, more: Partial<TreatedStop> & Pick<TreatedStop, "visitId" | "name">): LoadedStop {
  const { lawns } = question;
  return { water: "no", lawns, treatments: treatmentsForRounding(question), wantsSign: false, mixes: valueOf(makeMixTicket(question)).mixes, ...more };
}

/** A truck's route with a clean tank, whose last mix is pushed out with water. */
export function tankQuestion(stops: readonly TreatedStop[], more: Partial<TankPlanQuestion> = {}, containers: readonly ContainerOnHand[] = []): TankPlanQuestion {
  return {
    stops,
    truck: { name: "Truck 1", payload: of("lb", 5000n), staysAboard: of("lb", 0n) },
    tanksAboard: [],
    lastHeld: new Map([[SPRAYER.equipmentId, "clean"]]),
    cleanOuts: "unknown",
    dryWeights: weightsAlongRoute(stops, productsToLoad(stops, containers)),
    settings: { tankLoads: "full-tanks-then-a-short-one", tankMark: exactly("gal", "0.1"), lineAtTheEnd: "pushed-out-with-water" },
    ...more,
  };
}
