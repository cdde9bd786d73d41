import { badInput, type Outcome, accept } from "#domain/foundation/outcome";

const MINUTES_AN_HOUR = 60;

/**
 * Reads a time of day in minutes after midnight: "7 am", "7:40 am", "19:40", "7" (in the morning). Refused: anything
 * else. At `field`.
 */
export function readClockMinute(field: string, text: string): Outcome<number> {
  const typed = text.trim();
  const [, hourText = "", minuteText = "0", half] = /^(\d{1,2})(?::(\d{2}))?(?:\s*([ap])\.?(?:m\.?)?)?$/iu.exec(typed) ?? [];
  const [hour, minute] = [Number(hourText), Number(minuteText)];
  const isTwelve = half !== undefined;
  const isTime = hourText !== "" && minute < MINUTES_AN_HOUR && (isTwelve ? hour >= 1 && hour <= 12 : hour <= 23);
  if (!isTime) return badInput(field, typed === "" ? "nothing" : typed, "a time of day, such as 7 am or 13:00", `"${typed}" is no time of day. Write it as 7 am or 13:00.`);
  const hourOfDay = isTwelve ? (hour % 12) + (half.toLowerCase() === "p" ? 12 : 0) : hour;
  return accept(hourOfDay * MINUTES_AN_HOUR + minute);
}
