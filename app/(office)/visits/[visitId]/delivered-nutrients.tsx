import { type MixTicket } from "#domain/mixing/mix-ticket";
import { type TicketQuestion } from "#domain/mixing/ticket-question";
import { activeWorkings } from "#domain/mixing/ticket-working-active";
import { deliveredWorkings, isFed, type ShownNutrient } from "#domain/mixing/ticket-working-delivered";
import { Table } from "#ui/table";
import { Text } from "#ui/text";
import { Stack } from "#ui/stack";
import { HowWorkedOut } from "#ui/working";

interface DeliveredProps {
  readonly question: TicketQuestion;
  readonly ticket: MixTicket;
}

const HEADS: readonly (readonly [ShownNutrient, string])[] = [
  ["nitrogen", "Nitrogen"],
  ["quickNitrogen", "of it quick"],
  ["slowNitrogen", "of it slow"],
  ["phosphate", "P2O5"],
  ["potash", "K2O"],
  ["iron", "Iron"],
];

/** What the visit brings each lawn of nutrients, in pounds per 1,000 sq ft treated, with the way to each figure. */
export function DeliveredNutrients({ question, ticket }: DeliveredProps) {
  const fed = ticket.delivered.filter(isFed);
  if (fed.length === 0) return <p>{isAnyUncounted(ticket) ? "No nutrients that can be counted go down." : "No nutrients go down."}</p>;
  const workings = deliveredWorkings(question, ticket);
  return (
    <Stack gap={2}>
      <Table
        caption="Nutrients per 1,000 sq ft treated"
        columns={[{ id: "lawn", head: "Lawn" }, ...HEADS.map(([id, head]) => ({ id, head, align: "figure" as const }))]}
        rows={fed.map(({ zoneId, name }) => ({
          id: zoneId,
          cells: { lawn: name, ...Object.fromEntries(workings.filter((one) => one.zoneId === zoneId).map(({ nutrient, words }) => [nutrient, words])) },
        }))}
      />
      <Text size="small" tone="second">
        “Not stated” is what a label does not say; it is not nothing.
      </Text>
      <div>
        {fed.map(({ zoneId, name }) => (
          <HowWorkedOut key={zoneId} of={`what ${name} gets of nutrients`} workings={workings.filter((one) => one.zoneId === zoneId && one.words !== "none").map(({ working }) => working)} />
        ))}
      </div>
    </Stack>
  );
}

function isAnyUncounted({ findings }: MixTicket): boolean {
  return findings.some(({ rule }) => rule === "nutrients-not-countable" || rule === "analysis-not-read");
}

/** What the visit brings each lawn of active ingredients, per acre treated, with those that can't be counted; nothing where no label names any. */
export function DeliveredActives({ question, ticket }: DeliveredProps) {
  const actives = activeWorkings(question, ticket);
  if (actives.length === 0) return null;
  return (
    <Stack gap={2}>
      <Table
        caption="Active ingredients on what is treated"
        columns={[
          { id: "lawn", head: "Lawn" },
          { id: "ingredient", head: "Ingredient" },
          { id: "amount", head: "Goes down", align: "figure" },
        ]}
        rows={actives.map(({ zoneId, lawnName, ingredient, words }) => ({ id: `${zoneId} ${ingredient}`, cells: { lawn: lawnName, ingredient, amount: words } }))}
      />
      <div>
        {actives.map(({ zoneId, lawnName, ingredient, counted, words, working }) => (
          <HowWorkedOut key={`${zoneId} ${ingredient}`} of={`${counted === "nothing" ? "" : `${words} of `}${ingredient} on ${lawnName}`} workings={[working]} />
        ))}
      </div>
    </Stack>
  );
}
