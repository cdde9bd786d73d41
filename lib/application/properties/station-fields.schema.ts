import { z } from "zod";
import { idField, optionalDate, requiredLine } from "#application/field.schema";
import { readStationTest } from "#domain/equipment/station-test";
import { bareNumber } from "#domain/quantities/number-with-unit";

const LARGEST_NUMBER = 99;
const MOST_RUN_MINUTES = 1440;

const wholeNumber = (what: string, most: number) =>
  z
    .string(`Give ${what}.`)
    .trim()
    .regex(/^\d{1,4}$/, `Give ${what} as a whole number.`)
    .transform(Number)
    .pipe(z.number().int().min(1, `Give ${what}, 1 or more.`).max(most, `At most ${most.toLocaleString("en-US")}.`));

/** "12" and "12 min" are the same run. */
const longestRunField = z
  .string("Give the longest run.")
  .transform((text) => {
    const bare = bareNumber("longestRun", text, "min");
    return bare.ok ? bare.value : text;
  })
  .pipe(wholeNumber("the longest run in minutes", MOST_RUN_MINUTES));

/** Which lawns a station waters: a tick for each, by the lawn's id. */
const watersField = z.record(idField, z.union([z.literal("yes"), z.literal(""), z.literal(false)])).default({});

/** What a station is asked for. The depths, minutes and day of its catch-can test are given together or stay empty, for without a test there is no rate;
 * the wind may be left out, and is said to be. */
export const stationFields = {
  number: wholeNumber("the number on the controller", LARGEST_NUMBER),
  name: requiredLine("a name for the station, such as Front spray heads", 80),
  waters: watersField,
  depths: z.string("Give the depths.").trim().max(600, "At most 600 characters."),
  minutes: z.string("Give the minutes.").trim().max(20, "At most 20 characters."),
  wind: z.string("Give the wind.").trim().max(20, "At most 20 characters."),
  testedOn: optionalDate("the day of the test"),
  longestRun: z.union([z.literal("").transform(() => null), longestRunField], "Give whole minutes, or leave it empty."),
};

interface TestFields {
  readonly depths: string;
  readonly minutes: string;
  readonly wind: string;
  readonly testedOn: string | null;
}

/** Whether any part of a test was given. */
export function hasTest({ depths, minutes, wind, testedOn }: TestFields): boolean {
  return depths !== "" || minutes !== "" || wind !== "" || testedOn !== null;
}

/** Complains about a test that is not whole, at its fields. */
export function checkTest(form: TestFields, context: z.RefinementCtx): void {
  if (!hasTest(form)) return;
  const read = readStationTest(form);
  if (!read.ok) context.addIssue({ code: "custom", path: [read.refusal.field], message: read.refusal.sentence });
  if (form.testedOn === null) context.addIssue({ code: "custom", path: ["testedOn"], message: "Give the day of the test." });
}
