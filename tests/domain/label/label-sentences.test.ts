import { describe, expect, test } from "vitest";
import { sentencesOfLabel, sentencesOfUse } from "#domain/label/label-sentences";
import { readLabelText } from "#domain/label/label-text";
import { type LabelText, type LabelUseText } from "#domain/label/label-fields";
import { A_PREVENTER_TEXT, aFeedText } from "../../support/label-texts";

function labelOf(text: LabelText) {
  const read = readLabelText(text);
  if (!read.ok) throw new Error(JSON.stringify(read.refusal));
  return read.value;
}

function sentencesFor(use: Partial<LabelUseText>) {
  const [read] = labelOf(aFeedText({ activeIngredients: "A; 1 %\nB; 1 %" }, use)).uses;
  if (read === undefined) throw new Error("the label has a use");
  return sentencesOfUse(read);
}

test("a label of which only the rate is read says only the rate", () => {
  expect(sentencesFor({})).toEqual({ rates: "From 2 lb per 1,000 sq ft to 3 lb per 1,000 sq ft." });
});

describe("each fact is said as it was understood", () => {
  test.each([
    ["rates", "1 fl oz per 1,000 sq ft", "Exactly 1 fl oz per 1,000 sq ft."],
    ["rates", "2 to 3 lb per 1,000 sq ft; spots no more than 10 % of the lawn", "From 2 lb per 1,000 sq ft to 3 lb per 1,000 sq ft. Only on spots, at most 10% of a lawn."],
    ["rates", "25 to 50 lb per acre", "From 9.19 oz wt per 1,000 sq ft to 1.14 lb per 1,000 sq ft. That is 25 to 50 lb per acre."],
    ["rates", "125 lb per acre", "Exactly 125 lb per acre, about 2.86 lb per 1,000 sq ft."],
    ["carrier", "20 to 40 gal per acre", "From 0.46 gal per 1,000 sq ft to 0.918 gal per 1,000 sq ft. That is 20 to 40 gal per acre."],
    ["carrier", "1 to 2 gal per 1,000 sq ft", "From 1 gal per 1,000 sq ft to 2 gal per 1,000 sq ft."],
    ["leastDaysBetween", "4 weeks", "At least 28 days from one application to the next."],
    ["mostApplications", "2 per calendar year", "At most 2 applications in a calendar year."],
    ["mostApplications", "1 per year", "At most 1 application in a season or year without dates, counted by calendar year."],
    ["seasonLimits", "A; 1.5 lb per acre; calendar year\nB; 2 lb per acre; 12 months", "At most 1\u00BD lb per acre of A in a calendar year. At most 2 lb per acre of B in any 12 months."],
    ["lowestTemperature", "above 50 \u00B0F", "Only above 50 \u00B0F: 50 \u00B0F itself is too cold."],
    ["lowestTemperature", "at least 50 \u00B0F", "From 50 \u00B0F up, and 50 \u00B0F itself is allowed."],
    ["highestTemperature", "under 80 \u00B0F", "Only under 80 \u00B0F: 80 \u00B0F itself is too hot."],
    ["highestTemperature", "up to 85 \u00B0F", "Up to 85 \u00B0F, and 85 \u00B0F itself is allowed."],
    ["highestTemperatureAhead", "under 85 \u00B0F for 24 hours", "Only under 85 \u00B0F: 85 \u00B0F itself is too hot, for 24 hours afterwards."],
    ["lowestWind", "3 mph", "Not in wind under 3 mph."],
    ["highestWind", "10 mph", "Not in wind above 10 mph."],
    ["rainfast", "90 min", "No rain for 90 minutes after the application ends."],
    ["heavyRain", "0.5 in within 24 hours", "Not with 0.5 in of rain or more due within 24 hours."],
    ["soil", "frozen, saturated", "Not on soil that is frozen or saturated."],
    ["peopleAndPets", "12 hours and until dry", "Nobody on it until 12 hours after the application ends and it is dry, whichever is later."],
    ["wateringNotBefore", "1 day", "No water until 1 full day (24 hours) after the application ends."],
    ["wateringNotBefore", "2 days after start", "No water until 2 full days (48 hours) after the application starts."],
    ["wateringNotBefore", "until the day following", "No water until 1 day after the day of the application."],
    ["peopleAndPets", "until sprays have dried", "Nobody on it until it is dry."],
    ["wateringIn", "0.25 to 0.5 in within 2 days, rain counts", "At least \u00BC in of water and at most \u00BD in, by 2 days (48 hours) after the application starts. Rain counts."],
    ["wateringIn", "immediately, 0.5 to 1 in", "At least \u00BD in of water and at most 1 in, at once, taken as within 1 hour after the application ends. The label does not say whether rain counts."],
    ["wateringIn", "0.5 in within 1 day after the end of the application", "At least \u00BD in of water, by 1 day (24 hours) after the application ends. The label does not say whether rain counts."],
    ["wateringIn", "0.5 in within 24 hours", "At least \u00BD in of water, by 24 hours after the application ends. The label does not say whether rain counts."],
    ["wateringIn", "0.5 in the same day", "At least \u00BD in of water, by the end of the day of the application. The label does not say whether rain counts."],
    ["wateringIn", "0.5 in by the end of the next day", "At least \u00BD in of water, by the end of the day following the application. The label does not say whether rain counts."],
    ["rainThatSpoils", "any rain within 1 day", "Any rain up to 1 full day (24 hours) after the application ends spoils it."],
    ["wateringIn", "water in", "The label does not say how much, and not by when. The label does not say whether rain counts."],
    ["rainThatSpoils", "12 hours", "Any rain up to 12 hours after the application ends spoils it."],
    ["rainThatSpoils", "0.25 in within 24 hours", "\u00BC in of rain or more up to 24 hours after the application ends spoils it."],
    ["leafAtApplication", "dry", "It goes onto a dry leaf."],
    ["soilAtApplication", "moist", "It goes onto moist soil."],
    ["mowingBefore", "2 days", "Not mowed in the 2 whole days before."],
    ["mowingBefore", "48 hours", "Not mowed in the 48 hours before."],
    ["mowingAfter", "until watered in", "Not mowed until it is watered in."],
    ["seedingBefore", "60 days", "Not within 60 whole days after seeding."],
    ["seedingBefore", "until after 2 mowings", "Not on new seed until it has been mowed twice."],
    ["seedingAfter", "after 3 mowings", "No seed until it has been mowed 3 times."],
    ["seedingAfter", "broadcast 6 weeks, slit 11 weeks", "No broadcast seed until 42 full days after the application ends. No slit seed until 77 full days after the application ends."],
    ["postingSign", "up at start; down after 2 days", "Up at start; down 2 full days (48 hours) after the work is done."],
    ["postingSign", "up at start; down after sprays have dried", "Up at start; down once it is dry."],
    ["seedingAfter", "broadcast 3 months, slit 4 months", "No broadcast seed until 3 months after the day of the application. No slit seed until 4 months after the day of the application."],
    ["postingSign", "up at start; down after 24 hours or reentry if later", "Up at start; down 24 hours after the application ends, or when people may come back, if that is later."],
    ["bloomAndBees", "not in bloom", "Not while weeds, clover or other plants on the lawn bloom."],
    ["droplets", "medium or coarser", "Droplets: medium or coarser."],
    ["droplets", "F to M", "Droplets: fine to medium."],
    ["distanceToWater", "25 ft", "At least 25 ft clear of water."],
    ["distanceToWater", "15 ft otherwise, 3 ft with a deflector", "At least 15 ft clear of water; 3 ft with a spreader that has a deflector."],
    ["keptApart", "Iron; tank\nLime; 14 days", "Not in one tank with Iron. Not on the same ground within 14 days of Lime."],
    ["keptApart", "Liquid fertilizer; tank\nLiqid fertilzer; 7 days", 'Not in one tank with Liquid fertilizer. Not on the same ground within 7 days of what has "Liqid fertilzer" in its name or ingredients.'],
    ["postingSign", "up before application; down the day following", "Up before application; down on the day following."],
  ] as const)("%s: %s", (field, typed, sentence) => expect(sentencesFor({ [field]: typed })[field]).toBe(sentence));
});

test("the general part, where it has figures", () => {
  expect(sentencesOfLabel(labelOf(A_PREVENTER_TEXT))).toEqual({
    grade: "19 % nitrogen, 0 % phosphate, 7 % potash, iron not stated.",
    nitrogenRelease: "Slow: 5 % of the product's weight.",
    activeIngredients: "Prodiamine: 0.37 % of the weight.",
  });
  expect(sentencesOfLabel(labelOf(aFeedText({ grade: "6-0-0-10Fe", nitrogenRelease: "slow 50 % of nitrogen", density: "10.2 lb per gal", activeIngredients: "2,4-D; 4 lb per gal" })))).toEqual({
    grade: "6 % nitrogen, 0 % phosphate, 0 % potash, 10 % iron.",
    nitrogenRelease: "Slow: 50 % of the nitrogen.",
    density: "One gallon weighs 10.2 lb.",
    activeIngredients: "2,4-D: 4 lb in a gallon.",
  });
  expect(sentencesOfLabel(labelOf(aFeedText({ activeIngredients: "2,4-D, dimethylamine salt; 46.3 %; none; 2,4-D, acid equivalent 38.4 %" })))).toEqual({
    activeIngredients: "2,4-D, dimethylamine salt: 46.3 % of the weight; as 2,4-D 38.4 % of the weight.",
  });
  expect(sentencesOfLabel(labelOf(aFeedText()))).toEqual({});
});

test("a rate in the finished spray is said in percent too, with what the label says beside it", () => {
  const said = (rates: string) => {
    const [use] = labelOf({ ...aFeedText({ formulation: "soluble liquid" }, { rates }), form: "liquid" }).uses;
    return use === undefined ? "" : sentencesOfUse(use).rates;
  };
  expect(said("1 to 2 % v/v; spray to wet; no more than 3 fl oz per 1,000 sq ft")).toBe(
    "From 1.28 fl oz per gal to 2.56 fl oz per gal. That is 1% v/v to 2% v/v of the finished spray. At most 3 fl oz per 1,000 sq ft of ground. Sprayed to wet.",
  );
  expect(said("0.5 oz wt per gal")).toBe("Exactly 0.5 oz wt per gal. That is in the finished spray.".replace("0.5", "\u00BD"));
});
