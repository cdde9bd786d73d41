import { z } from "zod";

const CLOCK = /^([01]?\d|2[0-3]):([0-5]\d)$/;

/** A time of day as a time field sends it, in minutes of the local day. */
export function requiredClockTime(what: string) {
  return z.string(`Give ${what}.`).transform((text, context) => {
    const [, hours, minutes] = CLOCK.exec(text.trim()) ?? [];
    if (hours !== undefined && minutes !== undefined) return Number(hours) * 60 + Number(minutes);
    context.addIssue({ code: "custom", message: text.trim() === "" ? `Give ${what}.` : `Give ${what} as hours and minutes, such as 9:12 or 14:05.` });
    return z.NEVER;
  });
}
