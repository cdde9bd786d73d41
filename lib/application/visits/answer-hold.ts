import { lockCompany } from "#adapters/postgres/company-work";
import { answeredHold, textOfAnsweredHold } from "#domain/foundation/answered-hold";
import { calendarDateIn } from "#domain/foundation/calendar-date";
import { licenseStanding } from "#domain/crew/license";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { badField, conflict, notFound } from "#application/refusal";
import { calendarDayOf, calendarDayOrNone } from "#application/stored-day";
import { answerHoldSchema } from "#application/visits/answer-hold.schema";
import { visitOnFile } from "#application/visits/read-visit";
import { heldOf } from "#application/visits/visit-ticket";
import { useCase } from "#application/use-case";

/**
 * A license holder states why a hold of law does not apply to a visit. It hangs on the license of the property's state
 * that the person holds on that day, not on a role; a label's hold is never answered. The answer is to the hold as the
 * person read it: where the plan has changed since, or the hold was answered meanwhile, it is refused.
 */
export const answerHold = useCase("visits/answer-hold", answerHoldSchema, async (work, { visitId, hold: asRead, licenseId, reason }) => {
  const { companyId, timeZone } = work.company;
  await lockCompany(work.tx);
  const found = await visitOnFile(work, visitId);
  if (found === undefined) return notFound("visit");
  const { on } = heldOf(found.outcome);
  const hold = on === null ? undefined : found.openHolds.find((open) => textOfAnsweredHold(answeredHold(open, on)) === asRead);
  if (hold === undefined || on === null) return conflict("This hold does not stand any more. Look again.");
  if (hold.answerableBy !== "license-holder") return conflict("This hold is not one that a license holder may answer. Change the plan.");
  const license = await work.tx.license.findUnique({ where: { companyId_licenseId: { companyId, licenseId } } });
  if (license?.personId !== work.member.personId || license.withdrawnAt !== null) return badField("licenseId", "Choose a license of your own.");
  const today = calendarDateIn(timeZone, work.now.getTime());
  const stands = licenseStanding({ issuedOn: calendarDayOrNone(license.issuedOn), expiresOn: calendarDayOf(license.expiresOn) }, today);
  const isGood = stands.kind === "standing" || stands.kind === "runs-out-soon";
  if (!isGood || license.kind !== "certified-applicator" || license.state !== found.visit.property.state) {
    return badField("licenseId", `Answering this needs a certified applicator's license of ${found.visit.property.state} that stands today.`);
  }
  const holdAnswerId = work.newId();
  await work.tx.holdAnswer.create({
    data: { companyId, holdAnswerId, visitId, rule: hold.rule, answeredHold: asRead, reason, personId: work.member.personId, licenseId, answeredAt: work.now },
  });
  await writeDeed(work, visitId, { deed: "hold-answered", details: { ...answeredHold(hold, on), reason, license: `${license.state} ${license.number}` } });
  return accept({ holdAnswerId });
});
