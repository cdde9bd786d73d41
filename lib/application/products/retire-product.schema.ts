import { z } from "zod";
import { idField, versionField } from "#application/field.schema";

export const retireProductSchema = z.object({ productId: idField, version: versionField });
