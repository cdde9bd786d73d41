import { expect, test } from "vitest";
import { COMPANY_TIME_ZONES, US_STATE_CODES, US_STATES } from "#domain/company/us-state";

// USPS Publication 28, appendix B: the 50 states, the District of Columbia, and Puerto Rico.
const USPS =
  "AL AK AZ AR CA CO CT DE DC FL GA HI ID IL IN IA KS KY LA ME MD MA MI MN MS MO MT NE NV NH NJ NM NY NC ND OH OK OR PA PR RI SC SD TN TX UT VT VA WA WV WI WY";

test("the codes are those of the mail, each once, with a name of its own", () => {
  expect([...US_STATE_CODES].sort()).toEqual(USPS.split(" ").sort());
  expect(US_STATE_CODES).toHaveLength(52);
  const names = Object.values(US_STATES).map(({ name }) => name);
  expect(new Set(names).size).toBe(52);
  expect(names).toEqual([...names].sort());
});

test("every zone is one that the machine's calendar knows, and every state's zone can be chosen", () => {
  for (const timeZone of COMPANY_TIME_ZONES) expect(new Intl.DateTimeFormat("en-US", { timeZone }).resolvedOptions().timeZone).toBeTruthy();
  expect(new Set(COMPANY_TIME_ZONES).size).toBe(COMPANY_TIME_ZONES.length);
  expect([...new Set(Object.values(US_STATES).map(({ timeZone }) => timeZone))].sort()).toEqual([...COMPANY_TIME_ZONES].sort());
});
