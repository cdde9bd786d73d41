import { type ChangeOfMix, changeOfMix, type MixInTank, type NextMix, type Unwanted } from "#domain/mixing/mix-change";
import { type FilledMix, type TreatedStop } from "#domain/mixing/tank-plan-question";
import { type RunOfMix } from "#domain/mixing/tank-runs";

/**
 * All that was in a tank since its last clean-out, the latest mix first. Unknown stands last where nothing on file says what
 * it held before the mixes above it. A mix that others followed is thinned by them and never gone.
 */
export type TankContents = readonly (MixInTank | "unknown")[];

/** What a mix left in a tank that must not reach a lawn. */
export interface Residue {
  readonly mix: MixInTank;
  readonly unwanted: readonly Unwanted[];
}

/** A mix on top of what a tank held. A mix of which every product was in later ones says nothing more and is left out, so that the contents never grow beyond the products. */
export function onTopOf(mix: MixInTank, below: TankContents): TankContents {
  return latestOfEach([mix, ...below]);
}

/** Mixes of a tank, the latest first, without those of which every product is in later ones too. */
export function latestOfEach<Mix extends Pick<MixInTank, "products"> | Pick<FilledMix, "products"> | "unknown">(mixes: readonly Mix[]): readonly Mix[] {
  const seen = new Set<string>();
  return mixes.filter((mix) => {
    if (mix === "unknown") return true;
    const isNew = mix.products.some(({ productId }) => !seen.has(productId));
    for (const { productId } of mix.products) seen.add(productId);
    return isNew;
  });
}

/** What of a tank's contents must not reach the lawns of the next mix, by the mix that brought it last. */
export function residuesFor(contents: TankContents, next: NextMix): readonly Residue[] {
  const seen = new Set<string>();
  return contents.flatMap((mix) => {
    if (mix === "unknown") return [];
    const products = mix.products.filter(({ productId }) => !seen.has(productId));
    for (const { productId } of products) seen.add(productId);
    const { unwanted } = changeOfMix({ ...mix, products }, next);
    return unwanted.length === 0 ? [] : [{ mix, unwanted }];
  });
}

/**
 * What a tank needs between all that it held and the next mix at one stop. The last mix is judged as changeOfMix says. What
 * was below it is thinned by it as by a rinse, and asks for nothing but a clean-out; that it does as long as none was made.
 */
function changeOfContents(contents: TankContents, next: NextMix): ChangeOfMix {
  const [last] = contents;
  const unwanted = residuesFor(contents, next).flatMap((residue) => residue.unwanted);
  const ofLast = last === undefined || last === "unknown" ? undefined : changeOfMix(last, next);
  const cleaning = unwanted.length > 0 || contents.includes("unknown") ? "clean-out" : (ofLast?.cleaning ?? "none");
  return { cleaning, unwanted, mayRunOn: ofLast?.mayRunOn === true && cleaning !== "clean-out" };
}

/**
 * The same for all the stops that the next mix serves: a trace of what was in the tank rides to each of them. Only the
 * first of them gets what pump and hose hold. Stops that are not on the route are left out.
 */
export function changeOfRun(contents: TankContents, { draws, gear }: Pick<RunOfMix, "draws" | "gear">, stops: readonly TreatedStop[]): ChangeOfMix {
  const changes = draws.flatMap(({ stopIndex, treatments }) => {
    const stop = stops[stopIndex];
    return stop === undefined ? [] : [changeOfContents(contents, { stop, treatments, gear })];
  });
  const cleaning = (["clean-out", "rinse"] as const).find((most) => changes.some((one) => one.cleaning === most)) ?? "none";
  const unwanted = new Map(changes.flatMap((one) => one.unwanted).map((one) => [`${one.why} ${one.productName}`, one]));
  return { cleaning, unwanted: [...unwanted.values()], mayRunOn: changes[0]?.mayRunOn === true && cleaning !== "clean-out" };
}
