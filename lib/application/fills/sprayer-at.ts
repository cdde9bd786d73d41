import { isSprayer, type EquipmentKind } from "#domain/equipment/equipment-kind";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { instantOfMinute } from "#domain/weather/local-hours";
import { badField, notFound, type UseCaseRefusal } from "#application/refusal";
import { type Work } from "#application/use-case";

type Sprayer = NonNullable<Awaited<ReturnType<Work["tx"]["equipment"]["findUnique"]>>>;

/** When something was done to a sprayer, as its form has it: the day, the minute of it, and the field that says so. */
interface MomentSaid {
  readonly on: CalendarDate;
  readonly minuteOfDay: number;
  readonly field: string;
}

/** The sprayer to which something was done, and when. Refuses what is not on file, is no sprayer, or has not come yet. */
export async function sprayerAt(work: Work, equipmentId: string, { on, minuteOfDay, field }: MomentSaid): Promise<Outcome<{ readonly sprayer: Sprayer; readonly at: Date }, UseCaseRefusal>> {
  const { companyId, timeZone } = work.company;
  const sprayer = await work.tx.equipment.findUnique({ where: { companyId_equipmentId: { companyId, equipmentId } } });
  if (sprayer === null) return notFound("sprayer");
  if (!isSprayer(sprayer.kind as EquipmentKind)) return badField("equipmentId", `${sprayer.name} is no sprayer.`);
  const at = new Date(instantOfMinute(on, minuteOfDay, timeZone));
  return at.getTime() > work.now.getTime() ? badField(field, "This moment has not come yet.") : accept({ sprayer, at });
}
