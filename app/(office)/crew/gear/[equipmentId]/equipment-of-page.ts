import { notFound } from "next/navigation";
import { cache } from "react";
import { readEquipment } from "#application/equipment/read-equipment";
import { asMember } from "../../../../session";

/** What a page below a piece of gear's address is given. */
export interface EquipmentPageProps {
  readonly params: Promise<{ readonly equipmentId: string }>;
}

/** Asked once for a page, however many of its parts want to know. */
const readOnce = cache((equipmentId: string) => asMember(readEquipment, { equipmentId }));

/** The gear whose page is drawn; where there is none, there is no page. */
export async function equipmentOfPage({ params }: EquipmentPageProps) {
  const answer = await readOnce((await params).equipmentId);
  if (!answer.ok) notFound();
  return answer.value;
}

/** The gear's name for the page's title, or undefined: whether there is a page is not for its title to say. */
export async function equipmentNameOfPage({ params }: EquipmentPageProps): Promise<string | undefined> {
  const answer = await readOnce((await params).equipmentId);
  return answer.ok ? answer.value.equipment.name : undefined;
}
