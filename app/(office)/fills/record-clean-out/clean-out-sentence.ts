import { type CleanOutToRecord } from "#application/fills/record-clean-out";
import { formatLongDate } from "#domain/foundation/calendar-date";
import { withoutFullStop } from "#domain/foundation/full-stop";
import { localTimeAt } from "#domain/weather/local-hours";
import { type ReadBackWords } from "../../../form-state";
import { clockOf } from "../../visits/[visitId]/visit-words";

/** A clean-out as one sentence, its facts apart: what is read back before it is written. */
export function cleanOutSentence({ equipmentName, cleanedAt, doneBy, how, rinsate }: CleanOutToRecord, timeZone: string): readonly ReadBackWords[] {
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
  ];
}
