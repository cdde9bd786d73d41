import { z } from "zod";
import { COMPANY_TIME_ZONES, US_STATE_CODES } from "#domain/company/us-state";
import { ROLES } from "#domain/crew/role";
import { parseCalendarDate } from "#domain/foundation/calendar-date";

// Fields that several forms ask for. Each complaint is a sentence for the person who typed.

/** Control characters and halves of surrogate pairs: nobody types them, and the database refuses some of them. */
const UNWRITABLE = /[\p{Cc}\p{Cs}]/u;
/** The same in text of several lines, whose ends are no mistake. */
const UNWRITABLE_IN_LINES = /\p{Cs}|[^\P{Cc}\r\n\t]/u;
const LEAVE_OUT = "Leave out line breaks and other control characters.";

/** Whether a text has characters that can't be kept; in a text of lines their ends are none. */
export function isWritable(text: string, as: "line" | "lines"): boolean {
  return !(as === "line" ? UNWRITABLE : UNWRITABLE_IN_LINES).test(text);
}

/** A line of text that may be left empty, kept as it was typed: empty stays empty. */
export function lineAsTyped(ask: string, longest: number) {
  return z.string(ask).trim().max(longest, `At most ${String(longest)} characters.`).refine((text) => isWritable(text, "line"), LEAVE_OUT);
}

/** A line of text that must be there. */
export function requiredLine(what: string, longest = 200) {
  return z
    .string(`Give ${what}.`)
    .trim()
    .min(1, `Give ${what}.`)
    .max(longest, `At most ${String(longest)} characters.`)
    .refine((text) => isWritable(text, "line"), LEAVE_OUT);
}

/** A line of text that may be left empty; empty becomes null. */
export function optionalLine(longest = 200) {
  return z
    .string("Write a line of text, or leave it empty.")
    .trim()
    .max(longest, `At most ${String(longest)} characters.`)
    .refine((text) => isWritable(text, "line"), LEAVE_OUT)
    .transform((text) => (text === "" ? null : text));
}

/** A calendar day as a date field sends it. */
export function requiredDate(what: string) {
  return z.string(`Give ${what}.`).transform((text, context) => {
    const parsed = parseCalendarDate(what, text);
    if (parsed.ok) return parsed.value;
    context.addIssue({ code: "custom", message: text.trim() === "" ? `Give ${what}.` : parsed.refusal.sentence });
    return z.NEVER;
  });
}

/** A calendar day, or nothing; empty becomes null. */
export function optionalDate(what: string) {
  return z.string("Give a date, or leave it empty.").transform((text, context) => {
    if (text.trim() === "") return null;
    const parsed = parseCalendarDate(what, text);
    if (parsed.ok) return parsed.value;
    context.addIssue({ code: "custom", message: parsed.refusal.sentence });
    return z.NEVER;
  });
}

export const emailField = z
  .string("Give an email address.")
  .trim()
  .toLowerCase()
  .min(1, "Give an email address.")
  .max(254, "At most 254 characters.")
  .pipe(z.email("This does not look like an email address: something@somewhere.example"));

/** At least 15 characters where a password is the only factor, and no rules about kinds of characters: NIST SP 800-63B-4 (from memory). */
export const newPasswordField = z
  .string("Give a password.")
  .min(15, "At least 15 characters: four or five words in a row are good and easy to remember.")
  .max(200, "At most 200 characters.");

/** The largest whole number of the column that counts versions. */
const LARGEST_VERSION = 2_147_483_647;
const BROKEN_FORM = "The form is not whole. Load the page again.";

/** The version a form was filled from; another one in the database means someone else was faster. */
export const versionField = z
  .union([z.number(), z.string().regex(/^\d{1,10}$/).transform(Number)], BROKEN_FORM)
  .pipe(z.number().int(BROKEN_FORM).min(1, BROKEN_FORM).max(LARGEST_VERSION, BROKEN_FORM));

export const stateField = z.enum(US_STATE_CODES, "Choose a state.");
export const timeZoneField = z.enum(COMPANY_TIME_ZONES, "Choose a time zone.");
export const roleField = z.enum(ROLES, "Choose what this person may do.");
export const idField = z.uuid("This is not an id of ours.");
export const secretField = z.string("The link is not whole.").regex(/^[A-Za-z0-9_-]{43}$/, "The link is not whole.");
