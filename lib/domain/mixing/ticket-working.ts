import { type Working } from "#domain/foundation/working";
import { type AftercareTimeline } from "#domain/mixing/aftercare";
import { type MixTicket } from "#domain/mixing/mix-ticket";
import { type TicketQuestion } from "#domain/mixing/ticket-question";
import { activeWorkings } from "#domain/mixing/ticket-working-active";
import { deliveredWorkings } from "#domain/mixing/ticket-working-delivered";
import { granularWorkings } from "#domain/mixing/ticket-working-granular";
import { sprayWorkings } from "#domain/mixing/ticket-working-spray";
import { wateringWorkings } from "#domain/mixing/ticket-working-watering";

/** A ticket with its question and its aftercare, as they are kept together. */
export interface WorkedTicket {
  readonly question: TicketQuestion;
  readonly ticket: MixTicket;
  readonly aftercare: readonly { readonly timeline: AftercareTimeline }[];
}

/**
 * Every working of a ticket in the order of the ticket, for whoever follows the whole of it by hand. Of a ticket that
 * was issued it takes what was kept with it, so that the arithmetic is that of the paper and not of today's facts.
 */
export function allWorkings({ question, ticket, aftercare }: WorkedTicket): readonly Working[] {
  return [
    ...ticket.mixes.flatMap((mix) => (mix.kind === "granular" ? granularInOrder(granularWorkings(mix, question, ticket)) : sprayInOrder(sprayWorkings(mix, question, ticket)))),
    ...deliveredWorkings(question, ticket).map(({ working }) => working),
    ...activeWorkings(question, ticket).map(({ working }) => working),
    ...aftercare.flatMap(({ timeline }) => wateringWorkings(timeline)),
  ];
}

function stated(workings: readonly (Working | undefined)[]): readonly Working[] {
  return workings.flatMap((working) => (working === undefined ? [] : [working]));
}

function granularInOrder(workings: ReturnType<typeof granularWorkings>): readonly Working[] {
  if (workings === undefined) return [];
  const { lawns, setting, total, bags, hopper, time } = workings;
  return stated([...lawns.flatMap(({ treated, amount, perPass, rate }) => [treated, amount, perPass, rate]), setting, total, bags, hopper, time]);
}

function sprayInOrder(workings: ReturnType<typeof sprayWorkings>): readonly Working[] {
  if (workings === undefined) return [];
  const { carrier, finished, order, half, time, loads, products, lawns, rest } = workings;
  return stated([
    ...lawns.map(({ treated }) => treated),
    carrier,
    finished,
    ...loads.flatMap((load) => [load.finished, ...load.products.map(({ working }) => working), load.water]),
    order,
    half,
    time,
    ...products.flatMap(({ concentration, total, rate }) => [concentration, total, rate]),
    ...lawns.flatMap((lawn) => [lawn.finished, ...lawn.products.map(({ working }) => working)]),
    ...(rest === undefined ? [] : [rest.finished, ...rest.products.map(({ working }) => working)]),
  ]);
}
