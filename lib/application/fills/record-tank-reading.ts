import { lockCompany } from "#adapters/postgres/company-work";
import { type Finding } from "#domain/foundation/finding";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { gallonsWords, tankReadingFindings } from "#domain/mixing/tank-reading";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";
import { instantOfMinute } from "#domain/weather/local-hours";
import { writeDeed } from "#application/audit-trail";
import { type MissingFromTankWent, recordTankReadingSchema, type TankReadingForm } from "#application/fills/record-tank-reading.schema";
import { sprayerAt } from "#application/fills/sprayer-at";
import { hasMissing, isSettledLater, postDifference, type TankToSettle, tankToSettle, writeRests } from "#application/fills/tank-settlement";
import { badField, conflict, type UseCaseRefusal } from "#application/refusal";
import { SENT_WITH_OTHER_FIGURES } from "#application/stock/post-stock";
import { useCase, type Work } from "#application/use-case";

/** What was found in a tank before it is written, beside what the books have. */
export interface TankReadingToRecord {
  readonly equipmentName: string;
  readonly readAt: Date;
  readonly readBy: string;
  readonly how: string;
  readonly volume: Quantity<"volume">;
  /** What the books have in it, what is missing or more, lot by lot, and what follows for each fill. */
  readonly tank: TankToSettle;
  /** Where what is missing goes; null where nothing is. */
  readonly missingWent: MissingFromTankWent | null;
  readonly note: string | null;
  readonly findings: readonly Finding[];
}

/** Holds what was found against the books and writes nothing. Refuses what can't be written. */
export async function tankReadingToRecord(work: Work, form: TankReadingForm): Promise<Outcome<TankReadingToRecord, UseCaseRefusal>> {
  const { companyId } = work.company;
  const { equipmentId, readById, how, volume, note } = form;
  const measured = await sprayerAt(work, equipmentId, { on: form.readOn, minuteOfDay: form.readAt, field: "readAt" });
  if (!measured.ok) return measured;
  const { sprayer: equipment, at: readAt } = measured.value;
  const person = await work.tx.person.findUnique({ where: { companyId_personId: { companyId, personId: readById } } });
  if (person === null) return badField("readById", "There is no such person here. Choose another.");
  if (await isSettledLater(work, equipmentId, readAt, true)) {
    return badField("readAt", `${equipment.name} was measured or cleaned out at that minute or later, and the books follow that. Give a later time, or measure it again.`);
  }
  const tank = await tankToSettle(work, equipmentId, readAt, volume);
  const missingWent = whereItWent(form, tank);
  if (!missingWent.ok) return missingWent;
  const capacity = fromAmount("volume", equipment.capacity + (equipment.holdUp ?? 0n));
  const findings = tankReadingFindings({ ...tank, name: equipment.name, found: volume, capacity });
  return accept({ equipmentName: equipment.name, readAt, readBy: person.name, how, volume, tank, missingWent: missingWent.value, note, findings });
}

/** Only what is missing goes somewhere, and only a person can say where. */
function whereItWent({ missingWent, volume }: TankReadingForm, tank: TankToSettle): Outcome<MissingFromTankWent | null, UseCaseRefusal> {
  if (!hasMissing(tank)) {
    if (missingWent === null || missingWent === "count-difference") return accept(null);
    return badField("missingWent", "Nothing is missing by the books, so nothing was lost. Choose that nobody knows, or look at the reading.");
  }
  if (missingWent !== null) return accept(missingWent);
  const less = tank.inTheBooks.amount - volume.amount;
  const had = `The books have ${gallonsWords(tank.inTheBooks)} in it`;
  return badField("missingWent", less > 0n ? `${had}, ${gallonsWords(fromAmount("volume", less))} more. Say where that went.` : `${had}, and of a product more than that holds. Say where that went.`);
}

/**
 * Writes down what somebody found in a sprayer's tank and lets the books follow: what is missing leaves the tank for where
 * the person says it went, what is there beyond the books comes from count difference, in one posting; from then on what is
 * at hand is what was found. Refused before a later reading or clean-out, which has settled that time, and where something
 * is missing and nobody says where it went. Pressed twice, the first reading is answered.
 */
export const recordTankReading = useCase("fills/record-tank-reading", recordTankReadingSchema, async (work, form) => {
  const { companyId, timeZone } = work.company;
  const { requestId, equipmentId, readById, how, volume, note } = form;
  await lockCompany(work.tx);
  const first = await work.tx.tankReading.findUnique({ where: { companyId_requestId: { companyId, requestId } } });
  if (first !== null) {
    const readAt = instantOfMinute(form.readOn, form.readAt, timeZone);
    const isSame = first.equipmentId === equipmentId && first.readById === readById && first.how === how && first.volume === volume.amount && first.note === note;
    const wentTheSame = first.missingWent === form.missingWent || (first.missingWent === null && form.missingWent === "count-difference");
    return isSame && wentTheSame && first.readAt.getTime() === readAt ? accept({ tankReadingId: first.tankReadingId }) : conflict(SENT_WITH_OTHER_FIGURES);
  }
  const toRecord = await tankReadingToRecord(work, form);
  if (!toRecord.ok) return toRecord;
  const { tank, missingWent, readAt, readBy, equipmentName } = toRecord.value;
  const posted = await postDifference(work, { requestId, note }, tank, missingWent);
  if (!posted.ok) return posted;
  const { stockPostingId, wentToId } = posted.value;
  const tankReadingId = work.newId();
  await work.tx.tankReading.create({
    data: {
      ...{ companyId, tankReadingId, requestId, equipmentId, readAt, readById, how, note, missingWent, stockPostingId },
      ...{ volume: volume.amount, inTheBooks: tank.inTheBooks.amount, ofNoFill: tank.ofNoFill.amount, enteredAt: work.now, personId: work.member.personId },
    },
  });
  await writeRests(work, tank, { tankReadingId }, wentToId);
  await writeDeed(work, tankReadingId, {
    deed: "tank-measured",
    details: { equipment: equipmentName, readAt: readAt.toISOString(), readBy, found: gallonsWords(volume), inTheBooks: gallonsWords(tank.inTheBooks), missingWent: missingWent ?? "nothing missing" },
  });
  return accept({ tankReadingId });
});
