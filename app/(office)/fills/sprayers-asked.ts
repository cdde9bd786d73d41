import { notFound } from "next/navigation";
import { listEquipment } from "#application/equipment/list-equipment";
import { listFills } from "#application/fills/list-fills";
import { isSprayer } from "#domain/equipment/equipment-kind";
import { asMember } from "../../session";

/** The address of a form about one sprayer: ?equipment= names it. */
export interface SprayerFormProps {
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

/** The sprayers in use, the one that a form's address names or that is the only one, and what the books have of all tanks. */
export async function sprayersAsked({ searchParams }: SprayerFormProps) {
  const { equipment: asked } = await searchParams;
  const gear = await asMember(listEquipment, {});
  const fills = await asMember(listFills, {});
  if (!gear.ok || !fills.ok) notFound();
  const sprayers = gear.value.equipment.filter((piece) => isSprayer(piece.kind) && !piece.isStoodDown);
  const chosen = sprayers.find(({ equipmentId }) => equipmentId === asked) ?? (sprayers.length === 1 ? sprayers[0] : undefined);
  return { sprayers, chosen, choices: sprayers.map(({ equipmentId, name }) => ({ value: equipmentId, word: name })), tanks: fills.value.tanks };
}
