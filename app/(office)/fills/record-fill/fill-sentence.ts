import { type FillToRecord } from "#application/fills/record-fill";
import { formatLongDate } from "#domain/foundation/calendar-date";
import { withoutFullStop } from "#domain/foundation/full-stop";
import { listWords } from "#domain/foundation/list-words";
import { besideBooksWords, gallonsWords } from "#domain/mixing/tank-reading";
import { localTimeAt } from "#domain/weather/local-hours";
import { type ReadBackWords } from "../../../form-state";
import { us } from "../../visits/[visitId]/mix-words";
import { clockOf } from "../../visits/[visitId]/visit-words";

/** A fill as sentences, their facts apart: what is read back before it is written. */
export function fillSentence({ equipmentName, filledAt, gauge, inTheBooks, finished, products, mixingPlace, fromName }: FillToRecord, timeZone: string): readonly ReadBackWords[] {
  return [
    { fact: gallonsWords(finished) },
    " with ",
    { fact: listWords(products.map(({ productName, amount }) => `${us(amount)} of ${productName}`)) },
    " from ",
    { fact: fromName },
    " went into ",
    { fact: equipmentName },
    " on ",
    { fact: formatLongDate(localTimeAt(filledAt.getTime(), timeZone).date) },
    " at ",
    { fact: clockOf(filledAt, timeZone) },
    ", mixed at: ",
    { fact: withoutFullStop(mixingPlace) },
    ". The tank held ",
    { fact: gallonsWords(gauge.before) },
    ` before, ${besideBooksWords(gauge.before, inTheBooks)}, and `,
    { fact: gallonsWords(gauge.after) },
    " after.",
  ];
}
