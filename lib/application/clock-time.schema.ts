import { z } from "zod";

/** With or without a zero in front: a field without a picker sends what was typed. */
const CLOCK = /^([01]?\d|2[0-3]):([0-5]\d)$/;
const MINUTES_AN_HOUR = 60;

function minuteOfDay(text: string): number | undefined {
  const [, hours, minutes] = CLOCK.exec(text.trim()) ?? [];
  return hours === undefined || minutes === undefined ? undefined : Number(hours) * MINUTES_AN_HOUR + Number(minutes);
}

/**
 * A time of day as a time field sends it, in minutes of the local day.
 * @param what "when it was started": what is asked for where the field is empty
 * @param complaint what is said where it is no time of day
 */
export function requiredClockTime(what: string, complaint = `Give ${what} as hours and minutes, such as 9:12 or 14:05.`) {
  return z.string(`Give ${what}.`).transform((text, context) => {
    const minute = minuteOfDay(text);
    if (minute !== undefined) return minute;
    context.addIssue({ code: "custom", message: text.trim() === "" ? `Give ${what}.` : complaint });
    return z.NEVER;
  });
}

/**
 * A time of day as a time field sends it, in minutes of the local day; empty is null.
 * @param example "09:30": a time that is likely in that field
 */
export function optionalClockTime(example: string) {
  return z.string("Give a time, or leave it empty.").transform((text, context) => {
    if (text.trim() === "") return null;
    const minute = minuteOfDay(text);
    if (minute !== undefined) return minute;
    context.addIssue({ code: "custom", message: `Give the time as hours and minutes, for example ${example}.` });
    return z.NEVER;
  });
}
