import { type Finding } from "#domain/foundation/finding";
import { filledUncleaned, heldNotKnown, mixInTank, OF_CLEAN_OUTS } from "#domain/mixing/mix-change";
import { residuesFor } from "#domain/mixing/tank-contents";
import { isSprayed } from "#domain/mixing/ticket-question";
import { type FilledOnto, filledOntoOf } from "#application/fills/filled-onto";
import { type RecordPlan } from "#application/register/record-plan";
import { type UsedOfVisit } from "#application/register/used-of-visit";
import { ticketInHand } from "#application/visits/issued-ticket";
import { type VisitOnFile } from "#application/visits/read-visit";
import { type VisitTicket } from "#application/visits/visit-ticket";
import { type Work } from "#application/use-case";

type Planned = Pick<VisitTicket, "visit" | "question">;

/**
 * The findings of a visit's plan as its record has them: of a sprayer that was drawn from, what the fills that were really
 * drawn from went onto is what counts, and not what the plan makes of its tank by now: what it held before such a fill
 * since its last clean-out, must not reach these lawns, and was not cleaned out by what is on file. A sprayer that gave a
 * fill in the place of the planned one takes over for it. What is said of any other tank stays.
 */
export async function tanksOfRecord(work: Work, found: Pick<VisitOnFile, "issued" | "outcome">, { findings, treatments }: RecordPlan, { used, draws }: UsedOfVisit): Promise<readonly Finding[]> {
  if (draws.length === 0) return findings;
  const onTicket = ticketInHand(found.issued, found.outcome);
  const fills = [...(await filledOntoOf(work, draws.map(({ fill }) => fill.fillId))).values()];
  const nameOf = await namesOfGear(work, fills.map(({ equipmentId }) => equipmentId));
  const planned = new Map(treatments.map(({ line, equipmentName }) => [line, equipmentName]));
  const plannedFor = (isDrawn: boolean) => used.flatMap(({ line, draws: own }) => (own.length > 0 === isDrawn ? (planned.get(line) ?? []) : []));
  const replaced = plannedFor(true).filter((name) => !plannedFor(false).includes(name));
  const settled = new Set([...nameOf.values(), ...replaced]);
  return [
    ...findings.filter(({ rule, about: [gearName = ""] }) => !OF_CLEAN_OUTS.has(rule) || !settled.has(gearName)),
    ...(onTicket === undefined ? [] : fills.flatMap((fill) => uncleaned(onTicket, fill, nameOf.get(fill.equipmentId)))),
  ];
}

async function namesOfGear({ tx, company: { companyId } }: Work, equipmentIds: readonly string[]): Promise<ReadonlyMap<string, string>> {
  const rows = await tx.equipment.findMany({ where: { companyId, equipmentId: { in: [...equipmentIds] } }, select: { equipmentId: true, name: true } });
  return new Map(rows.map(({ equipmentId, name }) => [equipmentId, name]));
}

function uncleaned({ visit, question: { lawns, treatments } }: Planned, { equipmentId, filled, onto }: FilledOnto, gearName: string | undefined): readonly Finding[] {
  const own = treatments.filter(isSprayed).filter(({ productId }) => filled.products.some((product) => product.productId === productId));
  const plannedGear = own.find((treatment) => treatment.gear.equipmentId === equipmentId)?.gear ?? own[0]?.gear;
  if (plannedGear === undefined) return [];
  // What the plan knows of its sprayer judges the mix; the finding names the one that it really came out of.
  const gear = { ...plannedGear, name: gearName ?? plannedGear.name };
  const stop = { name: visit.property.street, lawns, treatments };
  const left = residuesFor(onto.map((one) => (one === "unknown" ? one : mixInTank(one))), { stop, treatments: own, gear });
  if (left.length > 0) return [filledUncleaned(left, filled, { stop, gear })];
  return onto.includes("unknown") ? [heldNotKnown({ gear }, onto.findLast((one) => one !== "unknown") ?? filled)] : [];
}
