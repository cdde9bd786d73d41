import { type Metadata } from "next";
import { cookies } from "next/headers";
import Link from "next/link";
import { listCompanies } from "#application/accounts/list-companies";
import { house } from "#application/house";
import { may } from "#application/permission";
import { US_STATES } from "#domain/company/us-state";
import { ROLE_SENTENCES, ROLE_WORDS } from "#domain/crew/role";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { Button, LinkButton } from "#ui/button";
import { KeyValueList } from "#ui/key-value-list";
import { PageHead } from "#ui/page-head";
import { Row } from "#ui/row";
import { JumpLinks, Section } from "#ui/section";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { deskThemes, ThemeSwitch } from "#ui/theme-switch";
import { memberOfPage } from "../../session";
import { THEME_COOKIE, themeOf } from "../../theme";
import { chooseCompanyAction, chooseThemeAction } from "./action";
import { SignOutButton } from "./sign-out-button.client";
import { WaysOfHouse } from "./ways-of-house";

export const metadata: Metadata = { title: "Settings" };

const SECTIONS = [
  { id: "company", name: "Company" },
  { id: "ways", name: "How the house works" },
  { id: "temperatures", name: "Temperatures" },
  { id: "account", name: "Your account" },
  { id: "screen", name: "Screen" },
] as const;

export default async function SettingsPage() {
  const { company, companyId, member } = await memberOfPage();
  const companies = await listCompanies(house(), member.accountId);
  const seesTemperatures = may(member.role, "temperatures/read-temperatures");
  const seesWays = may(member.role, "companies/read-house-settings");
  const theme = themeOf((await cookies()).get(THEME_COOKIE)?.value);
  return (
    <>
      <PageHead title="Settings" sentence={`${company.name}, ${member.personName}, ${ROLE_WORDS[member.role]}.`} />
      <JumpLinks sections={SECTIONS.filter(({ id }) => (id !== "temperatures" || seesTemperatures) && (id !== "ways" || seesWays))} />
      <Section id="company" name="Company">
        <Sheet>
          <Stack gap={5}>
            <KeyValueList
              pairs={[
                { key: "Name", value: company.name },
                { key: "State", value: US_STATES[company.state].name },
                { key: "Time zone", value: company.timeZone },
                { key: "Phone", value: company.phone ?? "Not on file" },
                { key: "Address", value: company.address ?? "Not on file" },
                { key: "Business license", value: businessLicenseWords(company) },
                {
                  key: "Insurance",
                  value: company.insuranceExpiresOn === null ? "Not on file" : `until ${formatShortDate(company.insuranceExpiresOn)}`,
                },
              ]}
            />
            {may(member.role, "companies/change-company") && (
              <div>
                <LinkButton href="/settings/change-company">Change the company</LinkButton>
              </div>
            )}
            {companies.length > 1 && (
              <form action={chooseCompanyAction}>
                <Stack gap={3}>
                  <p>You belong to {companies.length} companies.</p>
                  <Row>
                    {companies.map((one) => (
                      <Button key={one.companyId} type="submit" name="companyId" value={one.companyId} aria-pressed={one.companyId === companyId}>
                        {one.companyName}
                      </Button>
                    ))}
                  </Row>
                </Stack>
              </form>
            )}
          </Stack>
        </Sheet>
      </Section>
      {seesWays && <WaysOfHouse mayChange={may(member.role, "companies/change-house-settings")} />}
      {seesTemperatures && <TemperaturesSection />}
      <Section id="account" name="Your account">
        <Sheet>
          <Stack gap={5}>
            <p>
              {ROLE_WORDS[member.role]}. {ROLE_SENTENCES[member.role]}
            </p>
            <Row>
              <LinkButton href="/settings/change-password">Change your password</LinkButton>
              <SignOutButton />
            </Row>
          </Stack>
        </Sheet>
      </Section>
      <Section id="screen" name="Screen">
        <Sheet>
          <Stack gap={5}>
            <ThemeSwitch options={deskThemes} chosen={theme} action={chooseThemeAction} />
            <p>
              <Link href="/sample-sheet" prefetch={false}>
                Sample sheet: every part that screens are made of
              </Link>
            </p>
          </Stack>
        </Sheet>
      </Section>
    </>
  );
}

function TemperaturesSection() {
  return (
    <Section id="temperatures" name="Temperatures">
      <Sheet>
        <Stack gap={5}>
          <p>Daily highs and lows of a place near the lawns, kept by hand. Growth potential beside the year’s nitrogen is drawn from them.</p>
          <div>
            <LinkButton href="/settings/temperatures">Daily temperatures</LinkButton>
          </div>
        </Stack>
      </Sheet>
    </Section>
  );
}

function businessLicenseWords(company: {
  readonly businessLicenseNumber: string | null;
  readonly businessLicenseExpiresOn: Parameters<typeof formatShortDate>[0] | null;
}): string {
  if (company.businessLicenseNumber === null) return "Not on file";
  const until = company.businessLicenseExpiresOn === null ? "no last day on file" : `until ${formatShortDate(company.businessLicenseExpiresOn)}`;
  return `${company.businessLicenseNumber}, ${until}`;
}
