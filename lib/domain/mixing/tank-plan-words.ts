import { listWords } from "#domain/foundation/list-words";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";
import { type BeginOfMix, type FillOfRoute, type MixOfRoute } from "#domain/mixing/tank-plan-answer";

/** How a stop is called in a sentence, by its visit. */
type StopName = (visitId: string) => string;

/** A stop as a sentence names it, by its place on the route: "stop 3 (12 Elm St)". */
export function stopWords(position: number, street: string): string {
  return `stop ${String(position)} (${street})`;
}

/** Where a fill is made: "at the shop before leaving", "back at the shop on the way to 12 Elm St". */
export function fillPlaceWords({ place }: FillOfRoute, nameOf: StopName): string {
  if (place.at === "shop-before-leaving") return "at the shop before leaving";
  const name = nameOf(place.visitId);
  if (place.at === "stop") return place.isMidway ? `in the middle of ${name}, with water there` : `at ${name}, with water there`;
  return place.isMidway ? `back at the shop in the middle of ${name}` : `back at the shop on the way to ${name}`;
}

/** What is to be done before a mix and when it ends, and what is left of it, as sentences in the order in which they are done. */
export function mixSentences(mix: MixOfRoute, nameOf: StopName): readonly string[] {
  return [...beforeSentences(mix, nameOf), ...afterSentences(mix, nameOf)];
}

function gallons(volume: Quantity<"volume">): string {
  return formatQuantity(volume, "us");
}

function beforeSentences({ already, begin, visitIds: [first = ""] }: MixOfRoute, nameOf: StopName): readonly string[] {
  const { rinse, cleaning, line, lineVolume, waterBehind, lastName, carryOver, restName, leftOfLast, under, isCleanOutOnFile } = begin;
  const last = lastName ?? "the last mix";
  const rest = restName ?? last;
  const sentences: string[] = [];
  if (already.amount > 0n) sentences.push(`${gallons(already)} of ${rest} are in the tank by the books and are used first.`);
  for (const { name, left } of under) sentences.push(left === "unknown" ? `How much of ${name}, another mix, is under it is not known.` : `${gallons(left)} of ${name}, another mix, are under it by the books.`);
  if (typeof leftOfLast === "string") sentences.push(`What is left of ${rest} is not known; the fills are planned for an empty tank.`);
  else if (leftOfLast.amount > 0n) sentences.push(`Empty the tank first: ${gallons(leftOfLast)} of ${rest} are in it by the books.`);
  if (isCleanOutOnFile && cleaning !== "none") sentences.push("The clean-out before it is on file.");
  if (line === "flushed" && lineVolume !== "unknown" && lineVolume.amount > 0n) {
    sentences.push(`Run ${gallons(lineVolume)} of ${last} out of pump and hose into a container for the shop's rinsate tank.`);
  }
  if (rinse !== null) {
    sentences.push(
      cleaning === "rinse"
        ? `Rinse tank, pump and hose with ${gallons(rinse.water)} of water.`
        : `Clean out tank, pump and hose: ${String(rinse.times)} times with ${gallons(rinse.waterEach)} of water, or as the label says.`,
      rinsateWords(begin, nameOf(first)),
    );
  }
  // After a rinse the line holds its water.
  if ((line === "water" || rinse !== null) && line !== "runs-on" && lineVolume !== "unknown" && lineVolume.amount > 0n) {
    const behind = waterBehind.amount > 0n ? `Put ${gallons(waterBehind)} of clean water into the tank after the mix, which is less than pump and hose hold. ` : "";
    sentences.push(`${behind}Run out ${gallons(lineVolume)} of water until the mix comes.`);
  }
  if (carryOver !== null) sentences.push(`${gallons(carryOver.mix)} of ${last} come out of the hose first, at ${nameOf(carryOver.visitId)}.`);
  return sentences;
}

/** Where the water of a rinse goes, which each product's own label decides first. Common practice, from memory. */
function rinsateWords({ rinse, rinsedAt }: BeginOfMix, firstStop: string): string {
  const toShop = rinse !== null && rinsedAt === "first-stop" ? `The ${gallons(rinse.water)} of rinsate from ${firstStop} ride along to the shop's rinsate tank` : "The rinsate goes into the shop's rinsate tank";
  return `${toShop}. Where the labels of all that is in it allow that, it may go onto a site that they name, within their rates; never onto a hard surface or down a drain.`;
}

function afterSentences({ begin: { waterBehind }, end }: MixOfRoute, nameOf: StopName): readonly string[] {
  const { pushOut, left, isLetOutFirst, inLine, way, sitesWithoutWater, visitId, rinsateAboard } = end;
  const nothing = rinsateAboard.amount > 0n ? "No mix" : "Nothing";
  const sentences: string[] = [];
  if (pushOut.amount > 0n) {
    const empty = isLetOutFirst ? `Let the ${gallons(left)} that are left in the tank out into a container, then` : "When the tank is empty,";
    const more = waterBehind.amount > 0n ? `the other ${gallons(fromAmount("volume", pushOut.amount - waterBehind.amount))}` : gallons(pushOut);
    sentences.push(`${empty} put ${more} of clean water in and spray on at ${nameOf(visitId)} until the water comes.`);
  }
  const rest = [
    ...(left.amount > 0n ? [`${gallons(left)} in the tank`] : []),
    ...(inLine !== "unknown" && inLine.amount > 0n ? [`${gallons(inLine)} in pump and hose`] : []),
  ];
  if (rest.length === 0) sentences.push(inLine === "unknown" ? `${nothing} is left in the tank; what pump and hose keep is not known.` : `${nothing} is left in tank and lines.`);
  else sentences.push(`Left in tank and lines: ${listWords(rest)}.`);
  for (const { visitId: site, mix } of way.sites) sentences.push(`${sitesWithoutWater.includes(site) ? "With rinse water, which has to be taken along," : "With its rinse water"} ${gallons(mix)} of it may go on at ${nameOf(site)}, within the label's rate.`);
  if (way.toShop.amount > 0n) sentences.push(`${gallons(way.toShop)} of it go into the shop's rinsate tank: no stop has room for them within the label's rate.`);
  if (rinsateAboard.amount > 0n) sentences.push(`${gallons(rinsateAboard)} of rinsate are still aboard, for the shop's rinsate tank.`);
  return sentences;
}
