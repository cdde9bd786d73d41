import { answerCovering } from "#domain/foundation/answered-hold";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Finding } from "#domain/foundation/finding";
import { type VisitOnFile } from "#application/visits/read-visit";
import { heldOf } from "#application/visits/visit-ticket";
import { answeredBefore } from "#domain/register/former-answer";
import { firstDayOpen } from "#domain/scheduling/visit-standing";
import { LinkButton } from "#ui/button";
import { Disclosure } from "#ui/disclosure";
import { Stack } from "#ui/stack";
import { VisitFinding } from "../visit-finding";
import { actOfFinding, type PlacesOfVisit } from "../hold-acts";
import { momentOf } from "./visit-words";

/** Which of the open holds of its rule a hold is, counted from one: the address of its answer's page. */
function numberOfRule({ openHolds }: VisitOnFile, hold: Finding): number {
  return openHolds.filter(({ rule }) => rule === hold.rule).findIndex((one) => one === hold) + 1;
}

/** The id of an open hold on the page, where the blocked button leads. */
export function holdId(index: number): string {
  return `hold-${String(index + 1)}`;
}

function placesOf({ visit, outcome, lawns }: VisitOnFile, today: CalendarDate): PlacesOfVisit {
  const treatments = outcome.ok ? outcome.value.question.treatments : [];
  const putDown = lawns.flatMap((lawn) => lawn.putDown.map(({ label, productId }) => [label.productName, productId] as const));
  return {
    visitId: visit.visitId,
    propertyId: visit.property.propertyId,
    date: visit.stop?.date ?? null,
    dayToPlan: firstDayOpen(visit, today),
    productIdOf: new Map([...putDown, ...treatments.map(({ label, productId }) => [label.productName, productId] as const)]),
  };
}

interface FindingsOfVisitProps {
  readonly found: VisitOnFile;
  readonly timeZone: string;
  readonly today: CalendarDate;
  readonly mayAnswer: boolean;
}

/** What was found, the gravest first: holds with their act, then those answered and what was answered before, then what wants care, notes behind one press. */
export function FindingsOfVisit({ found, timeZone, today, mayAnswer }: FindingsOfVisitProps) {
  const { findings, on } = heldOf(found.outcome);
  const places = placesOf(found, today);
  const isOpen = (finding: Finding) => found.openHolds.some((hold) => hold === finding);
  const answered = findings.filter((finding) => finding.level === "hold" && !isOpen(finding));
  const cares = findings.filter(({ level }) => level === "take-care");
  const notes = findings.filter(({ level }) => level === "note");
  if (findings.length + found.formerAnswers.length === 0) return <p>Nothing was found that wants care.</p>;
  return (
    <Stack gap={4}>
      {found.openHolds.map((hold, index) => (
        <div key={`${hold.rule} ${hold.what} ${hold.about.join(" ")}`} id={holdId(index)} tabIndex={-1}>
          <VisitFinding finding={hold} act={actOfFinding(hold, places)}>
            {hold.answerableBy === "license-holder" && mayAnswer && (
              <LinkButton href={`/visits/${found.visit.visitId}/answer-hold?rule=${hold.rule}&number=${String(numberOfRule(found, hold))}`}>Answer</LinkButton>
            )}
          </VisitFinding>
        </div>
      ))}
      {answered.map((hold) => {
        const said = answerCovering(hold, on, found.answers);
        const answer = said === undefined ? undefined : { said, at: momentOf(new Date(said.answeredAt), timeZone) };
        return <VisitFinding key={`${hold.rule} ${hold.what} ${hold.about.join(" ")}`} finding={hold} answer={answer} />;
      })}
      {found.formerAnswers.map((former) => (
        <VisitFinding key={`former ${former.answeredAt} ${former.rule} ${former.answered?.about.join(" ") ?? ""}`} finding={answeredBefore(former, timeZone)} />
      ))}
      {cares.map((care) => (
        <VisitFinding key={`${care.rule} ${care.what} ${care.about.join(" ")}`} finding={care} act={actOfFinding(care, places)} />
      ))}
      {notes.length > 0 && (
        <Disclosure name={notes.length === 1 ? "1 note" : `${String(notes.length)} notes`} open={found.openHolds.length + cares.length === 0}>
          <Stack gap={3}>
            {notes.map((note) => (
              <VisitFinding key={`${note.rule} ${note.what} ${note.about.join(" ")}`} finding={note} />
            ))}
          </Stack>
        </Disclosure>
      )}
    </Stack>
  );
}
