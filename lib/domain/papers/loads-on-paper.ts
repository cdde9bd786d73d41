import { formatQuantity, writeQuantity } from "#domain/quantities/format-quantity";
import { formatRate } from "#domain/quantities/format-rate";
import { type GranularMix } from "#domain/mixing/granular-mix";
import { type MixTicket } from "#domain/mixing/mix-ticket";
import { type SprayMix } from "#domain/mixing/spray-mix";
import { type MeasuredAmount, type MixingStep, type TankLoad } from "#domain/papers/mix-ticket-paper";

type Mixes = MixTicket["mixes"];

/** What is measured out: of each spray its tanks, of each spread product its lawns. */
export function loadsOnPaper(mixes: Mixes): readonly TankLoad[] {
  return mixes.flatMap((mix) => (mix.kind === "spray" ? tanksOf(mix) : [spreadOf(mix)]));
}

function tanksOf({ gearName, loads, products }: SprayMix): readonly TankLoad[] {
  return loads.map(({ number, finished, water, products: amounts }) => ({
    title: `Tank ${String(number)} of ${String(loads.length)}`,
    size: `${formatQuantity(finished, "us")} of mix, ${formatQuantity(water, "us")} of it water · ${gearName}`,
    amounts: amounts.map(({ line, amount, marks }) => {
      const product = products.find((one) => one.line === line);
      return measured(product?.productName ?? "", amount, product?.toolName ?? null, marks);
    }),
  }));
}

function spreadOf(mix: GranularMix): TankLoad {
  const { productName, gearName, hopperFills, total, toolName, lawns } = mix;
  const fills = hopperFills === 1n ? "one hopper" : `${String(hopperFills)} hoppers`;
  return {
    title: `Spread ${productName}`,
    size: `${formatQuantity(total, "us")} in all, ${fills} · ${gearName}, ${settingWords(mix)}`,
    amounts: lawns.filter(({ amount }) => amount.amount > 0n).map(({ name, amount, marks }) => measured(name, amount, toolName, marks)),
  };
}

/** How a spreader is set, or that nobody has calibrated it for the product. */
export function settingWords({ setting }: GranularMix): string {
  return setting === "not-calibrated" ? "setting not on file" : `setting ${setting.setting}`;
}

function measured(product: string, amount: Parameters<typeof writeQuantity>[0], toolName: string | null, marks: bigint | null): MeasuredAmount {
  const { figure, unit } = writeQuantity(amount, "us");
  return { product, amount: figure, unit, tool: toolWords(toolName, marks) };
}

/** By what an amount is measured: "half-ounce cup, 9 marks"; says so where no tool does, or where it is under a tool's first mark. */
export function toolWords(toolName: string | null, marks: bigint | null): string {
  if (toolName === null) return "no tool on file, not rounded";
  if (marks === null) return `${toolName}, under its first mark`;
  return `${toolName}, ${String(marks)} ${marks === 1n ? "mark" : "marks"}`;
}

/** The order of work in sentences: each tank's own, then how each product is spread. */
export function stepsOnPaper(mixes: Mixes): readonly MixingStep[] {
  const sprays = mixes.filter((mix) => mix.kind === "spray");
  return mixes.flatMap((mix): readonly MixingStep[] => {
    if (mix.kind === "granular") return [{ words: spreadingWords(mix) }];
    return mix.steps.map((words) => ({ words: sprays.length === 1 ? words : `${mix.gearName}: ${words}` }));
  });
}

function spreadingWords({ productName, passes, setting }: GranularMix): string {
  const rate = setting === "not-calibrated" ? "" : ` It then puts down ${formatRate(setting.rate, "us")} in a pass.`;
  const how = passes === "two-at-half-rate-crosswise" ? "in two passes at half rate, the second across the first: half of a lawn’s amount in each" : "in one pass with overlap";
  const set = setting === "not-calibrated" ? "Find the setting first" : `Set it to ${setting.setting}`;
  return `${set}, then spread ${productName} ${how}.${rate}`;
}
