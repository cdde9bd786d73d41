import { z } from "zod";
import { idField } from "#application/field.schema";

export const withdrawInvitationSchema = z.object({ invitationId: idField });
