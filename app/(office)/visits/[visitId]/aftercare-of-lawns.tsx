import { type AftercareOfLawns } from "#domain/mixing/aftercare-of-lawns";
import { listWords } from "#domain/foundation/list-words";
import { wateringWorkings } from "#domain/mixing/ticket-working-watering";
import { AftercareSteps, AftercareTimeline } from "#ui/drawings/aftercare-timeline";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { Text } from "#ui/text";
import { HowWorkedOut } from "#ui/working";
import { aftercareConclusion, aftercareRows, doneAtOf, drawnRows } from "./aftercare-rows";

/** What is to be done and left on the lawns that got the same: the ordered list first, then the same as a drawing. */
export function AftercareOfLawnsBlock({ aftercare }: { readonly aftercare: AftercareOfLawns }) {
  const { timeline, lawnNames } = aftercare;
  const rows = aftercareRows(timeline);
  const drawn = drawnRows(rows);
  return (
    <Stack gap={4}>
      <h3>{listWords(lawnNames)}</h3>
      {rows.length === 0 ? <p>Nothing is to be done or left on {listWords(lawnNames)} afterwards.</p> : <AftercareSteps rows={rows} />}
      <HowWorkedOut of="the time to water" workings={wateringWorkings(timeline)} />
      {timeline.lawnAtApplication.length > 0 && (
        <ul>
          {timeline.lawnAtApplication.map(({ productName, part, state, labelWords }) => (
            <li key={`${productName} ${part}`}>
              {productName} wants {part === "leaf" ? `a ${state} leaf` : `${state} soil`} when it goes down. <Text as="span" size="small" tone="second">{labelWords}</Text>
            </li>
          ))}
        </ul>
      )}
      {timeline.spoilingRain.length > 0 && (
        <ul>
          {timeline.spoilingRain.map(({ words, reason }) => (
            <li key={`${reason.productName} ${words}`}>{words}</li>
          ))}
        </ul>
      )}
      {timeline.secondLook !== null && <p>{timeline.secondLook.words}</p>}
      {drawn.length > 0 && (
        <Sheet>
          <AftercareTimeline title={`What to do and when, ${listWords(lawnNames)}`} conclusion={aftercareConclusion(drawn)} doneAt={doneAtOf(timeline)} rows={drawn} />
        </Sheet>
      )}
    </Stack>
  );
}
