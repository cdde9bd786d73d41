import { readNutrientLedger } from "#application/properties/read-nutrient-ledger";
import { listWords } from "#domain/foundation/list-words";
import { EmptyState } from "#ui/empty-state";
import { Stack } from "#ui/stack";
import { asMember } from "../../../session";
import { YearOfLawn } from "../year-of-lawn";
import { type VisitsOfPropertyProps } from "./visits-of-property";

/** What went down this year and may still go down: a bar for each lawn and nutrient, and the months of one lawn. */
export async function ThisYearOnThisGround({ propertyId, zoneId }: VisitsOfPropertyProps) {
  const answer = await asMember(readNutrientLedger, { propertyId });
  if (!answer.ok) return <p>This year’s nutrients can’t be read.</p>;
  const { notCounted, year } = answer.value;
  const lawns = answer.value.lawns.filter((lawn) => zoneId === undefined || lawn.zoneId === zoneId);
  if (lawns.length === 0) return <EmptyState sentence="No lawn is measured yet, so nothing can be counted on it." />;
  const isEmpty = lawns.every(({ ledger }) => ledger.nutrients.every(({ parts }) => parts.length === 0) && ledger.missing.length === 0);
  if (isEmpty) return <EmptyState sentence={`Nothing was put down in ${String(year)}, and nothing that feeds is planned. Put the property on a program, or add one visit.`} />;
  return (
    <Stack gap={6}>
      {lawns.map((lawn) => (
        <YearOfLawn key={lawn.zoneId} lawn={lawn} withMonths={lawns.length === 1} />
      ))}
      {notCounted.length > 0 && <p>Past their window and not counted as planned: {listWords(notCounted)}.</p>}
    </Stack>
  );
}
