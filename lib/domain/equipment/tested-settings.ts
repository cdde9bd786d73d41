import { type DialPlace, dialInWords, readDial } from "#domain/equipment/dial";
import { settingForRate } from "#domain/equipment/spreader-setting";
import { invariant } from "#domain/foundation/invariant";
import { formatRate } from "#domain/quantities/format-rate";
import { compareRates, type Rate } from "#domain/quantities/rate";
import { compareRational } from "#domain/quantities/rational";

type ProductRate = Rate<"product-mass-per-area">;

/** What one setting gave, as it is written on the spreader. */
export interface TestedSetting {
  readonly setting: string;
  readonly rate: ProductRate;
}

/**
 * What tests of several settings say of a wanted rate: the setting between two of them; the nearest tested one with the
 * sentence that it lies beyond them; that they contradict one another; or nothing, where fewer than two settings of one
 * dial were tested.
 */
export type SettingAmongTests =
  | { readonly kind: "between"; readonly setting: string; readonly rate: ProductRate; readonly words: string }
  | { readonly kind: "beyond"; readonly nearest: TestedSetting; readonly sentence: string }
  | { readonly kind: "contradictory"; readonly sentence: string }
  | { readonly kind: "too-few" };

type Placed = TestedSetting & { readonly at: DialPlace };

/**
 * The setting for a wanted rate by the tests of one spreader with one product by one operator, the latest last. Of one
 * setting the latest test counts; of two kinds of dial the one that was tested last. Between two tested settings it is
 * the straight line, and never beyond them. Common practice.
 */
export function settingAmongTests(tests: readonly TestedSetting[], product: string, wanted: ProductRate): SettingAmongTests {
  const placed = latestOfEach(tests);
  const [first] = placed;
  if (first === undefined || placed.length < 2) return { kind: "too-few" };
  const found = settingForRate(placed.map(({ at, rate }) => ({ product, setting: at.place, rate })), product, wanted);
  if (!found.ok) {
    const { field, sentence } = found.refusal;
    return field === "rate" ? { kind: "beyond", nearest: nearestOf(placed, wanted), sentence } : { kind: "contradictory", sentence: contradictionOf(placed) };
  }
  const { setting, rate, between } = found.value;
  const said = between.map((end) => `${dialInWords({ ...first.at, place: end.setting })} (${formatRate(end.rate, "us")})`);
  const [lower, upper] = [said[0] ?? "", said[1] ?? ""];
  return { kind: "between", setting: dialInWords({ ...first.at, place: setting }), rate, words: lower === upper ? `tested at ${lower}` : `between ${lower} and ${upper}` };
}

/** The first setting that gave no more than a narrower one, as both are written on the dial. */
function contradictionOf(placed: readonly Placed[]): string {
  const byDial = placed.toSorted((left, right) => compareRational(left.at.place, right.at.place));
  const wider = byDial.findIndex((test, index) => index > 0 && compareRates(test.rate, byDial[index - 1]?.rate ?? test.rate) <= 0);
  const [narrow, wide] = [byDial[wider - 1], byDial[wider]];
  invariant(narrow !== undefined && wide !== undefined, "tests that contradict one another have a pair that does");
  return `Setting ${wide.setting} gave ${formatRate(wide.rate, "us")}, no more than ${narrow.setting} with ${formatRate(narrow.rate, "us")}. Test both again.`;
}

function latestOfEach(tests: readonly TestedSetting[]): readonly Placed[] {
  const placed = tests.flatMap(({ setting, rate }): readonly Placed[] => {
    const at = readDial(setting);
    return at === undefined ? [] : [{ setting, rate, at }];
  });
  const marks = placed.at(-1)?.at.marks;
  const ofOneDial = placed.filter(({ at }) => at.marks === marks);
  return ofOneDial.filter((test, index) => !ofOneDial.slice(index + 1).some((later) => compareRational(later.at.place, test.at.place) === 0));
}

/** Beyond the tests the nearest is the one that gives least or most. */
function nearestOf(placed: readonly Placed[], wanted: ProductRate): TestedSetting {
  const byRate = placed.toSorted((left, right) => compareRates(left.rate, right.rate));
  const [least, most] = [byRate[0], byRate.at(-1)];
  const nearest = least !== undefined && compareRates(wanted, least.rate) < 0 ? least : most;
  invariant(nearest !== undefined, "there is a nearest of some tests");
  return { setting: nearest.setting, rate: nearest.rate };
}
