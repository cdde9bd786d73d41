"use client";

import { type ChangeEvent, type ReactNode, useState } from "react";
import { areOverArea, type LabelRates } from "#domain/label/label-facts";
import { formatRate } from "#domain/quantities/format-rate";
import { parseShare } from "#domain/quantities/share";
import { labelRangeWords, type NitrogenFacts, plannedNitrogen, readPlannedRate } from "#domain/scheduling/planned-rate";
import { type Choice, SelectField } from "#ui/select-field";
import { Stack } from "#ui/stack";
import { Text } from "#ui/text";
import { TextField } from "#ui/text-field";
import { useField } from "../../action-form.client";

/** A use of a product that may be planned, with what its label says to a rate. */
export interface ProductChoice {
  readonly key: string;
  readonly words: string;
  readonly rates: LabelRates;
  readonly facts: NitrogenFacts;
}

interface Props {
  /** The row's name in the form: `treatments.0`. */
  readonly name: string;
  readonly products: readonly ProductChoice[];
  /** Answers that stand beside the products. */
  readonly otherChoices?: readonly Choice[];
  /** What else the row asks. */
  readonly children?: ReactNode;
}

/** How forms ask for spot work; a rate in the finished spray says nothing of ground, so that it must be said there. */
export function spotShareWords(rates: LabelRates | null) {
  const label = "Spot work on";
  if (rates === null || areOverArea(rates)) return { label, optional: true, hint: "Share of the lawn, such as 5%. Empty: all over the lawn." } as const;
  return { label, hint: "This rate is for each gallon of spray: give the share of the lawn that gets it, such as 5%; 100% for all of it." } as const;
}

/** What the rate that stands there means on that share of the lawn, once both can be read. */
function rateWords({ rates, facts }: ProductChoice, typed: string, typedShare: string): string | undefined {
  const read = readPlannedRate("rate", typed, rates);
  if (!read.ok) return undefined;
  const where = read.value.standing === "within" ? "Within the label's range." : "Below the label's lowest rate: it may do little. Make sure that it is meant.";
  const share = typedShare.trim() === "" ? null : parseShare("spotShare", typedShare);
  if (share?.ok === false) return where;
  const nitrogen = plannedNitrogen(read.value.rate, facts, share?.value ?? null);
  if (!nitrogen.ok) return `${where} ${nitrogen.refusal.sentence}`;
  const { nitrogen: brought } = nitrogen.value;
  return brought.amount === 0n ? where : `${where} Brings ${formatRate(brought, "us")} of nitrogen${share === null ? "" : ", counted over the whole lawn"}.`;
}

/** One product at one rate for one reason. The rate starts empty: where in the label's range is for the planner to say. */
export function TreatmentRow({ name, products, otherChoices = [], children }: Props) {
  const product = useField(`${name}.productUse`);
  const rate = useField(`${name}.rate`);
  const spotShare = useField(`${name}.spotShare`);
  const reason = useField(`${name}.reason`);
  const [chosen, setChosen] = useState(product.defaultValue ?? "");
  const [typed, setTyped] = useState(rate.defaultValue ?? "");
  const [typedShare, setTypedShare] = useState(spotShare.defaultValue ?? "");
  const choice = products.find(({ key }) => key === chosen);
  const said = choice === undefined ? undefined : rateWords(choice, typed, typedShare);
  const onProduct = (event: ChangeEvent<HTMLSelectElement>) => {
    setChosen(event.target.value);
    void product.onChange(event);
  };
  const onRate = (event: ChangeEvent<HTMLInputElement>) => {
    setTyped(event.target.value);
    void rate.onChange(event);
  };
  const onShare = (event: ChangeEvent<HTMLInputElement>) => {
    setTypedShare(event.target.value);
    void spotShare.onChange(event);
  };
  return (
    <Stack gap={4}>
      <SelectField
        label="Product and use"
        chooseWords="Choose a product"
        choices={[...products.map(({ key, words }) => ({ value: key, word: words })), ...otherChoices]}
        {...product}
        onChange={onProduct}
      />
      <Stack gap={2}>
        <TextField
          label="Rate"
          hint={choice === undefined ? "As the label writes it, such as 2.5 lb/1,000 sq ft." : `The label's range is ${labelRangeWords(choice.rates)}.`}
          autoComplete="off"
          width="medium"
          {...rate}
          onChange={onRate}
        />
        <div role="status">{said !== undefined && <Text size="small">{said}</Text>}</div>
      </Stack>
      <TextField
        {...spotShareWords(choice?.rates ?? null)}
        autoComplete="off"
        width="short"
        {...spotShare}
        onChange={onShare}
      />
      <TextField label="Reason" hint="What it is for: feed, crabgrass, grubs." autoComplete="off" width="medium" {...reason} />
      {children}
    </Stack>
  );
}
