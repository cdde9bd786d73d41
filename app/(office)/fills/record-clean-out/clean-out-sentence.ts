import { type CleanOutToRecord } from "#application/fills/record-clean-out";
import { formatLongDate } from "#domain/foundation/calendar-date";
import { withoutFullStop } from "#domain/foundation/full-stop";
import { localTimeAt } from "#domain/weather/local-hours";
import { type ReadBackWords } from "../../../form-state";
import { us } from "../../visits/[visitId]/mix-words";
import { clockOf } from "../../visits/[visitId]/visit-words";
import { postedSentence } from "../tank-words";

/** What leaves the books with a clean-out. */
function leftInIt({ tank, went }: CleanOutToRecord): readonly ReadBackWords[] {
  if (tank === null) return [" A later reading or clean-out has settled what was in it; no stock is posted."];
  if (tank.inTheBooks.amount === 0n && tank.lots.length === 0) return [" The books have nothing left in it; no stock is posted."];
  return [" The books have ", { fact: us(tank.inTheBooks) }, " left in it.", ...postedSentence(tank.lots, went === "loss" ? "to loss" : "to rinsate")];
}

/** A clean-out as one sentence, its facts apart: what is read back before it is written. */
export function cleanOutSentence(cleanOut: CleanOutToRecord, timeZone: string): readonly ReadBackWords[] {
  const { equipmentName, cleanedAt, doneBy, how, rinsate } = cleanOut;
  return [
    { fact: equipmentName },
    " was cleaned out on ",
    { fact: formatLongDate(localTimeAt(cleanedAt.getTime(), timeZone).date) },
    " at ",
    { fact: clockOf(cleanedAt, timeZone) },
    " by ",
    { fact: doneBy },
    ": ",
    { fact: withoutFullStop(how) },
    ". The rinsate went ",
    { fact: withoutFullStop(rinsate) },
    ".",
    ...leftInIt(cleanOut),
  ];
}
