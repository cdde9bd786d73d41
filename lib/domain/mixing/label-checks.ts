import { type CalendarDate, daysBetween } from "#domain/foundation/calendar-date";
import { judgeDroplets } from "#domain/equipment/tip-droplets";
import { type Finding, hold, note, takeCare } from "#domain/foundation/finding";
import { formatRate, formatRatesApart } from "#domain/quantities/format-rate";
import { compareRates, type Rate, type RateBasis } from "#domain/quantities/rate";
import { shareWords } from "#domain/quantities/share";
import { citationOfUse } from "#domain/label/label-facts";
import { compareToLabel } from "#domain/label/label-rates";
import { notReadOnLabel } from "#domain/label/not-read";
import { checkApplicationCount } from "#domain/mixing/application-count";
import { checkSeason } from "#domain/mixing/season-limits";
import { statedOf } from "#domain/mixing/stated-rate";
import { isSprayed, type TicketLawn, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";

const fromLabel = (treatment: TicketTreatment) => citationOfUse(treatment.label.productName, treatment.use.useName);

function words(treatment: TicketTreatment, rule: string, what: string, more: { figure?: string; toDo?: string; about?: readonly string[] } = {}) {
  const { about = [], ...rest } = more;
  return { rule, source: "label", what, ...rest, citation: fromLabel(treatment), about: [treatment.label.productName, ...about] } as const;
}

/** A rate against the lowest or the highest of a label's, whatever both are measured by; two that differ never read the same. */
function besides(rate: Rate<RateBasis>, range: { readonly low: Rate<RateBasis>; readonly high: Rate<RateBasis> }) {
  if (rate.basis !== range.low.basis) return { found: formatRate(rate, "us"), low: formatRate(range.low, "us"), high: formatRate(range.high, "us") };
  const [isUnder, isOver] = [compareRates(rate, range.low) < 0, compareRates(rate, range.high) > 0];
  const [found, end] = formatRatesApart(rate, isUnder ? range.low : range.high, "us");
  return { found, low: isUnder ? end : formatRate(range.low, "us"), high: isOver ? end : formatRate(range.high, "us") };
}

function checkRate(treatment: TicketTreatment): readonly Finding[] {
  const { label } = treatment;
  const { rate, rates } = statedOf(treatment);
  const [low, high] = [compareToLabel(rate, rates, "low"), compareToLabel(rate, rates, "high")];
  const range = () => {
    const written = besides(rate, rates);
    return `The label's range is ${written.low} to ${written.high}; planned is ${written.found}.`;
  };
  if (low === undefined || high === undefined) {
    const what = `The rate of ${label.productName} is planned by another measure than its label's.`;
    return [hold("office", words(treatment, "rate-on-another-basis", what, { figure: range(), toDo: "Plan it as the label states it." }))];
  }
  if (high > 0) {
    return [hold("nobody", words(treatment, "label-rate-above-highest", `${label.productName} is above the label's highest rate.`, { figure: range(), toDo: "Lower the rate." }))];
  }
  if (low < 0) {
    return [takeCare(words(treatment, "label-rate-below-lowest", `${label.productName} is below the label's lowest rate.`, { figure: range(), toDo: "It may do little; make sure that it is meant." }))];
  }
  return [];
}

/** What goes on the ground of a rate in the finished spray, where the label has a most over area too. */
function checkMostOnArea(treatment: TicketTreatment): readonly Finding[] {
  const { rate, use: { besideRates }, label, gear } = treatment;
  const most = besideRates?.mostOnArea;
  if (most?.basis !== rate.basis || compareRates<RateBasis>(rate, most) <= 0) return [];
  const [found, highest] = formatRatesApart<RateBasis>(rate, most, "us");
  const figure = `At what ${gear.name} puts out it comes to ${found}; the label allows ${highest}.`;
  return [hold("nobody", words(treatment, "most-on-area-passed", `So much spray of ${label.productName} puts more on the ground than its label allows.`, { figure, toDo: "Lower the rate, or calibrate for less spray.", about: [gear.name] }))];
}

/** Spot work against the label's most of a lawn, and what it says of wet leaves. */
function checkSpot(treatment: TicketTreatment): readonly Finding[] {
  const { spot, use: { besideRates }, label } = treatment;
  const findings: Finding[] = [];
  const most = besideRates?.mostSpotShareBasisPoints;
  if (most !== undefined && (spot === undefined || spot.shareBasisPoints > most)) {
    const planned = spot === undefined ? "all over the lawn" : `on ${shareWords(spot.shareBasisPoints)} of it`;
    const figure = `The label allows it on ${shareWords(most)} of a lawn at most; it is planned ${planned}.`;
    findings.push(hold("nobody", words(treatment, "spot-share-above-label", `${label.productName} is planned on more of the lawn than its label allows.`, { figure, toDo: "Lower the share, or take a use that may go all over." })));
  }
  if (besideRates?.isToWet === true) {
    findings.push(note(words(treatment, "spray-to-wet", `The label of ${label.productName} says to spray to wet.`, { toDo: "Wet the leaves and stop before it runs off; how much went out is what the meter says." })));
  }
  return findings;
}

function checkCarrier(treatment: TicketTreatment): readonly Finding[] {
  if (!isSprayed(treatment)) return [];
  const { use, label, gear } = treatment;
  if (use.carrier === "none") return [];
  if (use.carrier === "unknown") return [unread(treatment, "carrier-not-read", "the finished spray it wants per 1,000 sq ft")];
  const { low, high } = use.carrier;
  if (compareRates(gear.carrier.rate, low) >= 0 && compareRates(gear.carrier.rate, high) <= 0) return [];
  const written = besides(gear.carrier.rate, use.carrier);
  return [
    hold(
      "nobody",
      words(treatment, "carrier-out-of-range", `${gear.name} does not put out the spray volume that ${label.productName} wants.`, {
        figure: `It puts out ${written.found}; the label's range is ${written.low} to ${written.high}.`,
        toDo: "Change tip, pressure or pace and calibrate again, or take other equipment.",
        about: [gear.name],
      }),
    ),
  ];
}

function unread(treatment: TicketTreatment, rule: string, what: string): Finding {
  return notReadOnLabel(rule, treatment.label.productName, what, { citation: fromLabel(treatment) });
}

function checkGrass(treatment: TicketTreatment, lawns: readonly TicketLawn[]): readonly Finding[] {
  const { use, label } = treatment;
  if (use.grasses === "unknown") return [unread(treatment, "grasses-not-read", "on which grasses it may go")];
  if (use.grasses === "any turfgrass") return [];
  const { grasses: allowed } = use;
  return lawns.flatMap((lawn) => {
    const missing = lawn.grasses.filter((grass) => !allowed.includes(grass));
    if (missing.length === 0) return [];
    const figure = `${lawn.name} has ${missing.join(", ")}; the label names ${allowed.join(", ")}.`;
    return [hold("nobody", words(treatment, "grass-not-on-label", `${label.productName} may not go on this grass.`, { figure, toDo: "Take another product.", about: [lawn.name] }))];
  });
}

/** What is made to be sprayed does not go into a spreader, nor granules into a tank. */
function checkGear(treatment: TicketTreatment): readonly Finding[] {
  const { label, gear } = treatment;
  if (isSprayed(treatment) !== (label.formulation === "dry granule")) return [];
  return [
    hold("office", {
      rule: "gear-does-not-fit",
      source: "house",
      what: `${label.productName} (${label.formulation}) can't be put down with ${gear.name}.`,
      toDo: isSprayed(treatment) ? "Take a spreader." : "Take a sprayer.",
      about: [label.productName, gear.name],
    }),
  ];
}

function checkInterval(treatment: TicketTreatment, lawns: readonly TicketLawn[], on: CalendarDate): readonly Finding[] {
  const { use, label, productId } = treatment;
  if (use.leastDaysBetween === "none") return [];
  if (use.leastDaysBetween === "unknown") return [unread(treatment, "interval-not-read", "how many days must lie between two applications")];
  const { days } = use.leastDaysBetween;
  return lawns.flatMap((lawn) => {
    const since = lawn.history.filter((past) => past.productId === productId).map((past) => Math.abs(daysBetween(past.on, on)));
    const nearest = since.length === 0 ? undefined : Math.min(...since);
    if (nearest === undefined || nearest >= days) return [];
    const between = nearest === 1 ? "1 day lies" : `${String(nearest)} days lie`;
    const figure = `${between} between this and the other application on ${lawn.name}; the label asks for at least ${String(days)}.`;
    return [hold("nobody", words(treatment, "too-soon-again", `${label.productName} comes too soon again.`, { figure, toDo: "Move the visit.", about: [lawn.name] }))];
  });
}

function checkReading(treatment: TicketTreatment): readonly Finding[] {
  const { label, labelConfirmedBy, use } = treatment;
  const findings: Finding[] = [];
  if (labelConfirmedBy === null) {
    findings.push(
      hold("office", {
        rule: "label-not-confirmed",
        source: "house",
        what: `Nobody has held the entry of ${label.productName} against its label.`,
        toDo: "Confirm the entry in the Shed, with the container at hand.",
        about: [label.productName],
      }),
    );
  }
  if (label.epaRegistrationNumber === "unknown") findings.push(unread(treatment, "registration-not-read", "what its EPA registration number is"));
  if (label.activeIngredients === "unknown") findings.push(unread(treatment, "ingredients-not-read", "which active ingredients it has and how much"));
  if (label.isRestrictedUse === true) {
    findings.push(takeCare(words(treatment, "restricted-use", `${label.productName} is for restricted use.`, { toDo: "A certified applicator puts it down or supervises as the state asks." })));
  }
  if (label.isRestrictedUse === "unknown") findings.push(unread(treatment, "restricted-use-not-read", "whether it is for restricted use"));
  if (use.stainsHardSurfaces === "unknown") findings.push(unread(treatment, "staining-not-read", "whether it stains hard surfaces"));
  if (use.stainsHardSurfaces === true) {
    findings.push(note(words(treatment, "stains", `${label.productName} stains concrete and stone.`, { toDo: "Blow walks and drives off before they get wet." })));
  }
  return findings;
}

/** Everything that a label says of a planned treatment, without the weather and the aftercare, which have their own files. */
export function checkLabel(treatment: TicketTreatment, question: TicketQuestion): readonly Finding[] {
  const lawns = question.lawns.filter(({ zoneId }) => treatment.zoneIds.includes(zoneId));
  return [
    ...checkReading(treatment),
    ...checkRate(treatment),
    ...checkMostOnArea(treatment),
    ...checkSpot(treatment),
    ...checkCarrier(treatment),
    ...(isSprayed(treatment) ? judgeDroplets(treatment.gear.tip, treatment.label.productName, treatment.use.droplets) : []),
    ...checkGear(treatment),
    ...checkGrass(treatment, lawns),
    ...checkInterval(treatment, lawns, question.on),
    ...(treatment.use.mostApplications === "unknown" ? [unread(treatment, "most-applications-not-read", "how often it may go on the same ground in a year")] : []),
    ...checkApplicationCount(treatment, lawns, question.on),
    ...(treatment.use.seasonLimits === "unknown" ? [unread(treatment, "season-limit-not-read", "what may go on the same ground in a season")] : []),
    ...checkSeason(treatment, lawns, question),
  ];
}
