import { type CalendarDate, calendarDateIn, formatShortDate } from "#domain/foundation/calendar-date";
import { type EquipmentKind } from "#domain/equipment/equipment-kind";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { badField, conflict, notFound, type UseCaseRefusal } from "#application/refusal";
import { calendarDayOrNone } from "#application/stored-day";
import { type Work } from "#application/use-case";

interface CalibrationForm {
  readonly equipmentId: string;
  readonly operatorId: string;
  readonly madeOn: CalendarDate;
}

/** The gear and the operator of a calibration. */
export interface CalibrationParties {
  readonly equipment: { readonly name: string; readonly kind: EquipmentKind; readonly hasSwath: boolean };
  readonly operator: { readonly name: string };
}

/**
 * Whether a calibration may be entered: the gear is in use, the operator is of the crew, the day has come. Applicators
 * and technicians enter their own, because pace is part of the rate and each vouches for their own.
 */
export async function calibrationParties(work: Work, { equipmentId, operatorId, madeOn }: CalibrationForm): Promise<Outcome<CalibrationParties, UseCaseRefusal>> {
  const { companyId, timeZone } = work.company;
  const equipment = await work.tx.equipment.findUnique({ where: { companyId_equipmentId: { companyId, equipmentId } } });
  if (equipment === null) return notFound("gear");
  if (equipment.stoodDownAt !== null) return conflict("This gear is stood down; it is calibrated no more.");
  const operator = await work.tx.person.findUnique({ where: { companyId_personId: { companyId, personId: operatorId } } });
  if (operator === null) return notFound("person");
  const { role, personId } = work.member;
  if ((role === "applicator" || role === "technician") && personId !== operatorId) {
    return badField("operatorId", "Enter what you measured yourself. The office can enter it for others.");
  }
  const leftOn = calendarDayOrNone(operator.leftOn);
  if (leftOn !== null && leftOn < madeOn) return badField("operatorId", `${operator.name} left on ${formatShortDate(leftOn)}.`);
  const today = calendarDateIn(timeZone, work.now.getTime());
  if (madeOn > today) return badField("madeOn", "This day is still to come.");
  return accept({ equipment: { name: equipment.name, kind: equipment.kind as EquipmentKind, hasSwath: equipment.swath !== null }, operator: { name: operator.name } });
}
