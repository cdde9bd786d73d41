import { type Finding } from "#domain/foundation/finding";
import { filledUncleaned, heldNotKnown, mixInTank } from "#domain/mixing/mix-change";
import { residuesFor } from "#domain/mixing/tank-contents";
import { isSprayed } from "#domain/mixing/ticket-question";
import { type FilledOnto, filledOntoOf } from "#application/fills/filled-onto";
import { ticketInHand } from "#application/visits/issued-ticket";
import { type VisitOnFile } from "#application/visits/read-visit";
import { type VisitTicket } from "#application/visits/visit-ticket";
import { type Work } from "#application/use-case";

type Planned = Pick<VisitTicket, "visit" | "question">;

/**
 * What is to be said of the tanks that a visit's spray came out of, by the fills that were really drawn from: what a tank
 * held before such a fill since its last clean-out, must not reach these lawns, and was not cleaned out by what is on file.
 */
export async function tanksOfRecord(work: Work, { issued, outcome }: Pick<VisitOnFile, "issued" | "outcome">, fillIds: readonly string[]): Promise<readonly Finding[]> {
  const planned = ticketInHand(issued, outcome);
  const fills = await filledOntoOf(work, fillIds);
  return planned === undefined ? [] : [...fills.values()].flatMap((fill) => uncleaned(planned, fill));
}

function uncleaned({ visit, question: { lawns, treatments } }: Planned, { equipmentId, filled, onto }: FilledOnto): readonly Finding[] {
  const own = treatments.filter(isSprayed).filter(({ productId }) => filled.products.some((product) => product.productId === productId));
  const gear = own.find((treatment) => treatment.gear.equipmentId === equipmentId)?.gear ?? own[0]?.gear;
  if (gear === undefined) return [];
  const stop = { name: visit.property.street, lawns, treatments };
  const left = residuesFor(onto.map((one) => (one === "unknown" ? one : mixInTank(one))), { stop, treatments: own, gear });
  if (left.length > 0) return [filledUncleaned(left, filled, { stop, gear })];
  return onto.includes("unknown") ? [heldNotKnown({ gear }, onto.findLast((one) => one !== "unknown") ?? filled)] : [];
}
