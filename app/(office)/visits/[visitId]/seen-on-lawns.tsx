import { type LawnSeen } from "#application/visits/lawns-seen";
import { type VisitRead } from "#application/visits/read-visit";
import { type CalendarDate, formatShortDate } from "#domain/foundation/calendar-date";
import { LOOK_FORM } from "#domain/mixing/site-checks";
import { LinkButton } from "#ui/button";
import { KeyValueList } from "#ui/key-value-list";
import { Stack } from "#ui/stack";
import { lawnWords } from "./visit-words";

/** What the crew saw on each lawn, as it counts on the visit's day, the last water that was told of, and where to write down what is seen. */
export function SeenOnLawns({ found: { visit, seen }, mayLook }: { readonly found: VisitRead; readonly mayLook: boolean }) {
  return (
    <Stack gap={4}>
      {seen.lawns.length === 0 ? (
        <p>No lawn of this visit is on the plan any more.</p>
      ) : seen.lawns.every(({ bloomSeen, watered }) => bloomSeen === null && watered === null) ? (
        <p>Nobody has written down what blooms here. For {formatShortDate(seen.on)} it is not known; look at the gate, before anything goes down.</p>
      ) : (
        <KeyValueList pairs={seen.lawns.map((lawn) => ({ key: lawnWords(lawn), value: seenWords(lawn, seen.on) }))} />
      )}
      {mayLook && seen.lawns.length > 0 && (
        <div>
          <LinkButton href={`/visits/${visit.visitId}/look-at-lawns`}>{LOOK_FORM}</LinkButton>
        </div>
      )}
    </Stack>
  );
}

/** The look that counts on the visit's day; where none does, that it is not known, with the last look. */
function seenWords({ inBloom, bloomSeen, watered }: LawnSeen, on: CalendarDate): string {
  const unknown = inBloom === "unknown" ? [`What blooms is not known for ${formatShortDate(on)}.`] : [];
  return [...unknown, ...(bloomSeen === null ? [] : [bloomSeen]), ...(watered === null ? [] : [watered])].join(" ");
}
