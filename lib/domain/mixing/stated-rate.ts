import { areOverArea, type AreaRates, isOverArea, type LabelRates, type LabelUse, type ProductRate, type SprayRate, type UseRate } from "#domain/label/label-facts";
import { type Quantity } from "#domain/quantities/quantity";
import { compareRates, type Rate, rateFrom, rateFromAmounts, type RateBasis } from "#domain/quantities/rate";
import { isSprayGear, type TicketSprayer, type TicketSpreader, type TicketTreatment } from "#domain/mixing/ticket-question";

/** What a strength of the finished spray comes to on the ground at what the sprayer puts out, exactly. */
export function rateOnGround({ basis, ...rate }: SprayRate, carrier: Rate<"carrier-volume-per-area">): ProductRate {
  const [over, under] = [rate.amount * carrier.amount, rate.per * carrier.per];
  return basis === "product-mass-per-spray-volume"
    ? rateFromAmounts("product-mass-per-area", over, under)
    : rateFromAmounts("product-volume-per-area", over, under);
}

/** How strong an amount of product makes a volume of finished spray. Throws for no volume. */
export function strengthOf(amount: Quantity<"mass"> | Quantity<"volume">, finished: Quantity<"volume">): SprayRate {
  return amount.dimension === "mass" ? rateFrom("product-mass-per-spray-volume", amount, finished) : rateFrom("product-volume-per-spray-volume", amount, finished);
}

/** The plan's rate and the label's as they are stated, whatever they are stated over. */
export function statedOf({ rate, use: { rates }, asStated }: Pick<TicketTreatment, "rate" | "use" | "asStated">): { readonly rate: UseRate; readonly rates: LabelRates } {
  return asStated ?? { rate, rates };
}

/** The strength at which a treatment is planned; undefined for one that is planned over area. */
export function plannedStrength({ asStated }: Pick<TicketTreatment, "asStated">): SprayRate | undefined {
  return asStated === undefined || isOverArea(asStated.rate) ? undefined : asStated.rate;
}

/**
 * A planned rate and its label's use as a mix ticket computes with them: over the ground. A rate in the finished spray comes
 * to what the sprayer puts out of it; the highest that rounding may reach is then the label's strongest, or its most over
 * area where that is less. Undefined where such a rate meets a spreader, which puts out no spray.
 */
export function ticketRate(rate: UseRate, use: LabelUse, gear: TicketSprayer | TicketSpreader): Pick<TicketTreatment, "rate" | "use" | "asStated"> | undefined {
  const { rates } = use;
  if (isOverArea(rate) && areOverArea(rates)) return { rate, use: { ...use, rates } };
  if (!isSprayGear(gear)) return undefined;
  const carrier = gear.carrier.rate;
  return {
    rate: isOverArea(rate) ? rate : rateOnGround(rate, carrier),
    use: { ...use, rates: areOverArea(rates) ? rates : ratesOnGround(rates.low, rates.high, use, carrier) },
    asStated: { rate, rates },
  };
}

function ratesOnGround(low: SprayRate, high: SprayRate, { besideRates }: LabelUse, carrier: Rate<"carrier-volume-per-area">): AreaRates {
  const [least, strongest] = [rateOnGround(low, carrier), rateOnGround(high, carrier)];
  const most = besideRates?.mostOnArea;
  const isLess = most?.basis === strongest.basis && compareRates<RateBasis>(most, strongest) < 0;
  // Both ends of a label's range are of one basis, and its most over area of the same kind.
  return { basis: least.basis, low: least, high: isLess ? most : strongest } as AreaRates;
}
