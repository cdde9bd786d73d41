import { accountOfSession, changePasswordOf } from "#adapters/postgres/accounts";
import { hashPassword, isPassword } from "#adapters/password-hash";
import { accept, refuse } from "#domain/foundation/outcome";
import { changePasswordSchema } from "#application/accounts/change-password.schema";
import { writeDeed } from "#application/audit-trail";
import { badField, SIGNED_OUT } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Changes the member's own password and ends every session of the account, this one included. */
export const changePassword = useCase("accounts/change-password", changePasswordSchema, async (work, form) => {
  const account = await accountOfSession(work.tx, work.member.accountId, work.sessionVersion);
  if (account === undefined) return refuse(SIGNED_OUT);
  if (!(await isPassword(account.passwordHash, form.present))) return badField("present", "This is not your present password.");
  const passwordHash = await hashPassword(form.next);
  const version = await changePasswordOf(work.tx, work.member.accountId, work.sessionVersion, passwordHash);
  if (version === undefined) return refuse(SIGNED_OUT);
  await writeDeed(work, work.member.personId, { deed: "password-changed", details: {} });
  return accept({ email: account.email });
});
