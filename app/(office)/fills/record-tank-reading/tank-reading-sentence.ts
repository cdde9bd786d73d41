import { type TankReadingToRecord } from "#application/fills/record-tank-reading";
import { formatLongDate } from "#domain/foundation/calendar-date";
import { withoutFullStop } from "#domain/foundation/full-stop";
import { besideBooksWords, gallonsWords } from "#domain/mixing/tank-reading";
import { localTimeAt } from "#domain/weather/local-hours";
import { type ReadBackWords } from "../../../form-state";
import { clockOf } from "../../visits/[visitId]/visit-words";
import { lotsBesideBooks, postedSentence, WENT_TO } from "../tank-words";

/** A reading beside the books as sentences, their facts apart: what is read back before it is written. */
export function tankReadingSentence({ equipmentName, readAt, readBy, how, volume, tank, missingWent, note }: TankReadingToRecord, timeZone: string): readonly ReadBackWords[] {
  return [
    { fact: gallonsWords(volume) },
    " were found in ",
    { fact: equipmentName },
    " on ",
    { fact: formatLongDate(localTimeAt(readAt.getTime(), timeZone).date) },
    " at ",
    { fact: clockOf(readAt, timeZone) },
    " by ",
    { fact: readBy },
    ", with: ",
    { fact: withoutFullStop(how) },
    ". The books have ",
    { fact: gallonsWords(tank.inTheBooks) },
    ": it is ",
    { fact: besideBooksWords(volume, tank.inTheBooks) },
    ".",
    ...(tank.lots.length === 0 ? [] : [` In product: ${lotsBesideBooks(tank.lots)}.`]),
    ...postedSentence(tank.lots, missingWent === null ? "" : WENT_TO[missingWent]),
    ...(note === null ? [] : [" ", { fact: withoutFullStop(note) }, "."]),
  ];
}
