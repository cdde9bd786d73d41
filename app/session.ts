import { cookies, headers } from "next/headers";
import { redirect } from "next/navigation";
import { getServerSession } from "next-auth";
import { cache } from "react";
import { readCompany } from "#application/companies/read-company";
import { house } from "#application/house";
import { SIGNED_OUT, type UseCaseRefusal } from "#application/refusal";
import { type SessionKey, type UseCase } from "#application/use-case";
import { type Outcome, refuse } from "#domain/foundation/outcome";
import { authentication } from "./authentication";
import { readForm } from "./form-state";

/** The cookie that says which of an account's companies is open. Membership is asked of the database each time. */
export const COMPANY_COOKIE = "halfpass-company";

const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;

/** What the browser carries, or undefined when nobody is signed in. */
export const sessionKey = cache(async (): Promise<SessionKey | undefined> => {
  const session = await getServerSession(authentication());
  if (session === null) return undefined;
  const chosen = (await cookies()).get(COMPANY_COOKIE)?.value;
  const companyId = chosen !== undefined && UUID.test(chosen) ? chosen : session.companyId;
  return { accountId: session.accountId, companyId, sessionVersion: session.sessionVersion };
});

/** Runs a use case as whoever is signed in. */
export async function asMember<Input, Answer>(
  useCase: UseCase<Input, Answer>,
  input: Input,
): Promise<Outcome<Answer, UseCaseRefusal>> {
  const key = await sessionKey();
  return key === undefined ? refuse(SIGNED_OUT) : useCase(house(), key, input);
}

/** Runs a use case with what a form sent. Whether that fits, the use case's own schema decides. */
export function sendForm<Answer>(useCase: UseCase<never, Answer>, form: FormData): Promise<Outcome<Answer, UseCaseRefusal>> {
  return asMember(useCase, readForm(form) as never);
}

/** The company and the member for whom a page is drawn; sends everyone else to the sign-in page and back. */
export const memberOfPage = cache(async () => {
  const answer = await asMember(readCompany, {});
  if (answer.ok) return answer.value;
  const path = (await headers()).get("x-halfpass-path") ?? "/";
  redirect(`/sign-in?next=${encodeURIComponent(path)}`);
});
