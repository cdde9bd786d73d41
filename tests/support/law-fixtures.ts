// Rules of states that the product brings no pack for, in the shape of a pack, so that published figures can be held
// against the checks. Only what the citation says is filled in; the rest stands as Illinois has it.
import { ILLINOIS } from "#domain/rules/packs/illinois";
import { type RulePack } from "#domain/rules/rule-pack";

const NOT_READ = { onFile: false, standing: "unverified", whereToLook: "not part of the fixture" } as const;

/** Md. Code, Agriculture 6-224 and 8-803.5 (read November 2026): 0.7 lb water-soluble, 0.9 lb total, 20 % slow; November 16 to the end of February; 15 ft, 10 ft with a deflector; tests of three years. */
export const MARYLAND: RulePack = {
  ...ILLINOIS,
  state: "MD",
  edition: "MD fixture",
  leadAgency: "Maryland Department of Agriculture",
  facts: {
    ...ILLINOIS.facts,
    phosphorus: { onFile: true, citation: "Md. Code, Agriculture 6-224", standing: "read", value: { testWithinMonths: 36, newLawnGrowingSeasons: 0 } },
    "distance-to-water": { onFile: true, citation: "Md. Code, Agriculture 8-803.5", standing: "read", value: { withDeflector: { value: "10", unit: "ft" }, otherwise: { value: "15", unit: "ft" } } },
    "nitrogen-per-application": { onFile: true, citation: "Md. Code, Agriculture 6-224", standing: "read", value: { poundsPer1000SqFt: "0.9" } },
    "quick-nitrogen-per-application": { onFile: true, citation: "Md. Code, Agriculture 6-224", standing: "read", value: { poundsPer1000SqFt: "0.7" } },
    "slow-release-share": { onFile: true, citation: "Md. Code, Agriculture 6-224", standing: "read", value: { leastPercentOfNitrogen: "20" } },
    "nitrogen-per-year": NOT_READ,
    "blackout-dates": { onFile: true, citation: "Md. Code, Agriculture 8-803.5", standing: "read", value: [{ from: "11-16", until: "02-29" }] },
  },
};

/** Marion County Code 19-247 (an older county text of Florida's rule): 0.7 lb soluble and 1 lb in all; St. Augustinegrass 3 lb a year; 0.25 lb of P2O5 in one application and 0.5 lb a year. */
export const MARION_COUNTY_FLORIDA: RulePack = {
  ...ILLINOIS,
  state: "FL",
  edition: "FL fixture",
  leadAgency: "Florida Department of Agriculture and Consumer Services",
  facts: {
    ...ILLINOIS.facts,
    "nitrogen-per-application": { onFile: true, citation: "Marion County Code 19-247", standing: "read-old-edition", value: { poundsPer1000SqFt: "1" } },
    "quick-nitrogen-per-application": { onFile: true, citation: "Marion County Code 19-247", standing: "read-old-edition", value: { poundsPer1000SqFt: "0.7" } },
    "nitrogen-per-year": { onFile: true, citation: "Marion County Code 19-247", standing: "read-old-edition", value: { poundsPer1000SqFt: "3" } },
    "phosphate-per-application": { onFile: true, citation: "Marion County Code 19-247", standing: "read-old-edition", value: { poundsPer1000SqFt: "0.25" } },
    "phosphate-per-year": { onFile: true, citation: "Marion County Code 19-247", standing: "read-old-edition", value: { poundsPer1000SqFt: "0.5" } },
  },
};

/** Florida's rule 5E-1.003 as UF/IFAS EP353 tells it: 0.7 lb soluble nitrogen at any one time, up to 2 lb in spring and summer where 65 % is slow. */
export const FLORIDA_RULE: RulePack = {
  ...MARION_COUNTY_FLORIDA,
  edition: "FL EP353 fixture",
  facts: {
    ...ILLINOIS.facts,
    "nitrogen-per-application": { onFile: true, citation: "UF/IFAS EP353", standing: "read-second-hand", value: { poundsPer1000SqFt: "2" } },
    "quick-nitrogen-per-application": { onFile: true, citation: "UF/IFAS EP353", standing: "read-second-hand", value: { poundsPer1000SqFt: "0.7" } },
  },
};

/** Suffolk County, New York: half a pound of water-soluble nitrogen in one application, as its extension advises. */
export const SUFFOLK_COUNTY_NEW_YORK: RulePack = {
  ...ILLINOIS,
  state: "NY",
  edition: "NY Suffolk fixture",
  leadAgency: "New York State Department of Environmental Conservation",
  facts: {
    ...ILLINOIS.facts,
    "quick-nitrogen-per-application": { onFile: true, citation: "Cornell Cooperative Extension of Suffolk County", standing: "read-second-hand", value: { poundsPer1000SqFt: "0.5" } },
  },
};
