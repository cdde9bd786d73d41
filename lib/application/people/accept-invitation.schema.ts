import { z } from "zod";

export const acceptInvitationSchema = z.object({
  link: z.string("The link is not whole.").regex(/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}\.[A-Za-z0-9_-]{43}$/, "The link is not whole."),
  password: z.string("Give a password.").min(1, "Give a password.").max(200, "At most 200 characters."),
});
