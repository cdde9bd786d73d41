import { expect, test } from "vitest";
import { readPostingSign } from "#domain/label/label-sign";
import { accept } from "#domain/foundation/outcome";

const elapsed = (anchor: string, durationMinutes: number, orReentryIfLater = false) => ({ trigger: "elapsed", anchor, durationMinutes, orReentryIfLater });

test.each([
  ["up at start; down after 24 hours", "at-start", elapsed("application-end", 1440)],
  ["up before application; down 72 hours after posting", "before-application", elapsed("posting", 4320)],
  ["up at the time of application, down the day following", "at-time-of-application", { trigger: "day-following", daysFollowing: 1, orReentryIfLater: false }],
  ["up immediately following the application; down sunset of the day following", "immediately-following", { trigger: "sunset-of-day-following", daysFollowing: 1, orReentryIfLater: false }],
  ["up on the day of application; down any time", "on-day-of-application", { trigger: "no-time-required" }],
  ["up at start; down after 24 hours or reentry if later", "at-start", elapsed("application-end", 1440, true)],
  ["up at start; down after 2 days", "at-start", { trigger: "days-after-completion", daysAfter: 2, orReentryIfLater: false }],
  ["up at start; down 2 days after application or reentry if later", "at-start", { trigger: "days-after-completion", daysAfter: 2, orReentryIfLater: true }],
  ["up at start; down after sprays have dried", "at-start", { trigger: "state", state: "dry", orReentryIfLater: false }],
  ["up at start; down once watered in and dry, or reentry if later", "at-start", { trigger: "state", state: "watered-in-and-dry", orReentryIfLater: true }],
  ["up at start; down when dust has settled", "at-start", { trigger: "state", state: "dust-settled", orReentryIfLater: false }],
])("%s", (value, upBy, mayComeDown) => expect(readPostingSign(value)).toEqual(accept({ kind: "posting-sign", upBy, mayComeDown })));

test.each(["24 hours", "up someday; down after 24 hours", "up at start; down", "up at start; down after 2 months", "up at start; down 2 hours after start", "up at start; down 2 days after start", "up at start; down 2 days after posting", "up at start; down after lunch"])(
  "%s is refused",
  (value) => expect(readPostingSign(value).ok).toBe(false),
);
