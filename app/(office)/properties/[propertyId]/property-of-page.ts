import { notFound } from "next/navigation";
import { cache } from "react";
import { type LawnOnFile, type PropertyOnFile, readProperty } from "#application/properties/read-property";
import { asMember } from "../../../session";

/** What a page below a property's address is given. */
export interface PropertyPageProps {
  readonly params: Promise<{ readonly propertyId: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

/** What a page below a lawn's address is given. */
export interface LawnPageProps {
  readonly params: Promise<{ readonly propertyId: string; readonly zoneId: string }>;
  readonly searchParams: PropertyPageProps["searchParams"];
}

/** Asked once for a page, however many of its parts want to know. */
const readOnce = cache((propertyId: string) => asMember(readProperty, { propertyId }));

/** The property whose page is drawn; where there is none, there is no page. */
export async function propertyOfPage({ params }: Pick<PropertyPageProps, "params">): Promise<PropertyOnFile> {
  const answer = await readOnce((await params).propertyId);
  if (!answer.ok) notFound();
  return answer.value.property;
}

/** The property and the lawn of a page below a lawn's address. */
export async function lawnOfPage({ params }: Pick<LawnPageProps, "params">): Promise<{ readonly property: PropertyOnFile; readonly lawn: LawnOnFile }> {
  const property = await propertyOfPage({ params });
  const { zoneId } = await params;
  const lawn = property.lawns.find((each) => each.zoneId === zoneId);
  if (lawn === undefined) notFound();
  return { property, lawn };
}

/** The street for the page's title, or undefined: whether there is a page is not for its title to say. */
export async function streetOfPage({ params }: Pick<PropertyPageProps, "params">): Promise<string | undefined> {
  const answer = await readOnce((await params).propertyId);
  return answer.ok ? answer.value.property.street : undefined;
}

/** One word of the address after the question mark, if it stands there once. */
export async function wordOfSearch({ searchParams }: Pick<PropertyPageProps, "searchParams">, name: string): Promise<string | undefined> {
  const value = (await searchParams)[name];
  return typeof value === "string" ? value : undefined;
}
