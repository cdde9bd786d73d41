import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { listProperties, type PropertyInList } from "#application/properties/list-properties";
import { squareFeetWords } from "#domain/properties/area-words";
import { LinkButton } from "#ui/button";
import { Disclosure } from "#ui/disclosure";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { asMember } from "../../../../session";
import { pageFor } from "../../../page-for";
import { programOfPage, type ProgramPageProps } from "../program-of-page";
import { type PropertyToPut, PutOnProgramForm } from "./put-on-program-form.client";

export const metadata: Metadata = { title: "Put properties on a program" };

function toPut({ propertyId, street, city, clientName, lawnArea }: PropertyInList, has: number, rounds: number): PropertyToPut {
  const size = lawnArea === null ? "" : `, ${squareFeetWords(lawnArea)}`;
  return { propertyId, words: `${street}, ${city}`, hint: `${clientName}${size}${has === 0 ? "" : `; on ${String(has)} of these ${String(rounds)} rounds`}` };
}

/** Why some properties are not in the list, as sentences. */
function LeftOut({ onAll, bare, unserved }: { readonly onAll: number; readonly bare: readonly PropertyInList[]; readonly unserved: number }) {
  return (
    <Stack gap={2}>
      {onAll > 0 && <p>{onAll === 1 ? "One property is on every one of these rounds already." : `${String(onAll)} properties are on every one of these rounds already.`}</p>}
      {bare.length > 0 && (
        <Disclosure name={bare.length === 1 ? "One property has no measured lawn" : `${String(bare.length)} properties have no measured lawn`}>
          <Stack gap={2} as="ul">
            {bare.map(({ propertyId, street, city }) => (
              <li key={propertyId}>
                <Link href={`/properties/${propertyId}`} prefetch={false}>
                  {street}, {city}
                </Link>
              </li>
            ))}
          </Stack>
        </Disclosure>
      )}
      {unserved > 0 && <p>{unserved === 1 ? "One property's customer is paused or has left." : `${String(unserved)} properties' customers are paused or have left.`}</p>}
    </Stack>
  );
}

/** Chooses properties for a program: those with a lawn and a customer who is served. */
export default async function PutOnProgramPage(props: ProgramPageProps) {
  await pageFor("programs/put-on-program");
  const { program, roundsOfProperty, today } = await programOfPage(props);
  const answer = await asMember(listProperties, {});
  if (!answer.ok) notFound();
  const { find } = await props.searchParams;
  const { rounds, programId, name } = program;
  const toCome = rounds.filter(({ closesOn }) => closesOn >= today).map(({ roundId }) => roundId);
  const served = answer.value.properties.filter(({ standing }) => standing === "current");
  const lawned = served.filter(({ lawns }) => lawns > 0);
  const hasOf = ({ propertyId }: PropertyInList) => (roundsOfProperty.get(propertyId) ?? []).filter((roundId) => toCome.includes(roundId)).length;
  const open = lawned.filter((property) => hasOf(property) < toCome.length);
  const sentence = `One visit for each round that is open or to come (${String(toCome.length)} of ${String(rounds.length)}), on all of the property's lawns. A round that a property has already is left as it is.`;
  return (
    <>
      <PageHead above={<Link href={`/programs/${programId}`}>{name}</Link>} title="Put properties on" sentence={sentence} />
      <Stack gap={5}>
        {open.length === 0 ? (
          <EmptyState sentence={toCome.length === 0 ? "Every round of this program has closed. Add a round first." : "No property is left to put on."} actions={<LinkButton href="/properties">See the properties</LinkButton>} />
        ) : (
          <Sheet>
            <PutOnProgramForm programId={programId} properties={open.map((property) => toPut(property, hasOf(property), toCome.length))} find={typeof find === "string" ? find : ""} />
          </Sheet>
        )}
        <LeftOut onAll={lawned.length - open.length} bare={served.filter(({ lawns }) => lawns === 0)} unserved={answer.value.properties.length - served.length} />
      </Stack>
    </>
  );
}
