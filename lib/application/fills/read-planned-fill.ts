import { accept } from "#domain/foundation/outcome";
import { type Finding } from "#domain/foundation/finding";
import { groupedBy } from "#domain/foundation/grouping";
import { planFill, type PlannedFill, visitsThatShare } from "#domain/mixing/tank-fill";
import { finestTools } from "#domain/mixing/measuring-tool";
import { type Measure } from "#domain/quantities/exact-quantity";
import { type Quantity } from "#domain/quantities/quantity";
import { readPlannedFillSchema } from "#application/fills/read-planned-fill.schema";
import { type SprayOfVisit, spraysOfVisits, type VisitOfFill } from "#application/fills/sprays-of-visits";
import { useCase } from "#application/use-case";

/** One filling of one tank: the visits that share its mix, and what goes in. */
export interface FillToMake {
  readonly equipmentId: string;
  readonly gearName: string;
  readonly capacity: Quantity<"volume">;
  readonly visits: readonly VisitOfFill[];
  readonly plan: Omit<PlannedFill, "findings">;
  readonly findings: readonly Finding[];
}

/**
 * What goes into the tanks for some visits, from their mix tickets: the issued one, else what is worked out now. Visits of
 * one tank that share a mix are one fill; the others are fills of their own.
 */
export const readPlannedFill = useCase("fills/read-planned-fill", readPlannedFillSchema, async (work, { visitIds }) => {
  const { sprays, without, mark } = await spraysOfVisits(work, visitIds);
  const tanks = [...groupedBy(sprays, ({ gear }) => gear.equipmentId).values()];
  const fills = mark === undefined ? [] : tanks.flatMap((own) => fillsOfTank(own, mark));
  return accept({ fills, without });
});

function fillsOfTank(sprays: readonly SprayOfVisit[], mark: Measure<"volume">): readonly FillToMake[] {
  const [first] = sprays;
  if (first === undefined) return [];
  const { equipmentId, name: gearName, capacity } = first.gear;
  return visitsThatShare(sprays.map(({ stop }) => stop)).flatMap((group) => {
    const own = sprays.filter(({ stop }) => group.includes(stop));
    const toolOf = finestTools(own.flatMap(({ treatments }) => treatments));
    const planned = planFill(group, { name: gearName, capacity, mark }, toolOf);
    if (!planned.ok) return [];
    const { findings, ...plan } = planned.value;
    return [{ equipmentId, gearName, capacity, visits: own.map(({ visit }) => visit), plan, findings }];
  });
}
