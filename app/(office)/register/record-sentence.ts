import { listWords } from "#domain/foundation/list-words";
import { formatLongDate } from "#domain/foundation/calendar-date";
import { fillsOf, MEASURED_BY_WORDS, type RecordContent, type RecordedTreatment } from "#domain/register/record-content";
import { localTimeAt } from "#domain/weather/local-hours";
import { type ReadBackWords } from "../../form-state";
import { clockOf } from "../visits/[visitId]/visit-words";

const fact = (words: string): ReadBackWords => ({ fact: words });
const missing = (words: string): ReadBackWords => ({ fact: words, missing: true });

function treatmentParts({ total, productName, measuredBy, ...out }: RecordedTreatment): readonly ReadBackWords[] {
  const from = fillsOf(out).flatMap(({ number, sprayed: { words } }, index) => [index === 0 ? ", " : " and ", fact(`${words} of fill ${String(number)}`)]);
  const how = measuredBy === "as-planned-not-measured" ? missing(MEASURED_BY_WORDS[measuredBy]) : fact(MEASURED_BY_WORDS[measuredBy]);
  return [fact(`${total.words} of ${productName}`), " (", how, ...from, ")"];
}

function joined(parts: readonly (readonly ReadBackWords[])[]): readonly ReadBackWords[] {
  return parts.flatMap((part, index) => (index === 0 ? part : [index === parts.length - 1 ? " and " : ", ", ...part]));
}

function lawnParts({ lawns }: RecordContent): readonly ReadBackWords[] {
  const named = (outcome: RecordContent["lawns"][number]["outcome"]) => lawns.filter((lawn) => lawn.outcome === outcome).map(({ name }) => name);
  const [done, part, notDone] = [named("done"), named("part"), named("not-done")];
  return [
    ...(done.length + part.length === 0 ? [] : [" on ", fact(listWords([...done, ...part.map((name) => `a part of ${name}`)]))]),
    ...(notDone.length === 0 ? [] : [", not on ", fact(listWords(notDone))]),
  ];
}

function weatherParts({ weather }: RecordContent): readonly ReadBackWords[] {
  if (weather.kind === "not-taken") return [" The weather was ", missing("not taken"), "."];
  const wind = weather.windMph === 0 ? "no wind" : `wind ${String(weather.windMph)} mph from ${weather.windFrom}`;
  return [" ", fact(`${String(weather.temperatureF)} °F`), ", ", fact(wind), ", read from ", fact(weather.instrument), "."];
}

function licenseParts({ applicator, supervisor }: RecordContent): readonly ReadBackWords[] {
  const { license } = applicator;
  const own = license === null ? missing("no license on file that stood on that day") : fact(`license ${license.state} ${license.number}`);
  return [", under ", own, ...(supervisor === null ? [] : [", supervised by ", fact(supervisor.name)])];
}

/** A record as one sentence, its facts apart: what is read back before it is written. */
export function recordSentence(content: RecordContent): readonly ReadBackWords[] {
  const { startedAt, endedAt, timeZone, applicator, treatments, site } = content;
  const day = formatLongDate(localTimeAt(Date.parse(startedAt), timeZone).date);
  const what = treatments.length === 0 ? [" looked"] : [" put down ", ...joined(treatments.map(treatmentParts))];
  return [
    "At ",
    fact(site.street),
    " on ",
    fact(day),
    ", from ",
    fact(clockOf(Date.parse(startedAt), timeZone)),
    " to ",
    fact(clockOf(Date.parse(endedAt), timeZone)),
    ", ",
    fact(applicator.name),
    ...what,
    ...lawnParts(content),
    ...licenseParts(content),
    ".",
    ...weatherParts(content),
    " The sign ",
    fact(content.signIsUp ? "is up" : "is not up"),
    "; the notice ",
    fact(content.noticeWasLeft ? "was left" : "was not left"),
    ". ",
    ...(content.remarks === null ? [] : ["Remarks: ", fact(content.remarks), ". "]),
    ...(content.signature === null ? [missing("Nobody signed"), "."] : ["Signed ", fact(content.signature), "."]),
  ];
}
