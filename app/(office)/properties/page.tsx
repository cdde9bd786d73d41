import { type Metadata } from "next";
import { notFound } from "next/navigation";
import { listProperties, type PropertyInList } from "#application/properties/list-properties";
import { may } from "#application/permission";
import { squareFeetWords } from "#domain/properties/area-words";
import { CLIENT_STANDING_WORDS } from "#domain/properties/client-standing";
import { NO_FIXED_DAY } from "#domain/properties/mowing-day";
import { WEEKDAY_NAMES, WEEKDAYS } from "#domain/properties/weekday";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { sum } from "#domain/quantities/quantity";
import { LinkButton } from "#ui/button";
import { DataTable } from "#ui/data-table.client";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Row } from "#ui/row";
import { asMember, memberOfPage } from "../../session";

export const metadata: Metadata = { title: "Properties" };

function lawnWords({ lawnArea, lawns }: PropertyInList): string {
  if (lawnArea === null) return "not measured";
  const size = squareFeetWords(lawnArea);
  return lawns === 1 ? size : `${size} in ${String(lawns)}`;
}

function countSentence(properties: readonly PropertyInList[]) {
  const measured = properties.flatMap(({ lawnArea }) => (lawnArea === null ? [] : [lawnArea]));
  const unmeasured = properties.length - measured.length;
  const total = formatQuantityIn(sum("area", measured), "acre", 1);
  return (
    <>
      {properties.length === 1 ? "One property" : `${String(properties.length)} properties`}, {total} of lawn.{" "}
      {unmeasured > 0 && <strong>{unmeasured === 1 ? "One has no measured lawn." : `${String(unmeasured)} have no measured lawn.`}</strong>}
    </>
  );
}

export default async function PropertiesPage() {
  const { member } = await memberOfPage();
  const answer = await asMember(listProperties, {});
  if (!answer.ok) notFound();
  const { properties } = answer.value;
  const actions = may(member.role, "properties/add-client") && (
    <Row>
      <LinkButton href="/properties/import-customers">Import a list</LinkButton>
      <LinkButton kind="act" href="/properties/add-client">
        Add a customer
      </LinkButton>
    </Row>
  );
  return (
    <>
      <PageHead title="Properties" sentence={properties.length === 0 ? undefined : countSentence(properties)} actions={properties.length === 0 ? undefined : actions} />
      <DataTable
        id="properties"
        caption="Properties"
        captionSpoken
        noun={["property", "properties"]}
        filterLabel="Find by name, street or phone"
        columns={[
          { id: "street", head: "Property", sortable: true },
          { id: "customer", head: "Customer", sortable: true },
          { id: "town", head: "Town", sortable: true },
          { id: "lawn", head: "Lawn", sortable: true, align: "figure" },
          { id: "mowing", head: "Mowed", sortable: true },
          { id: "phone", head: "Phone", sortable: false },
        ]}
        rows={properties.map((property) => ({
          id: property.propertyId,
          href: `/properties/${property.propertyId}`,
          cells: {
            street: property.street,
            customer: property.standing === "current" ? property.clientName : `${property.clientName}, ${CLIENT_STANDING_WORDS[property.standing].toLowerCase()}`,
            town: `${property.city}, ${property.state} ${property.zip}`,
            lawn: { text: lawnWords(property), sortBy: property.lawnArea === null ? 0 : Number(property.lawnArea.amount) },
            mowing: dayCell(property.mowingDay),
            phone: property.phone ?? "",
          },
        }))}
        empty={<EmptyState sentence="No customer is on file yet. Bring the list you have, or add the first one by hand." actions={actions} />}
      />
    </>
  );
}

function dayCell(day: PropertyInList["mowingDay"]) {
  if (day === null) return "";
  return day === NO_FIXED_DAY ? { text: "No fixed day", sortBy: WEEKDAYS.length + 1 } : { text: WEEKDAY_NAMES[day], sortBy: day };
}
