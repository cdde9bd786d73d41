import { z } from "zod";
import { LAWN_OUTCOMES, MEASURED_BY } from "#domain/register/record-content";
import { requiredClockTime } from "#application/clock-time.schema";
import { idField, optionalDate, optionalLine, requiredDate } from "#application/field.schema";

/** A whole number of a gauge or a thermometer, or empty where it was not read. */
function optionalReading(lowest: number, highest: number, what: string) {
  const complaint = `Give ${what} as a whole number from ${String(lowest)} to ${String(highest)}, or leave it empty.`;
  return z
    .union([z.number(), z.string().trim().regex(/^(?:-?\d{1,3})?$/, complaint)], complaint)
    .transform((value) => (value === "" ? null : Number(value)))
    .refine((value) => value === null || (Number.isInteger(value) && value >= lowest && value <= highest), complaint);
}

export const WIND_FROM = ["N", "NE", "E", "SE", "S", "SW", "W", "NW"] as const;

const idOrNone = z.union([idField, z.literal("")]).optional().transform((id) => (id === "" || id === undefined ? null : id));

/**
 * What really happened with one mix: how it was measured and how much, and the fill or the lot it came from. An amount
 * beside "as planned, not measured" is refused, since nobody can tell which of the two is meant.
 */
const mixField = z
  .object({
    measuredBy: z.union([z.enum(MEASURED_BY), z.literal("")], "Say how the amount was come by.").nullish(),
    /** "8.2 gal", "7 bags", "5.25 lb"; empty where it was as planned. */
    amount: z.string().trim().max(40, "At most 40 characters.").default(""),
    fillId: idOrNone,
  })
  .refine(({ measuredBy, amount }) => measuredBy !== "as-planned-not-measured" || amount === "", {
    path: ["amount"],
    message: "Empty this, because it says as planned and not measured, or say how this amount was measured.",
  });

/** An object by line as the server reads a form, or a list with gaps as the browser's form holds numbered fields. */
function byLine(mixes: unknown): unknown {
  return Array.isArray(mixes) ? Object.fromEntries(Object.entries(mixes).filter(([, mix]) => mix !== undefined)) : mixes;
}

const mixFields = z
  .preprocess(byLine, z.record(z.string().regex(/^\d{1,3}$/), mixField).default({}))
  .transform((mixes) =>
    Object.fromEntries(
      Object.entries(mixes).flatMap(([line, { measuredBy, amount, fillId }]) =>
        // Of a mix of which nothing is said: whether something must be said of it, its lawns decide.
        measuredBy === "" || measuredBy === null || measuredBy === undefined ? [] : [[line, { measuredBy, amount, fillId }] as const],
      ),
    ),
  );

const yesOrNo = z.enum(["yes", "no"], "Say yes or no.").transform((word) => word === "yes");

export const completeVisitSchema = z.object({
  /** Made with the form: the same one can't write two records. */
  requestId: idField,
  visitId: idField,
  doneOn: requiredDate("the day it was done"),
  startedAt: requiredClockTime("when it was started"),
  endedAt: requiredClockTime("when it was ended"),
  /** Where the work went past midnight; otherwise the day on which it was done. */
  endedOn: optionalDate("the day it ended").optional(),
  applicatorId: idField,
  supervisorId: idOrNone,
  temperatureF: optionalReading(-40, 130, "the temperature in °F"),
  windMph: optionalReading(0, 99, "the wind speed in mph"),
  windFrom: z.union([z.enum(WIND_FROM), z.literal("")], "Choose where the wind is from."),
  instrument: optionalLine(80),
  /** By lawn id. */
  lawns: z.record(idField, z.enum(LAWN_OUTCOMES, "Say how this lawn came out.")),
  /** By the line of the mix's first product; by its own line for a product that no mix could be worked out for. */
  mixes: mixFields,
  signIsUp: yesOrNo,
  noticeWasLeft: yesOrNo,
  remarks: optionalLine(500),
  signature: optionalLine(120),
});

export type CompletedForm = z.output<typeof completeVisitSchema>;

/** The lawns on which something was done. */
export function reachedLawns({ lawns }: Pick<CompletedForm, "lawns">): ReadonlySet<string> {
  return new Set(Object.entries(lawns).flatMap(([zoneId, outcome]) => (outcome === "not-done" ? [] : [zoneId])));
}
