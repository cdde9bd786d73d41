import { type ComponentProps, type ReactNode } from "react";
import { RadioRows } from "#ui/choice-rows";
import { Field, type FieldWords, describeField } from "#ui/field";
import { type Choice, SelectBox } from "#ui/select-field";
import { Stack } from "#ui/stack";
import styles from "./field.module.css";

/** A unit that can be chosen. Always the whole unit: "fl oz" and "oz wt", never a bare ounce. */
export interface UnitChoice extends Choice {
  /** What the unit measures, where two are easily mixed up: "by volume". */
  readonly explained?: string;
}

export interface AmountFieldProps extends FieldWords {
  /** The number's name and, from react-hook-form, its registration. */
  readonly number: Omit<ComponentProps<"input">, "className" | "style" | "type"> & { readonly name: string };
  /** The unit's name and registration. Without a default value the unit must be chosen. */
  readonly unit: Omit<ComponentProps<"select">, "className" | "style"> & { readonly name: string };
  readonly units: readonly [UnitChoice, ...UnitChoice[]];
  readonly id?: string;
  /**
   * Set when "oz" was typed and nothing says which: the unit is then asked for as two rows, and neither is chosen
   * beforehand. The units must be those that the word could mean.
   */
  readonly askWhichOunce?: boolean;
}

/** A number with its unit. One unit stands there as a word; several are chosen. */
export function AmountField({
  number,
  unit,
  units,
  id = number.name,
  askWhichOunce = false,
  ...words
}: AmountFieldProps) {
  const { label, hint, error } = words;
  const [first, ...others] = units;
  const input = (
    <input
      inputMode="decimal"
      autoComplete="off"
      {...number}
      {...describeField(id, { hint, error })}
      type="text"
      className={styles.control}
      data-figure="true"
      id={id}
    />
  );
  if (askWhichOunce) return <AskWhichOunce {...words} id={id} unitName={unit.name} units={units} input={input} />;
  return (
    <Field {...words} id={id}>
      <div className={styles.joined}>
        {input}
        {others.length === 0 ? (
          <>
            <span className={styles.unit}>{first.word}</span>
            <input type="hidden" name={unit.name} value={first.value} />
          </>
        ) : (
          <SelectBox
            {...unit}
            aria-label={`${label}: unit`}
            choices={units.map((choice) => ({ value: choice.value, word: unitWords(choice) }))}
            {...(unit.defaultValue === undefined && unit.value === undefined ? { chooseWords: "Choose a unit" } : {})}
          />
        )}
      </div>
    </Field>
  );
}

function unitWords(choice: UnitChoice): string {
  return choice.explained === undefined ? choice.word : `${choice.word}, ${choice.explained}`;
}

interface AskWhichOunceProps extends FieldWords {
  readonly id: string;
  readonly unitName: string;
  readonly units: readonly UnitChoice[];
  readonly input: ReactNode;
}

function AskWhichOunce({ id, unitName, units, input, ...words }: AskWhichOunceProps) {
  return (
    <Stack gap={3}>
      <Field {...words} id={id}>
        <div className={styles.joined}>
          {input}
          <span className={styles.unit}>oz</span>
        </div>
      </Field>
      <RadioRows
        name={unitName}
        id={`${id}-ounce`}
        label="Which ounce?"
        hint="The two differ; the product’s own papers say which."
        choices={units.map((choice) => ({ value: choice.value, word: unitWords(choice) }))}
      />
    </Stack>
  );
}
