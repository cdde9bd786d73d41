import { type VisitRead } from "#application/visits/read-visit";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { LOOK_FORM } from "#domain/mixing/site-checks";
import { LinkButton } from "#ui/button";
import { KeyValueList } from "#ui/key-value-list";
import { Stack } from "#ui/stack";
import { lawnWords } from "./visit-words";

const ON_THE_DAY = { yes: "In bloom.", no: "Nothing blooms.", unknown: "Whether anything blooms is not known." } as const;

/** What the crew saw on each lawn, as it counts on the visit's day, and where to write down what is seen. */
export function SeenOnLawns({ found: { visit, seen }, mayLook }: { readonly found: VisitRead; readonly mayLook: boolean }) {
  return (
    <Stack gap={4}>
      {seen.lawns.length === 0 ? (
        <p>No lawn of this visit is on the plan any more.</p>
      ) : seen.lawns.every(({ bloomSeen }) => bloomSeen === null) ? (
        <p>Nobody has written down what blooms here. For {formatShortDate(seen.on)} it is not known; look at the gate, before anything goes down.</p>
      ) : (
        <KeyValueList pairs={seen.lawns.map((lawn) => ({ key: lawnWords(lawn), value: [ON_THE_DAY[lawn.inBloom], ...(lawn.bloomSeen === null ? [] : [lawn.bloomSeen])].join(" ") }))} />
      )}
      {mayLook && seen.lawns.length > 0 && (
        <div>
          <LinkButton href={`/visits/${visit.visitId}/look-at-lawns`}>{LOOK_FORM}</LinkButton>
        </div>
      )}
    </Stack>
  );
}
