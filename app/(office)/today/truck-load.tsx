import Link from "next/link";
import { type TruckShown } from "#application/days/truck-shown";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { isZero } from "#domain/quantities/quantity";
import { Disclosure } from "#ui/disclosure";
import { counted } from "./day-words";
import styles from "./today.module.css";

function streetsOf({ stops }: TruckShown, visitIds: readonly string[]): string {
  return stops.filter(({ visit }) => visitIds.includes(visit.visitId)).map(({ position, visit }) => `${String(position)} ${visit.property.street}`).join(", ");
}

/** What a truck takes along and how its tanks are filled, behind one press each. */
export function TruckLoad({ truck }: { readonly truck: TruckShown }) {
  const { loading, fills } = truck;
  if (loading.products.length === 0) return null;
  return (
    <div className={styles.load}>
      {fills.length > 0 && (
        <Disclosure name={`${fills.length === 1 ? "Fill" : "Fills"} ${fills.map(({ letter }) => letter).join(", ")}`}>
          <ol className={styles.plainList}>
            {fills.map((fill) => (
              <li key={fill.letter}>
                <p>
                  <strong>
                    {fill.letter}: {formatQuantity(fill.finished, "us")}
                  </strong>{" "}
                  in {fill.gear.name}, for {streetsOf(truck, fill.visitIds)}
                </p>
                <ul className={styles.amounts}>
                  {fill.products.map(({ productId, productName, amount }) => (
                    <li key={productId}>
                      <strong>{formatQuantity(amount, "us")}</strong> {productName}
                    </li>
                  ))}
                  <li>
                    <strong>{formatQuantity(fill.water, "us")}</strong> water
                  </li>
                </ul>
                <p>
                  <Link href={`/fills/record-fill?visits=${fill.visitIds.join(",")}`} prefetch={false}>
                    Record fill {fill.letter}
                  </Link>
                </p>
              </li>
            ))}
          </ol>
        </Disclosure>
      )}
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
          <li>
            <strong>{counted(loading.signs, "sign")}</strong> with {counted(loading.stakes, "stake")}, <strong>{counted(loading.notices, "notice")}</strong>
          </li>
          {[...loading.protectiveGear, ...loading.spillKit].map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
        <p className={styles.small}>Products and the fullest fill weigh {formatQuantity(loading.weightAboard, "us")}. Gear and people are not counted.</p>
      </Disclosure>
    </div>
  );
}
