import { z } from "zod";
import { newPasswordField } from "#application/field.schema";

export const changePasswordSchema = z
  .object({
    present: z.string("Give your present password.").min(1, "Give your present password.").max(200, "At most 200 characters."),
    next: newPasswordField,
  })
  .refine((form) => form.present !== form.next, { path: ["next"], message: "The new password is the same as the present one." });
