import { readNutrientLedger } from "#application/properties/read-nutrient-ledger";
import { type VisitRow } from "#application/visits/visit-rows";
import { Stack } from "#ui/stack";
import { asMember } from "../../../session";
import { YearOfLawn } from "../../properties/year-of-lawn";

/** The year's nutrients on the lawns of a visit, with what it brings framed; nothing where it feeds no lawn. */
export async function YearAfterVisit({ visit }: { readonly visit: VisitRow }) {
  // The ledger frames what is planned; of what was done it says nothing that the record does not.
  if (visit.state !== "planned" || visit.treatments.length === 0) return null;
  const answer = await asMember(readNutrientLedger, { propertyId: visit.property.propertyId, visitId: visit.visitId });
  if (!answer.ok) return null;
  const treated = new Set(visit.treatments.flatMap(({ zoneIds }) => zoneIds));
  const fed = answer.value.lawns.filter(({ zoneId, ledger }) => treated.has(zoneId) && ledger.nutrients.some(({ parts }) => parts.some(({ standing }) => standing === "this-visit")));
  if (fed.length === 0) return null;
  return (
    <Stack gap={5}>
      <h3>The year on these lawns</h3>
      {fed.map((lawn) => (
        <YearOfLawn key={lawn.zoneId} lawn={lawn} withMonths={false} />
      ))}
    </Stack>
  );
}
