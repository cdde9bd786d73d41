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
  const names = eachOnce(inputs.map(({ name }) => name));
  return (
    <div className={styles.working} role="group" aria-label={title}>
      {titled && <Text tone="label">{title}</Text>}
      <p className={styles.formula}>{formula}</p>
      {inputs.length > 0 && (
        <KeyValueList pairs={inputs.map((input, index) => ({ key: names[index] ?? input.name, value: <InputWords input={input} /> }))} />
      )}
      {steps.length > 0 && <WorkingSteps steps={steps} />}
      <p>
        <strong>{result}</strong>
      </p>
      <Text size="small" tone="second">
        Source: {source}
      </Text>
    </div>
  );
}

/** The steps of a working, counted, so that somebody who checks them on paper can say which one. */
export function WorkingSteps({ steps }: Pick<Working, "steps">) {
  const keys = eachOnce(steps);
  return (
    <ol className={styles.steps}>
      {steps.map((step, index) => (
        <li key={keys[index]}>{step}</li>
      ))}
    </ol>
  );
}

/** Each text once: one that stands before already is counted. */
function eachOnce(texts: readonly string[]): readonly string[] {
  return texts.map((text, index) => {
    const before = texts.slice(0, index).filter((other) => other === text).length;
    return before === 0 ? text : `${text} (${String(before + 1)})`;
  });
}

function InputWords({ input: { figure, from } }: { readonly input: WorkingInput }) {
  if (from === undefined) return figure;
  return (
    <>
      {figure}{" "}
      <Text as="span" size="small" tone="second">
        ({from})
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
  const keys = eachOnce(workings.map(({ title }) => title));
  return (
    <Disclosure name={`How ${of} is worked out`} onPaper="as-left">
      <div className={styles.workings}>
        {workings.map((working, index) => (
          <WorkedOut key={keys[index]} working={working} titled={workings.length > 1} />
        ))}
      </div>
    </Disclosure>
  );
}
