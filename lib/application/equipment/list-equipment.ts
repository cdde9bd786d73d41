import { z } from "zod";
import { accept } from "#domain/foundation/outcome";
import { houseSettingsOf } from "#application/companies/house-settings";
import { calibrationsOnFile, equipmentOnFile, latestOf, vehiclesOnFile } from "#application/equipment/gear-on-file";
import { useCase } from "#application/use-case";

/** A measuring tool by one of its marks, as it was typed. */
export interface MeasuringToolOnFile {
  readonly measuringToolId: string;
  readonly name: string;
  readonly dimension: "mass" | "volume";
  readonly mark: string;
}

/** The trucks by number, the gear with each operator's latest calibration, and the measuring tools that are in use. */
export const listEquipment = useCase("equipment/list-equipment", z.object({}), async (work) => {
  const vehicles = await vehiclesOnFile(work);
  const gear = await equipmentOnFile(work);
  const calibrations = await calibrationsOnFile(work, gear);
  const tools = await work.tx.measuringTool.findMany({
    where: { companyId: work.company.companyId, stoodDownAt: null },
    orderBy: [{ name: "asc" }, { measuringToolId: "asc" }],
  });
  const measuringTools = tools.map(
    ({ measuringToolId, name, dimension, mark }): MeasuringToolOnFile => ({ measuringToolId, name, dimension: dimension === "mass" ? "mass" : "volume", mark }),
  );
  const settings = await houseSettingsOf(work);
  const equipment = gear.map((piece) => ({ ...piece, latest: latestOf(work, piece.equipmentId, calibrations, settings) }));
  return accept({ vehicles, equipment, measuringTools });
});
