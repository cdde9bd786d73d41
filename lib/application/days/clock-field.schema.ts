import { z } from "zod";

/** A time of day as a time field sends it, in minutes of the local day. */
export function requiredClock(what: string) {
  return z.string(`Give ${what}.`).transform((text, context) => {
    const [, hours, minutes] = /^([01]\d|2[0-3]):([0-5]\d)$/.exec(text.trim()) ?? [];
    if (hours !== undefined && minutes !== undefined) return Number(hours) * 60 + Number(minutes);
    context.addIssue({ code: "custom", message: text.trim() === "" ? `Give ${what}.` : "Give the time as hours and minutes, for example 07:30." });
    return z.NEVER;
  });
}
