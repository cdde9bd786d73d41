import { z } from "zod";
import { emailField } from "#application/field.schema";

/** What the sign-in form sends. An old password may be shorter than a new one must be. */
export const signInSchema = z.object({
  email: emailField,
  password: z.string("Give your password.").min(1, "Give your password.").max(200, "At most 200 characters."),
});
