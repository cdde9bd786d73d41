import { type WorkedArea } from "#domain/worksheets/area";
import { toNumber } from "#domain/quantities/rational";
import { LawnPlan } from "#ui/drawings/lawn-plan";
import { Sheet } from "#ui/sheet";

/** "38 ft", with tenths only where there are any. */
function sideWords(feet: number): string {
  return `${String(Math.round(feet * 10) / 10)} ft`;
}

/** The measured shape to scale, with what was measured along its lines. */
export function AreaDrawing({ drawn, squareFeet, working }: WorkedArea) {
  const size = Math.round(toNumber(squareFeet));
  const lawn = {
    id: "piece",
    letter: "A",
    name: "Lawn",
    outline: drawn.outline,
    sizeSquareFeet: size,
    takenOffSquareFeet: 0,
    keptClearSquareFeet: 0,
    treatedSquareFeet: size,
    measured: "as typed",
    measuredLines: drawn.measuredLines.map(({ from, to }) => [from, to] as const),
    sides: drawn.measuredLines.map(({ from, to, feet }) => ({ from, to, words: sideWords(feet) })),
  };
  return (
    <Sheet>
      <LawnPlan title="To scale" conclusion={working.result} lawns={[lawn]} areas={[]} />
    </Sheet>
  );
}
