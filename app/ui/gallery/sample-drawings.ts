import { type AftercareRow } from "#ui/drawings/aftercare-timeline";
import { type HourSpan } from "#ui/drawings/hour-strip";
import { type NutrientPart } from "#ui/drawings/nutrient-bar";
import { type MonthGrowth, type MonthPart } from "#ui/drawings/nutrient-months";

const hour = 60;

/** An ordinary day: still air at dawn, hot after noon, rain in the evening. */
export const ordinaryHours: readonly HourSpan[] = [
  {
    fromMinute: 5 * hour,
    toMinute: 7 * hour,
    word: "take-care",
    reason: "still air",
    figure: "2 mph",
    limit: "3 mph",
    source: "common practice",
  },
  { fromMinute: 7 * hour, toMinute: 13 * hour, word: "open", source: "weather" },
  {
    fromMinute: 13 * hour,
    toMinute: 18 * hour,
    word: "closed",
    reason: "80 °F and over",
    figure: "84 °F",
    limit: "below 80 °F",
    source: "label",
  },
  { fromMinute: 18 * hour, toMinute: 19 * hour, word: "open", source: "weather" },
  {
    fromMinute: 19 * hour,
    toMinute: 21 * hour,
    word: "closed",
    reason: "rain",
    figure: "0.3 in",
    limit: "none for 2 h",
    source: "label",
  },
];

/** A day of short stretches with long reasons: none of them fits where it belongs. */
export const restlessHours: readonly HourSpan[] = [
  { fromMinute: 300, toMinute: 330, word: "closed", reason: "before the quiet hours of the town end", source: "law" },
  { fromMinute: 330, toMinute: 345, word: "open", source: "weather" },
  { fromMinute: 345, toMinute: 360, word: "take-care", reason: "Temperaturumkehrschichtverdacht", source: "weather" },
  { fromMinute: 360, toMinute: 600, word: "open", source: "weather" },
  {
    fromMinute: 600,
    toMinute: 660,
    word: "closed",
    reason: "wind 14 mph with gusts to 22 mph",
    figure: "14 mph",
    limit: "10 mph",
    source: "label",
  },
  { fromMinute: 660, toMinute: 1260, word: "closed", reason: "school next door is out at 11 am", source: "house" },
];

/** A year on lawn A: two rounds down, one today, two to come. */
export const ordinaryYear: readonly NutrientPart[] = [
  { id: "r1", when: "Mar 24", product: "Greenmere 20-0-8", standing: "put-down", quick: 0.5, slow: 0.3 },
  { id: "r2", when: "May 5", product: "Greenmere 24-0-4", standing: "put-down", quick: 0.3, slow: 0.5 },
  { id: "r3", when: "Jun 16", product: "Greenmere 32-0-6", standing: "this-visit", quick: 0.3, slow: 0.5 },
  { id: "r4", when: "Sep 8", product: "Greenmere 24-0-4", standing: "planned", quick: 0.3, slow: 0.5 },
];

/** The same year by month. */
export const ordinaryMonths: readonly MonthPart[] = ordinaryYear.map((part, index) => ({
  ...part,
  month: [3, 5, 6, 9][index] ?? 12,
}));

/** How a cool-season grass could grow over a year of whose August and December too few days are on file. */
export const ordinaryGrowth: readonly MonthGrowth[] = [
  ...([[25, 0], [31, 0.05], [43, 0.3], [54, 0.8], [68, 1], [76, 0.75], [81, 0.45]] as const).map(([mean, share]) => ({ share, mean: `${String(mean)} °F` })),
  { none: "12 of 31 days" },
  ...([[75, 0.75], [54, 0.7], [43, 0.3]] as const).map(([mean, share]) => ({ share, mean: `${String(mean)} °F` })),
  { none: "no day" },
];

/** A year that goes past what the law allows, with marks so narrow that their labels need rows. */
export const crowdedYear: readonly NutrientPart[] = [
  { id: "c1", when: "Mar 3", product: "Vollwinterrasenlangzeitdünger 12-0-24", standing: "put-down", quick: 0.1, slow: 0.1 },
  { id: "c2", when: "Mar 30", product: "Greenmere 20-0-8", standing: "put-down", quick: 0.1, slow: 2.4 },
  { id: "c3", when: "Apr 20", product: "Ferrolane 6-0-0", standing: "this-visit", quick: 0.1, slow: 0 },
  { id: "c4", when: "May 18", product: "Greenmere 32-0-6", standing: "planned", quick: 0.9, slow: 0.8 },
];

/** After a feed with iron in the afternoon. */
export const ordinaryAftercare: readonly AftercareRow[] = [
  {
    id: "people",
    name: "People and pets",
    spans: [
      {
        id: "people-off",
        kind: "may-not",
        fromMinutes: 0,
        toMinutes: 120,
        estimate: true,
        words: "keep off until dry, about 2 h",
        fromWords: "now",
        untilWords: "it is dry, about 5:10 pm, an estimate",
        why: "Wet iron stains shoes and stone",
        product: "Ferrolane",
      },
    ],
  },
  {
    id: "watering",
    name: "Watering",
    spans: [
      {
        id: "watering-dry",
        kind: "may-not",
        fromMinutes: 0,
        toMinutes: 890,
        words: "keep dry overnight",
        fromWords: "now",
        untilWords: "Wednesday, 6 am",
        why: "The leaf takes iron up while it is dry",
        product: "Ferrolane",
      },
      {
        id: "watering-in",
        kind: "water",
        fromMinutes: 890,
        toMinutes: 1070,
        words: "20 min by 9 am",
        fromWords: "Wednesday, 6 am",
        untilWords: "Wednesday, 9 am",
        why: "Water takes the feed to the roots",
        product: "Greenmere",
      },
    ],
  },
  {
    id: "mowing",
    name: "Mowing",
    spans: [
      {
        id: "mowing-off",
        kind: "may-not",
        fromMinutes: 0,
        toMinutes: 2930,
        words: "no mowing until Thu 4 pm",
        fromWords: "now",
        untilWords: "Thursday, 4 pm",
        why: "Granules must not be picked up",
        product: "Greenmere",
      },
    ],
  },
  {
    id: "seeding",
    name: "Seeding",
    spans: [
      {
        id: "seeding-off",
        kind: "may-not",
        fromMinutes: 0,
        toMinutes: 6 * 1440,
        words: "no seed until Monday",
        fromWords: "now",
        untilWords: "Monday, April 20",
        why: "The label asks for six days",
        product: "Ferrolane",
      },
    ],
  },
  {
    id: "sign",
    name: "Sign",
    spans: [
      {
        id: "sign-up",
        kind: "must",
        fromMinutes: 0,
        toMinutes: 1940,
        words: "may come down",
        fromWords: "now",
        untilWords: "Wednesday, 11:30 pm",
        why: "The law asks for a day and a night",
        product: "both",
      },
    ],
  },
];

/** Everything over within a day, with words that find no room. */
export const shortAftercare: readonly AftercareRow[] = [
  {
    id: "pets",
    name: "Kaninchen und Meerschweinchen",
    spans: [
      {
        id: "pets-off",
        kind: "may-not",
        fromMinutes: 0,
        toMinutes: 200,
        words: "keep rabbits and all that graze off the lawn until it has been watered in and is dry again",
        fromWords: "now",
        untilWords: "noon",
        why: "They eat what lies on the leaf",
        product: "Greenmere",
      },
      {
        id: "pets-water",
        kind: "water",
        fromMinutes: 600,
        toMinutes: 660,
        words: "half an inch",
        fromWords: "6:30 pm",
        untilWords: "7:30 pm",
        why: "Water takes the feed to the roots",
        product: "Greenmere",
      },
    ],
  },
];
