import { onSpotsWords } from "#domain/quantities/share";
import { fillsOf, MEASURED_BY_WORDS, type RecordedTreatment } from "#domain/register/record-content";
import { Code } from "#ui/code";
import { KeyValueList } from "#ui/key-value-list";
import { Quote } from "#ui/quote";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";

/** One product of a record: how much, how that was come by, from which lots, on which lawns. */
export function RecordedTreatmentBlock({ treatment }: { readonly treatment: RecordedTreatment }) {
  const { productName, precautions, lawns } = treatment;
  return (
    <Sheet>
      <Stack gap={4}>
        <h3>{productName}</h3>
        <KeyValueList pairs={pairsOf(treatment)} />
        <Table
          caption={`${productName} by lawn`}
          captionSpoken
          columns={[
            { id: "lawn", head: "Lawn" },
            { id: "treated", head: "Treated", align: "figure" },
            { id: "amount", head: "Amount", align: "figure" },
          ]}
          rows={lawns.map(({ zoneId, lawnName, treatedArea, amount }) => ({ id: zoneId, cells: { lawn: lawnName, treated: treatedArea.words, amount: amount.words } }))}
        />
        {precautions.map((words) => (
          <Quote key={words} source={`label of ${productName}`}>
            {words}
          </Quote>
        ))}
      </Stack>
    </Sheet>
  );
}

/** The ingredients by name; what nobody had read is not said to be none, and what could not be counted says so. */
function ingredientWords({ activeIngredients, notCountable = [] }: RecordedTreatment): string {
  if (notCountable === "not-read") return "not on file";
  if (activeIngredients.length === 0) return "none";
  return activeIngredients.map((name) => (notCountable.includes(name) ? `${name} (amount not countable)` : name)).join(", ");
}

function pairsOf(treatment: RecordedTreatment) {
  const { total, measuredBy, lots, epaRegistrationNumber, targets, equipmentName, plannedRate, spotShareBasisPoints, formulation } = treatment;
  const fills = fillsOf(treatment);
  return [
    { key: "Amount", value: <><strong>{total.words}</strong>, {MEASURED_BY_WORDS[measuredBy]}</> },
    { key: "Planned rate", value: `${plannedRate}${onSpotsWords(spotShareBasisPoints)}` },
    { key: "Lots", value: lots.length === 0 ? "none on file" : lots.map(({ number, amount }) => `${number}: ${amount.words}`).join(", ") },
    ...(fills.length === 0 ? [] : [{ key: fills.length === 1 ? "Fill" : "Fills", value: fills.map(({ number, sprayed: { words }, mixingPlace }) => `${words} of fill ${String(number)}, mixed at ${mixingPlace}`).join("; ") }]),
    { key: "Registration number", value: epaRegistrationNumber === null ? "none on file" : <Code>{epaRegistrationNumber}</Code> },
    { key: "Formulation", value: formulation },
    { key: "Active ingredients", value: ingredientWords(treatment) },
    { key: "Restricted use", value: treatment.isRestrictedUse ? "yes" : "no" },
    { key: "Service", value: treatment.serviceType },
    { key: "Against", value: targets.length === 0 ? "nothing named" : targets.join(", ") },
    { key: "Reason", value: treatment.reason },
    { key: "With", value: equipmentName },
  ];
}
