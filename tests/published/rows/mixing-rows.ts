import { HARVEST, LABEL, PROCEDURE, STATEMENT, type ReferenceRow } from "../reference-row";

export const ROWS_OF_MIXING: readonly ReferenceRow[] = [
  { id: "mixing.1", words: "order of the tank: packets, fertilizer, powders and flowables, solutions, concentrates, surfactants", source: "Manitoba Guide to Crop Protection, quoted by the Canola Council of Canada, https://www.canolacouncil.org/canola-watch/2013/05/15/general-rules-for-mixing-pesticide/", status: "seen-2nd" },
  { id: "mixing.2", words: "order of the tank by WALES", source: "Country Guide, Pest Patrol, https://www.country-guide.ca/production/pest-patrol/", status: "seen" },
  { id: "mixing.3", words: "factors of mixing: agitation, water, order, carrier, formulation", source: "Virginia Tech BSE-351P", status: "seen", omission: STATEMENT },
  { id: "mixing.4", words: "half of the carrier before the first product; three partners at most", source: "sprayers101.com/loading-jartest and sprayers101.com/tankmix", status: "seen" },
  { id: "mixing.5", words: "the jar test step by step", source: "Kopec, Univ. of Arizona, May 1999, http://turf.arizona.edu/ccps599.htm", status: "seen", omission: PROCEDURE },
  { id: "mixing.6", words: "entry after 72 h, harvest after 48 h: the longer wins", source: "WSU Tree Fruit, https://cpg.treefruit.wsu.edu/pesticide-safety/entry-and-preharvest-intervals", status: "seen", omission: HARVEST },
  { id: "mixing.7", words: "several intervals in a tank: the longest holds", source: "WSU; Oregon IPM Center Fall 2020, https://agsci.oregonstate.edu/oipmc/oregon-ipm-center-newsletter-vol-i-iss-3-fall-2020-reis-v-phis", status: "seen" },
  { id: "mixing.8", words: "what a restricted-entry interval is", source: "Oregon IPM Center", status: "seen", omission: STATEMENT },
  { id: "mixing.9", words: "what a pre-harvest interval is", source: "Oregon IPM Center", status: "seen", omission: HARVEST },
  { id: "mixing.10", words: "a day of an entry interval is 24 h from the end of the application", source: "Calif. 3 CCR 6772(a)(4)", status: "seen" },
  { id: "mixing.11", words: "words of a label on entry: \"of X hours\" and \"of X days\"", source: "40 CFR 156.208", status: "seen" },
  { id: "mixing.12", words: "lawns: until sprays have dried", source: "from memory", status: "memory" },
  { id: "mixing.13", words: "Kentucky bluegrass broadcast after dithiopyr, pendimethalin, prodiamine: 6, 8, 14 weeks", source: "Keeley & Zhou (Kansas State), Weed Technology 19(1), 2005, Preemergence Herbicide and Seeding Method Effects on Seedling Growth of Kentucky Bluegrass, https://bioone.org/journals/weed-technology/volume-19/issue-1/WT-03-199R/", status: "seen" },
  { id: "mixing.14", words: "the same slit-seeded: 11, 10, 16 weeks", source: "Keeley & Zhou (Kansas State), Weed Technology 19(1), 2005, Preemergence Herbicide and Seeding Method Effects on Seedling Growth of Kentucky Bluegrass, https://bioone.org/journals/weed-technology/volume-19/issue-1/WT-03-199R/", status: "seen" },
  { id: "mixing.15", words: "siduron may go down at seeding", source: "Purdue Turf Tips 15 Mar 2011, https://purdueturftips.blogspot.com/2011/03/rejuvenating-turf-in-2011-part-ii.html", status: "seen", omission: LABEL },
  { id: "mixing.16", words: "homeowners' figures: 8 to 16 weeks", source: "biologyinsights.com", status: "seen", omission: LABEL },
  { id: "mixing.17", words: "the interval depends on the active ingredient and on how the seed goes in", source: "the published abstract", status: "seen", omission: STATEMENT },
];
