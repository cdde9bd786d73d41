import { MISPRINT, type ReferenceRow } from "../reference-row";

export const ROWS_OF_MISPRINTS: readonly ReferenceRow[] = [
  { id: "misprints.1", words: "88 gal per acre for 5940 x 0.79 / (3 x 18)", source: "Oklahoma State, Sprayer Calibration", status: "seen" },
  { id: "misprints.2", words: "factor 0.88 for 8.0 lb per gal", source: "a nozzle page", status: "seen" },
  { id: "misprints.3", words: "specific gravity 1.68 and factor 1.3 for 12 lb per gal", source: "Oklahoma State, density table", status: "seen" },
  { id: "misprints.4", words: "0.98 L a minute for size 025 at 2 bar", source: "a supplier's table", status: "seen" },
  { id: "misprints.5", words: "8 / 7.5 = 1.06", source: "NC State worksheet", status: "seen", omission: MISPRINT },
  { id: "misprints.6", words: "8.5 by 18.5 ft for 1/128 acre", source: "UF/IFAS Alachua Co.", status: "seen" },
  { id: "misprints.7", words: "slow share as total over slow", source: "prose of Cornell and of the Tampa Bay page", status: "seen" },
  { id: "misprints.8", words: "0.5 x 15 = 75 lb K2O", source: "an eastern-shore sod page", status: "seen" },
  { id: "misprints.9", words: "21.92 °C for Stull at 30 °C and 50 %", source: "a web calculator", status: "seen" },
  { id: "misprints.10", words: "example 18 with a soil heat flux of 0.14", source: "a public test", status: "seen" },
  { id: "misprints.11", words: "example 18 as Bangkok", source: "a public text", status: "seen", omission: MISPRINT },
  { id: "misprints.12", words: "Maryland's 2.5 lb as all fertilizer", source: "summaries of the law", status: "seen", omission: MISPRINT },
  { id: "misprints.13", words: "Hargreaves with radiation in MJ", source: "several texts", status: "seen" },
  { id: "misprints.14", words: "an acre of 4,840 sq ft", source: "a gardening page", status: "seen" },
];
