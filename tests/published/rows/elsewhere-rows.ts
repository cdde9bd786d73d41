import { type ReferenceRow } from "../reference-row";

export const ROWS_OF_ELSEWHERE: readonly ReferenceRow[] = [
  { id: "elsewhere.1", words: "15 fl oz over 1/128 acre", source: "Ohio State Extension (Ozkan) in Farm and Dairy, https://www.farmanddairy.com/top-stories/7-steps-for-easy-sprayer-calibration/406279.html", status: "seen" },
  { id: "elsewhere.2", words: "1/128 acre: courses for spacings of 10 to 40 in", source: "Ohio State Extension (Ozkan) in Farm and Dairy", status: "seen" },
  { id: "elsewhere.3", words: "nozzles more than 10 % off are replaced", source: "Ohio State Extension (Ozkan) in Farm and Dairy", status: "seen" },
  { id: "elsewhere.4", words: "catch cans: a quarter inch in 5 min, cycles where water stands after 10", source: "Texas A&M Water University, http://wateruniversity.tamu.edu/irrigation/catch-can-test/", status: "seen" },
  { id: "elsewhere.5", words: "signs in Illinois: removed on the day following", source: "415 ILCS 65/3(a)", status: "seen" },
  { id: "elsewhere.6", words: "signs in Washington: 24 h, or the label's interval", source: "RCW 17.21.410", status: "seen" },
  { id: "elsewhere.7", words: "signs in Maine: two days after completion", source: "01-026 CMR ch. 28 section 3", status: "seen" },
  { id: "elsewhere.8", words: "signs in New Jersey: 72 h", source: "N.J.A.C. 7:30-9.13", status: "seen" },
  { id: "elsewhere.9", words: "Sofia to Plovdiv on a sphere", source: "documentation of the Rust library geo 0.33", status: "seen-2nd" },
  { id: "elsewhere.10", words: "Nashville to Los Angeles on a sphere", source: "Rosetta Code, Haversine formula", status: "seen-2nd" },
  { id: "elsewhere.11", words: "a nautical mile; half a great circle", source: "from memory", status: "memory" },
  { id: "elsewhere.12", words: "the shortest round of 13 cities, 7,293 miles", source: "OR-Tools, Traveling Salesperson Problem (figure from memory, proved by trying)", status: "memory" },
  { id: "elsewhere.13", words: "n20w20.001: 20 stops with narrow windows, 378 of travel", source: "Dumas et al. 1995, as printed in the OR-Tools user's manual", status: "seen-2nd" },
  { id: "elsewhere.14", words: "nitrogen from a feed by hand", source: "common practice", status: "memory" },
];
