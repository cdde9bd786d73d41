import { type RulePack } from "#domain/rules/rule-pack";

const FERTILIZER_ACT = "415 ILCS 65/5a \"Fertilizer; application restrictions\"";

/** Illinois, entry by entry as it was read. */
export const ILLINOIS: RulePack = {
  state: "IL",
  edition: "IL 2026-11",
  leadAgency: "Illinois Department of Agriculture",
  facts: {
    "what-counts-as-lawn-care-product": {
      onFile: true,
      value: "pesticides-and-fertilizers",
      citation: "University of Illinois Extension on the Lawn Care Products Application and Notice Act, June 11, 2018",
      standing: "read-second-hand",
      remark: "Products for organic use count too.",
    },
    "posting-sign": {
      onFile: true,
      citation: "415 ILCS 65/3(a)",
      standing: "read",
      value: {
        longSide: { value: "5", unit: "in" },
        shortSide: { value: "4", unit: "in" },
        size: "exactly",
        orientation: "either",
        leastLetterHeight: { value: "0.375", unit: "in" },
        colors: "white, letters in a contrasting color, on one side",
        words: ["LAWN CARE APPLICATION", "STAY OFF GRASS UNTIL DRY", "FOR MORE INFORMATION CONTACT:", "{name}", "{phone}"],
        placement: "at the usual point or points of entry, the bottom at least 12 in above the turf",
        support: null,
        upTrigger: "immediately-following",
        downWords: "on the day following the application",
        downDaysFollowing: 1,
        removedBy: "the owner or resident",
      },
    },
    "customer-statement": { onFile: false, standing: "unverified", whereToLook: "415 ILCS 65/3(c) to (f)" },
    "record-elements": { onFile: false, standing: "unverified", whereToLook: "415 ILCS 60 and 65, 8 Ill. Adm. Code 250" },
    "record-years": { onFile: false, standing: "unverified", whereToLook: "415 ILCS 60 and 65, 8 Ill. Adm. Code 250" },
    phosphorus: {
      onFile: true,
      citation: FERTILIZER_ACT,
      standing: "read",
      value: { testWithinMonths: 36, newLawnGrowingSeasons: 2 },
      remark: "Lawn-repair products, commercial farms, agricultural land and golf courses are exempt.",
    },
    "phosphate-per-application": { onFile: false, standing: "unverified", whereToLook: "no cap was seen in 415 ILCS 65/5a" },
    "phosphate-per-year": { onFile: false, standing: "unverified", whereToLook: "no cap was seen in 415 ILCS 65/5a" },
    "distance-to-water": {
      onFile: true,
      citation: FERTILIZER_ACT,
      standing: "read",
      value: { withDeflector: { value: "3", unit: "ft" }, otherwise: { value: "15", unit: "ft" } },
      remark: "Fertilizer near any water body: 3 ft with a spreader that has a deflector, else 15 ft.",
    },
    "frozen-or-saturated-ground": { onFile: true, value: "forbidden", citation: FERTILIZER_ACT, standing: "read" },
    "hard-surfaces": { onFile: true, value: "clean-up-at-once", citation: FERTILIZER_ACT, standing: "read" },
    "nitrogen-per-application": { onFile: false, standing: "unverified", whereToLook: "no cap was seen in 415 ILCS 65/5a" },
    "quick-nitrogen-per-application": { onFile: false, standing: "unverified", whereToLook: "no cap was seen in 415 ILCS 65/5a" },
    "nitrogen-per-year": { onFile: false, standing: "unverified", whereToLook: "no cap was seen in 415 ILCS 65/5a" },
    "slow-release-share": { onFile: false, standing: "unverified", whereToLook: "no share was seen in 415 ILCS 65/5a" },
    "blackout-dates": { onFile: false, standing: "unverified", whereToLook: "no dates were seen in 415 ILCS 65/5a" },
    "supervision-of-technicians": { onFile: false, standing: "unverified", whereToLook: "415 ILCS 60, 8 Ill. Adm. Code 250" },
    "license-category": { onFile: false, standing: "unverified", whereToLook: "415 ILCS 60, 8 Ill. Adm. Code 250" },
  },
};
