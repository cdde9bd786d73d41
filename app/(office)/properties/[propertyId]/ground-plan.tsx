import { type LawnOnFile, type PropertyOnFile } from "#application/properties/read-property";
import { squareFeetWords } from "#domain/properties/area-words";
import { sum } from "#domain/quantities/quantity";
import { LinkButton } from "#ui/button";
import { LawnPlan } from "#ui/drawings/lawn-plan";
import { EmptyState } from "#ui/empty-state";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { drawGround } from "./ground-drawing";
import { keptClearArea } from "./ground-words";

/** "5,420 sq ft of lawn; 900 sq ft along the water are kept clear." */
function conclusionOf(lawns: readonly LawnOnFile[]): string {
  const whole = squareFeetWords(sum("area", lawns.map(({ area }) => area)));
  const edges = lawns.flatMap(({ waterEdges }) => waterEdges);
  if (edges.length === 0) return `${whole} of lawn.`;
  const clear = edges.map(keptClearArea);
  if (clear.includes(undefined)) return `${whole} of lawn. How much is kept clear of the water is not known.`;
  return `${whole} of lawn; ${squareFeetWords(sum("area", clear.flatMap((area) => area ?? [])))} along the water are kept clear.`;
}

interface Props {
  readonly property: PropertyOnFile;
  /** The lawns to draw: all, or the one that the page is narrowed to. */
  readonly lawns: readonly LawnOnFile[];
  readonly mayMeasure: boolean;
}

/** The plan of the property to scale, or what to do where nothing is measured. */
export function GroundPlan({ property, lawns, mayMeasure }: Props) {
  const base = `/properties/${property.propertyId}/measure-lawn`;
  const drawing = drawGround(lawns);
  const undrawn = lawns.filter(({ zoneId }) => !drawing.lawns.some(({ id }) => id === zoneId));
  if (lawns.length === 0) {
    return (
      <EmptyState
        sentence="No lawn is measured yet. Draw it, or type its sides."
        actions={
          mayMeasure && (
            <>
              <LinkButton href={`${base}?shape=corners`}>Draw it by its corners</LinkButton>
              <LinkButton href={`${base}?shape=rectangle`}>Type its sides</LinkButton>
            </>
          )
        }
      />
    );
  }
  return (
    <Sheet>
      <Stack gap={4}>
        {drawing.lawns.length > 0 && <LawnPlan title="Plan" conclusion={conclusionOf(lawns)} {...drawing} />}
        {undrawn.map((lawn) => (
          <p key={lawn.zoneId}>
            <strong>
              {lawn.letter} {lawn.name}, {squareFeetWords(lawn.area)}:
            </strong>{" "}
            {lawn.areaOrigin === "imported" ? "the size is from the customer list" : "the size was entered"}, so there is no shape to draw.
          </p>
        ))}
      </Stack>
    </Sheet>
  );
}
