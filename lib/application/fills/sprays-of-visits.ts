import { type InputRefusal } from "#domain/foundation/outcome";
import { type MixPlanned } from "#domain/mixing/fill-strength";
import { type SprayMix } from "#domain/mixing/spray-mix";
import { type FillStop, fillStopOf } from "#domain/mixing/tank-fill";
import { treatmentsForRounding } from "#domain/mixing/rounding-room";
import { treatmentOn } from "#domain/mixing/tank-runs";
import { isSprayed, type TicketSprayer, type TicketTreatment } from "#domain/mixing/ticket-question";
import { type Measure } from "#domain/quantities/exact-quantity";
import { issuedTicketsOf, ticketInHand } from "#application/visits/issued-ticket";
import { ticketsOfVisits } from "#application/visits/visit-ticket";
import { type Work } from "#application/use-case";

export interface VisitOfFill {
  readonly visitId: string;
  readonly name: string;
  readonly street: string;
  readonly vehicleId: string | null;
}

/** A visit for which nothing can be filled, and why. */
export interface VisitWithoutFill extends VisitOfFill {
  readonly why: string;
}

/** A spray of a visit, as its mix ticket has it in a tank. */
export interface SprayOfVisit {
  readonly visit: VisitOfFill;
  readonly stop: FillStop;
  readonly gear: TicketSprayer;
  /** As rounding may take them. */
  readonly treatments: readonly TicketTreatment[];
  /** What is planned of it, which the label's highest is known of. */
  readonly planned: MixPlanned;
}

/** What some visits spray, and those that spray nothing. */
export interface SpraysOfVisits {
  readonly sprays: readonly SprayOfVisit[];
  readonly without: readonly VisitWithoutFill[];
  /** The mark of the gauge; undefined where there is no visit. */
  readonly mark: Measure<"volume"> | undefined;
}

function noSpray(visit: VisitOfFill, refusal?: InputRefusal): VisitWithoutFill {
  return { ...visit, why: refusal?.sentence ?? "Nothing is sprayed at this visit." };
}

function plannedOf({ products }: SprayMix, treatments: readonly TicketTreatment[]): MixPlanned {
  return products.flatMap(({ line, concentration }) => {
    const treatment = treatmentOn(treatments, line);
    return isSprayed(treatment) ? [{ productId: treatment.productId, concentration, treatment }] : [];
  });
}

/** What some visits spray by their mix tickets: the issued one, else what is worked out now. */
export async function spraysOfVisits(work: Work, visitIds: readonly string[]): Promise<SpraysOfVisits> {
  const found = await ticketsOfVisits(work, visitIds);
  const issued = await issuedTicketsOf(work, visitIds);
  const without: VisitWithoutFill[] = [];
  const sprays: SprayOfVisit[] = [];
  for (const { visit, outcome } of found) {
    const { visitId, name, property, stop } = visit;
    const own: VisitOfFill = { visitId, name, street: property.street, vehicleId: stop?.vehicleId ?? null };
    const said = ticketInHand(issued.get(visitId), outcome);
    const mixes = said?.ticket.mixes.filter((mix): mix is SprayMix => mix.kind === "spray") ?? [];
    if (said === undefined || mixes.length === 0) {
      without.push(noSpray(own, outcome.ok ? undefined : outcome.refusal.refusal));
      continue;
    }
    const rounding = treatmentsForRounding(said.question);
    for (const mix of mixes) {
      const treatments = rounding.filter(isSprayed).filter(({ line }) => mix.products.some((product) => product.line === line));
      const planned = plannedOf(mix, said.question.treatments);
      const [first] = planned;
      if (first !== undefined) sprays.push({ visit: own, stop: fillStopOf(visitId, mix, (line) => treatmentOn(treatments, line)), gear: first.treatment.gear, treatments, planned });
    }
  }
  return { sprays, without, mark: found[0]?.settings.tankMark };
}
