import { type Finding } from "#domain/foundation/finding";
import { changeOfMix, filledUncleaned, heldNotKnown, mixInTank } from "#domain/mixing/mix-change";
import { isSprayed } from "#domain/mixing/ticket-question";
import { type FilledOnto, filledOntoOf } from "#application/fills/filled-onto";
import { ticketInHand } from "#application/visits/issued-ticket";
import { type VisitOnFile } from "#application/visits/read-visit";
import { type VisitTicket } from "#application/visits/visit-ticket";
import { type Work } from "#application/use-case";

type Planned = Pick<VisitTicket, "visit" | "question">;

/**
 * What is to be said of the tanks that a visit's spray came out of, by the fills that were really drawn from: what a tank
 * held before such a fill, must not reach these lawns, and was not cleaned out by what is on file.
 */
export async function tanksOfRecord(work: Work, { issued, outcome }: Pick<VisitOnFile, "issued" | "outcome">, fillIds: readonly string[]): Promise<readonly Finding[]> {
  const planned = ticketInHand(issued, outcome);
  const fills = await filledOntoOf(work, fillIds);
  return planned === undefined ? [] : [...fills.values()].flatMap((fill) => uncleaned(planned, fill));
}

function uncleaned({ visit, question: { lawns, treatments } }: Planned, { equipmentId, filled, onto }: FilledOnto): readonly Finding[] {
  const own = treatments.filter(isSprayed).filter(({ productId }) => filled.products.some((product) => product.productId === productId));
  const gear = own.find((treatment) => treatment.gear.equipmentId === equipmentId)?.gear ?? own[0]?.gear;
  if (gear === undefined || onto === "clean") return [];
  if (onto === "unknown") return [heldNotKnown({ gear }, mixInTank(filled))];
  const stop = { name: visit.property.street, lawns, treatments };
  const { unwanted } = changeOfMix(mixInTank(onto), { stop, treatments: own, gear });
  return unwanted.length === 0 ? [] : [filledUncleaned(mixInTank(onto), mixInTank(filled), { stop, gear }, unwanted)];
}
