import { type Metadata } from "next";
import { notFound } from "next/navigation";
import { listEquipment } from "#application/equipment/list-equipment";
import { type PersonOfCrew, listPeople } from "#application/people/list-people";
import { may } from "#application/permission";
import { LICENSE_KIND_WORDS } from "#domain/crew/license";
import { ROLE_WORDS } from "#domain/crew/role";
import { LinkButton } from "#ui/button";
import { DataTable } from "#ui/data-table.client";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Row } from "#ui/row";
import { Section } from "#ui/section";
import { asMember, memberOfPage } from "../../session";
import { gearSentence } from "./gear/gear-sentence";
import { standingSentence } from "./license-standing";

export const metadata: Metadata = { title: "Crew" };

function accessWords(person: PersonOfCrew): string {
  if (person.leftOn !== null) return "left";
  switch (person.access.kind) {
    case "none":
      return "no account";
    case "invited":
      return `invited as ${ROLE_WORDS[person.access.role]}`;
    case "member":
      return ROLE_WORDS[person.access.role];
  }
}

function licenseWords(person: PersonOfCrew): string {
  return person.licenses
    .map((license) => `${LICENSE_KIND_WORDS[license.kind]}, ${license.state} ${license.category}: ${standingSentence(license.standing)}`)
    .join("; ");
}

export default async function CrewPage() {
  const { member } = await memberOfPage();
  const answer = await asMember(listPeople, {});
  if (!answer.ok) notFound();
  const { people } = answer.value;
  const gear = await asMember(listEquipment, {});
  const here = people.filter((person) => person.leftOn === null);
  const lapsed = here.filter((person) => person.licenses.some((license) => license.standing.kind === "expired"));
  const addPerson = may(member.role, "people/add-person") && (
    <LinkButton kind="act" href="/crew/add-person">
      Add a person
    </LinkButton>
  );
  return (
    <>
      <PageHead
        title="Crew"
        sentence={
          <>
            {here.length === 1 ? "One person." : `${String(here.length)} people.`}{" "}
            {lapsed.length > 0 && (
              <strong>
                {lapsed.length === 1 ? "One has a license that ran out." : `${String(lapsed.length)} have a license that ran out.`}
              </strong>
            )}
          </>
        }
        actions={addPerson}
      />
      <DataTable
        id="crew"
        caption="People"
        captionSpoken
        noun={["person", "people"]}
        filterLabel="Find a person"
        columns={[
          { id: "name", head: "Name", sortable: true },
          { id: "access", head: "May", sortable: true },
          { id: "licenses", head: "Licenses" },
          { id: "phone", head: "Phone" },
        ]}
        rows={people.map((person) => ({
          id: person.personId,
          href: `/crew/${person.personId}`,
          cells: { name: person.name, access: accessWords(person), licenses: licenseWords(person), phone: person.phone ?? "" },
        }))}
        empty={<EmptyState sentence="Nobody is in the crew's books yet." actions={addPerson} />}
      />
      {gear.ok && (
        <Section id="gear" name="Trucks and gear">
          <Row spread>
            <p>
              {gearSentence(
                gear.value.vehicles.filter((vehicle) => !vehicle.isStoodDown),
                gear.value.equipment.filter((piece) => !piece.isStoodDown),
              )}
            </p>
            <LinkButton href="/crew/gear">Trucks and gear</LinkButton>
          </Row>
        </Section>
      )}
    </>
  );
}
