import Link from "next/link";
import { notFound } from "next/navigation";
import { may } from "#application/permission";
import { type PropertyOnFile } from "#application/properties/read-property";
import { squareFeetWords } from "#domain/properties/area-words";
import { CLIENT_STANDING_WORDS } from "#domain/properties/client-standing";
import { sum } from "#domain/quantities/quantity";
import { LinkButton } from "#ui/button";
import { Columns } from "#ui/columns";
import { PageHead } from "#ui/page-head";
import { JumpLinks, Section } from "#ui/section";
import { Stack } from "#ui/stack";
import { Text } from "#ui/text";
import { memberOfPage } from "../../../session";
import { AccessBlock } from "./access-block";
import { GroundPlan } from "./ground-plan";
import { LawnsOfGround, StationsOfGround } from "./lawns-of-ground";
import { OneLawn } from "./one-lawn";
import { PeopleOfProperty } from "./people-of-property";
import { PutDown } from "./put-down";
import { propertyOfPage, type PropertyPageProps, streetOfPage, wordOfSearch } from "./property-of-page";
import { SeedingsOfGround } from "./seedings-of-ground";
import { SeenOnGround } from "./seen-on-ground";
import { ThisYearOnThisGround } from "./this-year";
import { NextVisit, PromisedAndOpen } from "./visits-of-property";

export async function generateMetadata(props: PropertyPageProps) {
  return { title: (await streetOfPage(props)) ?? "Properties" };
}

const SECTIONS = [
  { id: "next", name: "Next" },
  { id: "promised", name: "Promised and open" },
  { id: "this-year", name: "This year on this ground" },
  { id: "put-down", name: "Put down" },
  { id: "seen", name: "Seen on the lawns" },
  { id: "seed", name: "Seed and sod" },
  { id: "ground", name: "Ground" },
  { id: "people", name: "People" },
] as const;

/** One property, in order of time; narrowed to one lawn where the address names one. */
export default async function PropertyPage(props: PropertyPageProps) {
  const { member } = await memberOfPage();
  const property = await propertyOfPage(props);
  const chosen = await wordOfSearch(props, "lawn");
  const lawn = property.lawns.find(({ zoneId }) => zoneId === chosen);
  if (chosen !== undefined && lawn === undefined) notFound();
  const base = `/properties/${property.propertyId}`;
  const which = { propertyId: property.propertyId, zoneId: lawn?.zoneId };
  const mayChange = may(member.role, "properties/change-property");
  return (
    <>
      <PageHead
        above={<Link href="/properties">Properties</Link>}
        title={property.street}
        sentence={<HeadSentence property={property} />}
        actions={mayChange && <LinkButton href={`${base}/change-property`}>Change</LinkButton>}
      />
      {lawn !== undefined && (
        <p>
          Only <strong>{`${lawn.letter} ${lawn.name}`}</strong> is shown.{" "}
          <Link href={base} prefetch={false}>
            All lawns
          </Link>
        </p>
      )}
      <AccessBlock property={property} />
      <JumpLinks sections={SECTIONS} />
      <Columns split="plan">
        <GroundPlan property={property} lawns={lawn === undefined ? property.lawns : [lawn]} mayMeasure={mayChange} />
        <Stack gap={6}>
          <Section id="next" name="Next">
            <NextVisit {...which} />
          </Section>
          <Section id="promised" name="Promised and open">
            <PromisedAndOpen {...which} />
          </Section>
          <Section id="this-year" name="This year on this ground">
            <ThisYearOnThisGround {...which} />
          </Section>
          <Section id="put-down" name="Put down">
            <PutDown {...which} />
          </Section>
          <Section id="seen" name="Seen on the lawns">
            <SeenOnGround lawns={lawn === undefined ? property.lawns : [lawn]} />
          </Section>
          <Section id="seed" name="Seed and sod">
            <SeedingsOfGround propertyId={property.propertyId} lawns={lawn === undefined ? property.lawns : [lawn]} mayChange={mayChange} />
          </Section>
          <Section id="ground" name="Ground">
            <Stack gap={6}>
              {lawn === undefined ? <LawnsOfGround property={property} mayChange={mayChange} /> : <OneLawn property={property} lawn={lawn} mayChange={mayChange} />}
              <StationsOfGround property={property} mayChange={mayChange} zoneId={lawn?.zoneId} />
            </Stack>
          </Section>
          <Section id="people" name="People">
            <PeopleOfProperty property={property} mayChange={mayChange} />
          </Section>
          <SmallPrint property={property} />
        </Stack>
      </Columns>
    </>
  );
}

function HeadSentence({ property }: { readonly property: PropertyOnFile }) {
  const { client, city, state, zip, lawns } = property;
  const size = lawns.length === 0 ? "no lawn measured" : `${squareFeetWords(sum("area", lawns.map(({ area }) => area)))} of lawn`;
  return (
    <>
      {client.name}
      {client.standing !== "current" && <strong>, {CLIENT_STANDING_WORDS[client.standing].toLowerCase()}</strong>}. {city}, {state} {zip}; {size}.
    </>
  );
}

/** What is seldom asked: the lot, the position and how it is known, notes. */
function SmallPrint({ property }: { readonly property: PropertyOnFile }) {
  const { lotArea, position, note } = property;
  const where =
    position === null
      ? "No position is on file."
      : `Position ${position.latitude.toFixed(4)}, ${position.longitude.toFixed(4)}, ${position.origin === "entered" ? "entered" : "the middle of its ZIP code"}.`;
  return (
    <Stack gap={2}>
      {note !== null && <p>{note}</p>}
      <Text size="small" tone="second">
        {lotArea === null ? "" : `The lot is ${squareFeetWords(lotArea)} as someone told it; that says nothing of the lawn. `}
        {where}
      </Text>
    </Stack>
  );
}
