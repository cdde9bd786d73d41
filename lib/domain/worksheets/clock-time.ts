import { badInput, type Outcome, accept } from "#domain/foundation/outcome";

const MINUTES_AN_HOUR = 60;

/**
 * Reads a time of day in minutes after midnight: "7 am", "7:40 am", "19:40", "7" (in the morning). Refused: anything
 * else.
 */
export function readClockMinute(field: string, text: string): Outcome<number> {
  const typed = text.trim();
  const [, hourText = "", minuteText = "0", half] = /^(\d{1,2})(?::(\d{2}))?\s*([ap])?\.?m?\.?$/iu.exec(typed) ?? [];
  const [hour, minute] = [Number(hourText), Number(minuteText)];
  const isTwelve = half !== undefined;
  const isTime = hourText !== "" && minute < MINUTES_AN_HOUR && (isTwelve ? hour >= 1 && hour <= 12 : hour <= 23);
  if (!isTime) return badInput(field, typed === "" ? "nothing" : typed, "a time of day, such as 7 am or 13:00", `"${typed}" is no time of day. Write it as 7 am or 13:00.`);
  const hourOfDay = isTwelve ? (hour % 12) + (half.toLowerCase() === "p" ? 12 : 0) : hour;
  return accept(hourOfDay * MINUTES_AN_HOUR + minute);
}

/** A minute of the day as it is read on a screen: "7 am", "7:40 am", "noon". */
export function clockMinuteWords(minuteOfDay: number): string {
  const hour = Math.floor(minuteOfDay / MINUTES_AN_HOUR);
  const minute = minuteOfDay % MINUTES_AN_HOUR;
  if (minute === 0 && hour === 12) return "noon";
  if (minute === 0 && (hour === 0 || hour === 24)) return "midnight";
  const twelve = hour % 12 === 0 ? 12 : hour % 12;
  const minutes = minute === 0 ? "" : `:${String(minute).padStart(2, "0")}`;
  return `${twelve}${minutes} ${hour % 24 < 12 ? "am" : "pm"}`;
}
