import { z } from "zod";
import { accept } from "#domain/foundation/outcome";
import { settingsOnFile } from "#application/companies/house-settings";
import { useCase } from "#application/use-case";

/** Reads the house settings of the company, with the version that a change of them starts from. */
export const readHouseSettings = useCase("companies/read-house-settings", z.object({}), async (work) => accept(await settingsOnFile(work)));
