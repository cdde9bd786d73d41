import { type InputRefusal, accept } from "#domain/foundation/outcome";
import { type Finding } from "#domain/foundation/finding";
import { groupedBy } from "#domain/foundation/grouping";
import { type SprayMix } from "#domain/mixing/spray-mix";
import { type FillStop, fillStopOf, planFill, type PlannedFill, visitsThatShare } from "#domain/mixing/tank-fill";
import { treatmentsForRounding } from "#domain/mixing/rounding-room";
import { treatmentOn } from "#domain/mixing/tank-runs";
import { finestTools } from "#domain/mixing/measuring-tool";
import { isSprayed, type TicketTreatment } from "#domain/mixing/ticket-question";
import { type Measure } from "#domain/quantities/exact-quantity";
import { type Quantity } from "#domain/quantities/quantity";
import { readPlannedFillSchema } from "#application/fills/read-planned-fill.schema";
import { issuedTicketsOf, ticketInHand } from "#application/visits/issued-ticket";
import { ticketsOfVisits } from "#application/visits/visit-ticket";
import { useCase } from "#application/use-case";

export interface VisitOfFill {
  readonly visitId: string;
  readonly name: string;
  readonly street: string;
  readonly vehicleId: string | null;
}

/** One filling of one tank: the visits that share its mix, and what goes in. */
export interface FillToMake {
  readonly equipmentId: string;
  readonly gearName: string;
  readonly capacity: Quantity<"volume">;
  readonly visits: readonly VisitOfFill[];
  readonly plan: Omit<PlannedFill, "findings">;
  readonly findings: readonly Finding[];
}

/** A visit for which nothing can be filled, and why. */
export interface VisitWithoutFill extends VisitOfFill {
  readonly why: string;
}

interface StopOfTank {
  readonly visit: VisitOfFill;
  readonly stop: FillStop;
  readonly equipmentId: string;
  readonly gearName: string;
  readonly capacity: Quantity<"volume">;
  readonly treatments: readonly TicketTreatment[];
}

function noSpray(visit: VisitOfFill, refusal?: InputRefusal): VisitWithoutFill {
  return { ...visit, why: refusal?.sentence ?? "Nothing is sprayed at this visit." };
}

/**
 * What goes into the tanks for some visits, from their mix tickets: the issued one, else what is worked out now. Visits of
 * one tank that share a mix are one fill; the others are fills of their own.
 */
export const readPlannedFill = useCase("fills/read-planned-fill", readPlannedFillSchema, async (work, { visitIds }) => {
  const found = await ticketsOfVisits(work, visitIds);
  const issued = await issuedTicketsOf(work, visitIds);
  const without: VisitWithoutFill[] = [];
  const stops: StopOfTank[] = [];
  for (const { visit, outcome } of found) {
    const { visitId, name, property, stop } = visit;
    const own: VisitOfFill = { visitId, name, street: property.street, vehicleId: stop?.vehicleId ?? null };
    const said = ticketInHand(issued.get(visitId), outcome);
    const sprays = said?.ticket.mixes.filter((mix): mix is SprayMix => mix.kind === "spray") ?? [];
    if (said === undefined || sprays.length === 0) without.push(noSpray(own, outcome.ok ? undefined : outcome.refusal.refusal));
    const planned = said === undefined ? [] : treatmentsForRounding(said.question);
    for (const mix of sprays) {
      const treatments = planned.filter(isSprayed).filter(({ line }) => mix.products.some((product) => product.line === line));
      const [first] = treatments;
      if (first === undefined) continue;
      stops.push({
        visit: own,
        stop: fillStopOf(visitId, mix, (line) => treatmentOn(treatments, line)),
        equipmentId: first.gear.equipmentId,
        gearName: first.gear.name,
        capacity: first.gear.capacity,
        treatments,
      });
    }
  }
  const mark = found[0]?.settings.tankMark;
  const tanks = [...groupedBy(stops, ({ equipmentId }) => equipmentId).values()];
  const fills = mark === undefined ? [] : tanks.flatMap((own) => fillsOfTank(own, mark));
  return accept({ fills, without });
});

function fillsOfTank(stops: readonly StopOfTank[], mark: Measure<"volume">): readonly FillToMake[] {
  const [first] = stops;
  if (first === undefined) return [];
  const { equipmentId, gearName, capacity } = first;
  return visitsThatShare(stops.map(({ stop }) => stop)).flatMap((group) => {
    const own = stops.filter(({ stop }) => group.includes(stop));
    const toolOf = finestTools(own.flatMap(({ treatments }) => treatments));
    const planned = planFill(group, { name: gearName, capacity, mark }, toolOf);
    if (!planned.ok) return [];
    const { findings, ...plan } = planned.value;
    return [{ equipmentId, gearName, capacity, visits: own.map(({ visit }) => visit), plan, findings }];
  });
}
