import { type EquipmentOnFile, type LatestOnFile, type VehicleOnFile } from "#application/equipment/gear-on-file";

type Piece = EquipmentOnFile & { readonly latest: readonly LatestOnFile[] };

function count(many: number, one: string, more: string): string {
  return many === 1 ? `1 ${one}` : `${String(many)} ${more}`;
}

/** How trucks and gear stand, in one sentence: how many, and what wants care. */
export function gearSentence(trucks: readonly VehicleOnFile[], gear: readonly Piece[]) {
  const standings = gear.flatMap((piece) => piece.latest.map(({ standing }) => standing.kind));
  const runOut = standings.filter((kind) => kind === "run-out").length;
  const changed = standings.filter((kind) => kind === "setup-changed").length;
  const never = gear.filter((piece) => piece.latest.length === 0).length;
  const cares = [
    ...(runOut > 0 ? [`${count(runOut, "calibration has", "calibrations have")} run out.`] : []),
    ...(changed > 0 ? [`${count(changed, "calibration is", "calibrations are")} of another tip or pressure.`] : []),
    ...(never > 0 ? [`${count(never, "piece has", "pieces have")} never been calibrated.`] : []),
  ];
  return (
    <>
      {count(trucks.length, "truck", "trucks")}, {count(gear.length, "piece of gear", "pieces of gear")}. {cares.length > 0 && <strong>{cares.join(" ")}</strong>}
    </>
  );
}
