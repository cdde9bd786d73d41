import Link from "next/link";
import { type LicenseOfPerson, type PersonOfCrew } from "#application/people/list-people";
import { may } from "#application/permission";
import { LICENSE_KIND_WORDS } from "#domain/crew/license";
import { ROLE_SENTENCES, ROLE_WORDS, type Role } from "#domain/crew/role";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { LinkButton } from "#ui/button";
import { Code } from "#ui/code";
import { EmptyState } from "#ui/empty-state";
import { KeyValueList } from "#ui/key-value-list";
import { PageHead } from "#ui/page-head";
import { Row } from "#ui/row";
import { Section } from "#ui/section";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { Dialog } from "#ui/dialog.client";
import { PressForm } from "../../../action-form.client";
import { memberOfPage } from "../../../session";
import { standingSentence } from "../license-standing";
import { endMembershipAction, issueResetLinkAction, withdrawInvitationAction, withdrawLicenseAction } from "./action";
import { ChangeRoleForm } from "./change-role-form.client";
import { personNameOfPage, personOfPage, type PersonPageProps } from "./person-of-page";

export async function generateMetadata(props: PersonPageProps) {
  return { title: (await personNameOfPage(props)) ?? "Crew" };
}

export default async function PersonPage(props: PersonPageProps) {
  const { member } = await memberOfPage();
  const person = await personOfPage(props);
  const base = `/crew/${person.personId}`;
  return (
    <>
      <PageHead
        above={<Link href="/crew">Crew</Link>}
        title={person.name}
        sentence={person.leftOn === null ? (person.phone ?? "No phone number on file.") : `Left on ${formatShortDate(person.leftOn)}.`}
        actions={may(member.role, "people/change-person") && <LinkButton href={`${base}/change-person`}>Change</LinkButton>}
      />
      <Section id="licenses" name="Licenses">
        <Stack gap={4}>
          <Licenses person={person} mayWithdraw={may(member.role, "people/withdraw-license")} />
          {may(member.role, "people/add-license") && (
            <div>
              <LinkButton href={`${base}/add-license`}>Add a license</LinkButton>
            </div>
          )}
        </Stack>
      </Section>
      <Section id="access" name="Access">
        <Access person={person} role={member.role} isSelf={member.personId === person.personId} />
      </Section>
    </>
  );
}

function Licenses({ person, mayWithdraw }: { readonly person: PersonOfCrew; readonly mayWithdraw: boolean }) {
  const withdraw = (license: LicenseOfPerson) => (
    <Dialog open="Entered by mistake" title="Take this license entry back?" close="Leave it">
      <p>
        Only for an entry that was never right. A license that ran out stays: it says so itself, and past records name it. The number is{" "}
        {license.number}.
      </p>
      <PressForm action={withdrawLicenseAction} fixed={{ licenseId: license.licenseId }} whilePending="Taking back">
        Take it back
      </PressForm>
    </Dialog>
  );
  return (
    <Table
      caption="Licenses and registrations, the latest first"
      captionSpoken
      columns={[
        { id: "kind", head: "Kind" },
        { id: "state", head: "State" },
        { id: "category", head: "Category" },
        { id: "number", head: "Number" },
        { id: "expires", head: "Expires" },
        { id: "standing", head: "Today" },
        ...(mayWithdraw ? [{ id: "withdraw", head: "Correct" }] : []),
      ]}
      rows={person.licenses.map((license) => ({
        id: license.licenseId,
        cells: {
          kind: LICENSE_KIND_WORDS[license.kind],
          state: license.state,
          category: license.category,
          number: <Code>{license.number}</Code>,
          expires: formatShortDate(license.expiresOn),
          standing: license.standing.kind === "expired" ? <strong>{standingSentence(license.standing)}</strong> : standingSentence(license.standing),
          ...(mayWithdraw ? { withdraw: withdraw(license) } : {}),
        },
      }))}
      empty={<EmptyState sentence="No license is on file. Without one nobody can name this person on a mix ticket." />}
    />
  );
}

function Access({ person, role, isSelf }: { readonly person: PersonOfCrew; readonly role: Role; readonly isSelf: boolean }) {
  const { access, personId } = person;
  switch (access.kind) {
    case "none":
      return (
        <EmptyState
          sentence={`${person.name} has no account.`}
          actions={may(role, "people/invite-person") && <LinkButton href={`/crew/${personId}/invite-person`}>Invite</LinkButton>}
        />
      );
    case "invited":
      return (
        <Sheet>
          <Stack gap={4}>
            <p>
              Invited as {ROLE_WORDS[access.role]} at {access.email}. The link runs out on{" "}
              {new Intl.DateTimeFormat("en-US", { dateStyle: "medium" }).format(access.expiresAt)}.
            </p>
            {may(role, "people/withdraw-invitation") && (
              <Row>
                <LinkButton href={`/crew/${personId}/invite-person`}>Invite anew</LinkButton>
                <PressForm action={withdrawInvitationAction} fixed={{ invitationId: access.invitationId }} whilePending="Withdrawing">
                  Withdraw the invitation
                </PressForm>
              </Row>
            )}
          </Stack>
        </Sheet>
      );
    case "member":
      return (
        <Sheet>
          <Stack gap={5}>
            <KeyValueList
              pairs={[
                { key: "Email address", value: access.email },
                { key: "May", value: `${ROLE_WORDS[access.role]}. ${ROLE_SENTENCES[access.role]}` },
              ]}
            />
            {may(role, "people/change-role") && <ChangeRoleForm personId={personId} role={access.role} />}
            <Row align="top">
              {may(role, "accounts/issue-reset-link") && (
                <PressForm action={issueResetLinkAction} fixed={{ personId }} whilePending="Making the link">
                  Make a link to set a new password
                </PressForm>
              )}
              {may(role, "people/end-membership") && (
                <Dialog open="End access" title={`End ${isSelf ? "your own" : `${person.name}'s`} access?`} close="Leave it">
                  <p>It ends with the next click. What {isSelf ? "you" : "they"} did stays on record, and a new invitation brings it back.</p>
                  <PressForm action={endMembershipAction} fixed={{ personId }} whilePending="Ending">
                    End access
                  </PressForm>
                </Dialog>
              )}
            </Row>
          </Stack>
        </Sheet>
      );
  }
}
