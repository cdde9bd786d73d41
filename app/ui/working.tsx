import { type Working, type WorkingInput } from "#domain/foundation/working";
import { Disclosure } from "#ui/disclosure";
import { KeyValueList } from "#ui/key-value-list";
import { Text } from "#ui/text";
import styles from "./working.module.css";

export interface WorkedOutProps {
  readonly working: Working;
  /** True where several stand below one another, so that each says of what it is. */
  readonly titled?: boolean;
}

/** How a number is worked out, to follow by hand: the rule, what it starts from, each step, what it comes to, and who says so. */
export function WorkedOut({ working, titled = false }: WorkedOutProps) {
  const { title, formula, inputs, steps, result, source } = working;
  return (
    <div className={styles.working} role="group" aria-label={title}>
      {titled && <Text tone="label">{title}</Text>}
      <p className={styles.formula}>{formula}</p>
      {inputs.length > 0 && (
        <KeyValueList pairs={inputs.map((input, index) => ({ key: keyOf(inputs, input, index), value: <InputWords input={input} /> }))} />
      )}
      {steps.length > 0 && (
        <ol className={styles.steps}>
          {steps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      )}
      <p>
        <strong>{result}</strong>
      </p>
      <Text size="small" tone="second">
        Source: {source}
      </Text>
    </div>
  );
}

/** Names are keys of the list; one that stands twice is counted. */
function keyOf(inputs: readonly WorkingInput[], { name }: WorkingInput, index: number): string {
  const before = inputs.slice(0, index).filter((other) => other.name === name).length;
  return before === 0 ? name : `${name} (${String(before + 1)})`;
}

function InputWords({ input: { figure, from } }: { readonly input: WorkingInput }) {
  if (from === undefined) return figure;
  return (
    <>
      {figure}{" "}
      <Text as="span" size="small" tone="second">
        {from}
      </Text>
    </>
  );
}

export interface HowWorkedOutProps {
  /** What the words to press name, as "13½ lb for A Front". Without it they say "this". */
  readonly of?: string;
  readonly workings: readonly Working[];
}

/**
 * Words to press that open one working or several. Works without scripts. On paper it stands as the reader left it:
 * what is open is printed, what is closed is left out with its words.
 */
export function HowWorkedOut({ of = "this", workings }: HowWorkedOutProps) {
  if (workings.length === 0) return null;
  return (
    <Disclosure name={`How ${of} is worked out`} onPaper="as-left">
      <div className={styles.workings}>
        {workings.map((working) => (
          <WorkedOut key={working.title} working={working} titled={workings.length > 1} />
        ))}
      </div>
    </Disclosure>
  );
}
