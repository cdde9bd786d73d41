import { Button } from "#ui/button";
import { Columns } from "#ui/columns";
import { EmptyState } from "#ui/empty-state";
import { ErrorState } from "#ui/error-state";
import { Finding } from "#ui/finding";
import { FindingGroup } from "#ui/finding-group";
import { FindingMark } from "#ui/finding-mark";
import { UndoSample } from "#ui/gallery/undo-sample.client";
import { LoadingState } from "#ui/loading-state";
import { Progress } from "#ui/progress";
import { Row } from "#ui/row";
import { Section } from "#ui/section";
import { Stack } from "#ui/stack";
import { VisitMark, type VisitState, visitWords } from "#ui/visit-mark";

const levels = ["hold", "take-care", "note", "answered"] as const;

/** Findings alone and in groups, their marks, and the eight marks of a visit. */
export function FindingPart() {
  return (
    <Section id="findings" name="Findings and marks">
      <Stack gap={6}>
        <Columns split="two">
          <Stack gap={3}>
            <Finding
              level="hold"
              what="Too hot for iron after 1 pm."
              figure="84 °F expected; label: below 80 °F."
              toDo="Go before 1 pm or move it."
              source="label, use 2"
              actions={<Button>Answer</Button>}
            />
            <Finding level="take-care" what="Iron stains the walk." toDo="Blow off granules, keep spray off stone." source="label" />
            <Finding level="note" what="Dog in the back." source="property" />
            <Finding
              level="answered"
              what="Phosphorus without a soil test."
              figure="0.4 lb P2O5; law: none without a test."
              source="law"
              answer={{ by: "Dana Quill", license: "license 40-1182", at: "Tuesday, April 14, 7:40 am", reason: "New seeding on lawn B." }}
            />
          </Stack>
          <Stack gap={3}>
            <FindingGroup
              level="hold"
              cause="Too hot for iron after 1 pm"
              count="9 stops"
              figure="84 °F expected; label: below 80 °F."
              source="label"
              act={<Button second="adds 14 min">Move all to Thu</Button>}
              items={["Truck 2, stop 8, Hazel Ct 12", "Truck 2, stop 9, Iris Ln 208"].map((words) => ({ id: words, words }))}
            />
            <FindingGroup
              level="take-care"
              cause="Notice is due by 4 pm"
              count="3 stops"
              source="law"
              act={<Button>Print 3 notices</Button>}
              items={[{ id: "1", words: "Wednesday, Oberammergauerstraßenverlängerung 18" }]}
            />
            <FindingGroup level="note" cause="Stock is low after today" count="1 product" source="stock" items={[]} />
          </Stack>
        </Columns>
        <Row gap="wide">
          {levels.map((level) => (
            <Row key={level} gap="narrow">
              <FindingMark level={level} />
              <FindingMark level={level} size={16} />
            </Row>
          ))}
        </Row>
        <Row gap="wide">
          {(Object.keys(visitWords) as VisitState[]).map((state) => (
            <VisitMark key={state} state={state} />
          ))}
        </Row>
        <Row gap="wide">
          {(Object.keys(visitWords) as VisitState[]).map((state) => (
            <VisitMark key={state} state={state} size={24} word="spoken" />
          ))}
        </Row>
      </Stack>
    </Section>
  );
}

/** Nothing, failed, reading, working, undone. */
export function StatePart() {
  return (
    <Section id="states" name="Empty, failed, reading, working">
      <Columns split="two">
        <Stack gap={5}>
          <EmptyState
            sentence="Nothing is set for Wed, April 15. 23 visits are open that day."
            actions={<Button kind="act">Suggest runs</Button>}
          />
          <EmptyState
            sentence="No lawn is measured yet. Draw it, or type its sides."
            actions={
              <>
                <Button>Draw it</Button>
                <Button>Type its sides</Button>
              </>
            }
          />
          <ErrorState
            failed="The packet could not be printed."
            safe="All 27 records are safe, and yesterday’s packet is as it was."
            actions={<Button>Print again</Button>}
            incident="7f3a-91c0"
          />
        </Stack>
        <Stack gap={5}>
          <LoadingState words="Reading 3 runs" />
          <Progress
            id="fit"
            name="Fitting Tuesday"
            standing="14 s, best so far 6 h 12 min of driving"
            actions={
              <>
                <Button kind="act">Use this</Button>
                <Button>Keep looking</Button>
                <Button>Stop, keep the old day</Button>
              </>
            }
          />
          <Progress
            id="packet"
            name="Printing the packet"
            standing="62 of 118 papers"
            done={{ count: 62, of: 118 }}
            actions={<Button>Stop</Button>}
          />
          <UndoSample />
        </Stack>
      </Columns>
    </Section>
  );
}
