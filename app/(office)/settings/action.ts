"use server";

import { cookies } from "next/headers";
import { redirect } from "next/navigation";
import { idField } from "#application/field.schema";
import { marksCookiesSecure } from "#application/office";
import { COMPANY_COOKIE } from "../../session";
import { THEME_COOKIE, themeOf } from "../../theme";

const YEAR_SECONDS = 31_536_000;

function keptAYear() {
  return { httpOnly: true, sameSite: "lax", secure: marksCookiesSecure(), path: "/", maxAge: YEAR_SECONDS } as const;
}

/** Keeps the theme in this browser. */
export async function chooseThemeAction(form: FormData): Promise<void> {
  const chosen = form.get("theme");
  (await cookies()).set(THEME_COOKIE, themeOf(typeof chosen === "string" ? chosen : undefined), keptAYear());
  redirect("/settings#screen");
}

/** Opens another of the account's companies in this browser. Membership is asked of the database at each use. */
export async function chooseCompanyAction(form: FormData): Promise<void> {
  const chosen = idField.safeParse(form.get("companyId"));
  if (chosen.success) (await cookies()).set(COMPANY_COOKIE, chosen.data, keptAYear());
  redirect("/");
}
