import { z } from "zod";
import { idField } from "#application/field.schema";

export const endMembershipSchema = z.object({ personId: idField });
