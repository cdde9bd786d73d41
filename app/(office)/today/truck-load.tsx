import Link from "next/link";
import { type TruckShown } from "#application/days/truck-shown";
import { type FillOfRoute, type MixOfRoute } from "#domain/mixing/tank-plan-answer";
import { fillPlaceWords, mixSentences, stopWords } from "#domain/mixing/tank-plan-words";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { isZero } from "#domain/quantities/quantity";
import { Disclosure } from "#ui/disclosure";
import { counted } from "./day-words";
import { toolWords } from "../visits/[visitId]/mix-words";
import styles from "./today.module.css";

function streetsOf({ stops }: TruckShown, visitIds: readonly string[]): string {
  return stops.filter(({ visit }) => visitIds.includes(visit.visitId)).map(({ position, visit }) => `${String(position)} ${visit.property.street}`).join(", ");
}

function nameOfStop({ stops }: TruckShown): (visitId: string) => string {
  const names = new Map(stops.map(({ position, visit }) => [visit.visitId, stopWords(position, visit.property.street)]));
  return (visitId) => names.get(visitId) ?? "a stop";
}

/** What a truck takes along and how its tanks are filled, behind one press each. */
export function TruckLoad({ truck }: { readonly truck: TruckShown }) {
  const { loading, tankPlan: { fills, mixes } } = truck;
  if (loading.products.length === 0) return null;
  return (
    <div className={styles.load}>
      {fills.length > 0 && (
        <Disclosure name={`${fills.length === 1 ? "Fill" : "Fills"} ${fills.map(({ letter }) => letter).join(", ")}`}>
          <ol className={styles.plainList}>
            {fills.map((fill) => (
              <OneFill key={fill.letter} fill={fill} truck={truck} />
            ))}
          </ol>
        </Disclosure>
      )}
      {mixes.length > 0 && (
        <Disclosure name="Rinses and what is left">
          <ol className={styles.plainList}>
            {mixes.map((mix) => (
              <OneMix key={`${mix.gear.equipmentId} ${mix.visitIds.join(" ")}`} mix={mix} truck={truck} />
            ))}
          </ol>
        </Disclosure>
      )}
      <Loading truck={truck} />
    </div>
  );
}

function OneFill({ fill, truck }: { readonly fill: FillOfRoute; readonly truck: TruckShown }) {
  return (
    <li>
      <p>
        <strong>
          {fill.letter}: {formatQuantity(fill.finished, "us")}
        </strong>{" "}
        in {fill.gear.name}, for {streetsOf(truck, fill.visitIds)}
      </p>
      <p>Fill it {fillPlaceWords(fill, nameOfStop(truck))}.</p>
      <ul className={styles.amounts}>
        {fill.products.map(({ productId, productName, amount, toolName, marks }) => (
          <li key={productId}>
            <strong>{formatQuantity(amount, "us")}</strong> {productName}: {toolWords(marks, toolName)}
          </li>
        ))}
        <li>
          <strong>{formatQuantity(fill.water, "us")}</strong> water in all
        </li>
      </ul>
      <ol className={styles.steps}>
        {fill.steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <p>
        <Link href={`/fills/record-fill?day=${truck.routeDayId}&fill=${fill.letter}&visits=${fill.visitIds.join(",")}`} prefetch={false}>
          Record fill {fill.letter}
        </Link>
      </p>
    </li>
  );
}

/** One mix of one tank: what is done before it and when it ends, and what is left of it. */
function OneMix({ mix, truck }: { readonly mix: MixOfRoute; readonly truck: TruckShown }) {
  return (
    <li>
      <p>
        <strong>{mix.gear.name}</strong>, {mix.name}, for {streetsOf(truck, mix.visitIds)}
      </p>
      <ul className={styles.amounts}>
        {mixSentences(mix, nameOfStop(truck)).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </li>
  );
}

function Loading({ truck }: { readonly truck: TruckShown }) {
  const { loading, truck: { payload, staysAboard }, tankPlan: { heaviest } } = truck;
  const where = heaviest.visitId === null ? "" : ` on the way to ${nameOfStop(truck)(heaviest.visitId)}`;
  return (
    <Disclosure name="Loading list">
      <ul className={styles.amounts}>
        {loading.products.map(({ productId, productName, words, needed, lotNumber }) => (
          <li key={`${productId} ${needed.dimension}`}>
            <strong>{words}</strong> {productName}
            {words === formatQuantity(needed, "us") ? "" : ` (${formatQuantity(needed, "us")} needed)`}
            {lotNumber === null ? "" : `, lot ${lotNumber}`}
          </li>
        ))}
        {!isZero(loading.water) && (
          <li>
            <strong>{formatQuantity(loading.water, "us")}</strong> water for all fills
          </li>
        )}
        {!isZero(loading.cleanWater) && (
          <li>
            <strong>{formatQuantity(loading.cleanWater, "us")}</strong> clean water to push mixes out
          </li>
        )}
        <li>
          <strong>{counted(loading.signs, "sign")}</strong> with {counted(loading.stakes, "stake")}, <strong>{counted(loading.notices, "notice")}</strong>
        </li>
        {[...loading.protectiveGear, ...loading.spillKit].map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p className={styles.small}>
        Products and what is in the tanks weigh at most {formatQuantity(loading.weightAboard, "us")}
        {where}; {payload === null ? "what the truck may carry is not on file" : `it may carry ${formatQuantity(payload, "us")}`},{" "}
        {staysAboard === "unknown" ? "with people and fixed gear, whose weight is not on file" : `with ${formatQuantity(staysAboard, "us")} of people and fixed gear`}.
      </p>
    </Disclosure>
  );
}
