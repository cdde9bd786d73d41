import { z } from "zod";
import { LAWN_OUTCOMES, MEASURED_BY } from "#domain/register/record-content";
import { requiredClockTime } from "#application/clock-time.schema";
import { numberedRows } from "#application/programs/treatment-fields.schema";
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

const typedAmount = z.string().trim().max(40, "At most 40 characters.").default("");

/** A mix comes out of at most so many fills besides the first. */
export const MOST_FURTHER_FILLS = 9;

/** Further fills that a mix came out of, each with its own amount; rows that were left empty are left out. */
const furtherFills = numberedRows(z.object({ amount: typedAmount, fillId: idOrNone }), "Choose the fills.")
  .default([])
  .transform((rows, context) =>
    rows.flatMap(([row, { amount, fillId }]) => {
      if (fillId !== null) return [{ row, amount, fillId }];
      if (amount !== "") context.addIssue({ code: "custom", path: [row, "fillId"], message: "Choose the fill that these gallons came out of." });
      return [];
    }),
  );

const SAID_TWICE = "Empty this, because it says as planned and not measured, or say how this amount was measured.";

/**
 * What really happened with one mix: how it was measured and how much, and the fills or the lot it came from. An amount
 * beside "as planned, not measured" is refused, since nobody can tell which of the two is meant.
 */
const mixField = z.object({
  measuredBy: z.union([z.enum(MEASURED_BY), z.literal("")], "Say how the amount was come by.").nullish(),
  /** "8.2 gal", "7 bags", "5.25 lb"; empty where it was as planned. */
  amount: typedAmount,
  fillId: idOrNone,
  alsoFrom: furtherFills,
}).superRefine(({ measuredBy, amount, fillId, alsoFrom }, context) => {
  const planned = measuredBy === "as-planned-not-measured" ? [{ amount, path: ["amount"] }, ...alsoFrom.map((one) => ({ amount: one.amount, path: ["alsoFrom", one.row, "amount"] }))] : [];
  for (const one of planned) if (one.amount !== "") context.addIssue({ code: "custom", path: one.path, message: SAID_TWICE });
  const [first] = alsoFrom;
  if (fillId === null && first !== undefined) context.addIssue({ code: "custom", path: ["fillId"], message: "Choose the first fill too, or take the others off: what was mixed for this visit alone has none." });
  const again = alsoFrom.find((one, index) => one.fillId === fillId || alsoFrom.slice(0, index).some((other) => other.fillId === one.fillId));
  if (again !== undefined) context.addIssue({ code: "custom", path: ["alsoFrom", again.row, "fillId"], message: "This fill is named twice. Put its gallons together." });
});

/** An object by line as the server reads a form, or a list with gaps as the browser's form holds numbered fields. */
function byLine(mixes: unknown): unknown {
  return Array.isArray(mixes) ? Object.fromEntries(Object.entries(mixes).filter(([, mix]) => mix !== undefined)) : mixes;
}

const mixFields = z
  .preprocess(byLine, z.record(z.string().regex(/^\d{1,3}$/), mixField).default({}))
  .transform((mixes) =>
    Object.fromEntries(
      Object.entries(mixes).flatMap(([line, { measuredBy, ...said }]) =>
        // Of a mix of which nothing is said: whether something must be said of it, its lawns decide.
        measuredBy === "" || measuredBy === null || measuredBy === undefined ? [] : [[line, { measuredBy, ...said }] as const],
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
