import { per1000SqFt } from "#domain/mixing/delivered";
import { type MixTicket } from "#domain/mixing/mix-ticket";
import { type ExactQuantity } from "#domain/quantities/exact-quantity";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { of, type Quantity } from "#domain/quantities/quantity";
import { Table } from "#ui/table";
import { Text } from "#ui/text";
import { Stack } from "#ui/stack";

type Mass = ExactQuantity<"mass"> | "not-stated";

const THOUSAND_SQ_FT = of("sq ft", 1000n);

/** The largest treated area of a lawn over the mixes: what its nutrients are spread over. */
function treatedOf({ mixes }: MixTicket, zoneId: string): Quantity<"area"> {
  const areas = mixes.flatMap((mix) => mix.lawns.filter((lawn) => lawn.zoneId === zoneId).map(({ treatedArea }) => treatedArea));
  return areas.reduce((most, area) => (area.amount > most.amount ? area : most), of("sq ft", 0n));
}

function perThousand(mass: Mass, area: Quantity<"area">): string {
  if (mass === "not-stated") return "not stated";
  if (area.amount === 0n || mass.exactAmount.numerator === 0n) return "none";
  return formatQuantityIn(per1000SqFt(mass, area, THOUSAND_SQ_FT), "lb", 2);
}

/** What the visit brings each lawn of nutrients, in pounds per 1,000 sq ft treated; undefined where it brings none. */
export function DeliveredNutrients({ ticket }: { readonly ticket: MixTicket }) {
  const fed = ticket.delivered.filter(({ nutrients }) =>
    [nutrients.nitrogen, nutrients.phosphate, nutrients.potash].some((mass) => mass.exactAmount.numerator > 0n) ||
    (nutrients.iron !== "not-stated" && nutrients.iron.exactAmount.numerator > 0n),
  );
  if (fed.length === 0) return <p>No nutrients go down.</p>;
  return (
    <Stack gap={2}>
      <Table
        caption="Nutrients per 1,000 sq ft treated"
        columns={[
          { id: "lawn", head: "Lawn" },
          { id: "nitrogen", head: "Nitrogen", align: "figure" },
          { id: "quick", head: "of it quick", align: "figure" },
          { id: "slow", head: "of it slow", align: "figure" },
          { id: "phosphate", head: "P2O5", align: "figure" },
          { id: "potash", head: "K2O", align: "figure" },
          { id: "iron", head: "Iron", align: "figure" },
        ]}
        rows={fed.map(({ zoneId, name, nutrients }) => {
          const area = treatedOf(ticket, zoneId);
          return {
            id: zoneId,
            cells: {
              lawn: name,
              nitrogen: perThousand(nutrients.nitrogen, area),
              quick: perThousand(nutrients.quickNitrogen, area),
              slow: perThousand(nutrients.slowNitrogen, area),
              phosphate: perThousand(nutrients.phosphate, area),
              potash: perThousand(nutrients.potash, area),
              iron: perThousand(nutrients.iron, area),
            },
          };
        })}
      />
      <Text size="small" tone="second">
        “Not stated” is what a label does not say; it is not nothing.
      </Text>
    </Stack>
  );
}
