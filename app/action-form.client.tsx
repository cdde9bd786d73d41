"use client";

import { zodResolver } from "@hookform/resolvers/zod";
import { createContext, type ReactNode, startTransition, type SubmitEvent, useActionState, useContext, useEffect, useState } from "react";
import { type FieldErrors, type FieldValues, type UseFormReturn, get, useForm, useWatch } from "react-hook-form";
import { type z } from "zod";
import { Button } from "#ui/button";
import { ErrorSummary } from "#ui/error-summary.client";
import { Finding } from "#ui/finding";
import { Stack } from "#ui/stack";
import { TextAreaField } from "#ui/text-area-field";
import styles from "./action-form.module.css";
import { type FormAction, type FormState, nested, UNSENT } from "./form-state";
import { ReadBackStep } from "./read-back-step.client";

interface FormInHand {
  readonly form: UseFormReturn;
  readonly state: FormState;
  readonly values: Readonly<Record<string, string>>;
  readonly isPending: boolean;
}

const FormContext = createContext<FormInHand | undefined>(undefined);

function useFormInHand(): FormInHand {
  const inHand = useContext(FormContext);
  if (inHand === undefined) throw new Error("a form field stands outside its ActionForm");
  return inHand;
}

export interface ActionFormProps {
  readonly action: FormAction;
  /** The use case's own schema: the browser says at once what the server would say. */
  readonly schema: z.ZodType;
  /** What the fields hold at first, by dotted name. */
  readonly values?: Readonly<Record<string, string>>;
  /** What goes with the form and is not shown: ids, a version. */
  readonly fixed?: Readonly<Record<string, string>>;
  readonly submit: string;
  readonly whilePending: string;
  /** The words of the button that writes, for a form that is read back first. */
  readonly write?: { readonly submit: string; readonly whilePending: string };
  /** Beside the button: a way out. */
  readonly aside?: ReactNode;
  readonly children: ReactNode;
}

/**
 * A form over its use case's schema. Complaints stand at the fields and in one list above, nothing typed is
 * lost, and it works without scripts too: then the server's answer draws it again.
 */
export function ActionForm(props: ActionFormProps) {
  const { action, schema, fixed = {}, submit, whilePending, write, aside, children } = props;
  const [state, send, isPending] = useActionState(action, UNSENT);
  const values = { ...props.values, ...state.values };
  const form = useForm({
    resolver: zodResolver(schema as z.ZodType<FieldValues, FieldValues>),
    defaultValues: nested({ ...values, ...fixed }),
    // A complaint that appears on leaving a field would move the button from under the pointer and lose the press.
    mode: "onSubmit",
    // The list of complaints takes the focus and leads to each field.
    shouldFocusError: false,
  });
  // What the browser found holds until the server answers the next time.
  const [found, setFound] = useState<{ readonly answer: string; readonly attempt: number; readonly list: readonly Complaint[] }>();
  const complaints = found?.answer === state.answer ? found.list : complaintsOf(state);
  const attempt = found?.answer === state.answer ? `${state.answer}.${String(found.attempt)}` : state.answer;
  useEffect(() => {
    for (const [name, message] of Object.entries(state.fields ?? {})) form.setError(name, { message });
  }, [state, form]);
  // With scripts the browser checks first and the fields keep their text; without, the form goes out as it is.
  const onSubmit = (event: SubmitEvent<HTMLFormElement>) => {
    event.preventDefault();
    const data = new FormData(event.currentTarget);
    void form.handleSubmit(
      () => {
        startTransition(() => {
          send(data);
        });
      },
      (errors) => {
        setFound((before) => ({ answer: state.answer, attempt: (before?.attempt ?? 0) + 1, list: flatComplaints(errors) }));
      },
    )(event);
  };
  if (state.kind === "read-back" && write !== undefined) return <ReadBackStep state={state} send={send} write={write} />;
  return (
    <FormContext value={{ form, state, values, isPending }}>
      <form className={styles.form} action={send} onSubmit={onSubmit} noValidate>
        <Stack gap={5}>
          <ErrorSummary errors={complaints} attempt={attempt} />
          {state.kind === "done" && <ShownOnce state={state} />}
          {Object.entries(fixed).map(([name, value]) => (
            <input key={name} type="hidden" name={name} value={value} />
          ))}
          {children}
          <div>
            <Button kind="act" type="submit" pendingWords={isPending ? whilePending : undefined}>
              {submit}
            </Button>{" "}
            {aside}
          </div>
        </Stack>
      </form>
    </FormContext>
  );
}

interface Complaint {
  readonly fieldId: string;
  readonly sentence: string;
}

/** What the server complained of, field by field, or the refusal as a whole. */
function complaintsOf(state: FormState): readonly Complaint[] {
  if (state.kind !== "refused") return [];
  const fields = Object.entries(state.fields ?? {}).map(([fieldId, sentence]) => ({ fieldId, sentence }));
  return fields.length > 0 ? fields : [{ fieldId: "main", sentence: state.sentence ?? "" }];
}

/** What the browser complained of, in the order of the schema, under the fields' dotted names. */
function flatComplaints(errors: FieldErrors, prefix = ""): readonly Complaint[] {
  return Object.entries(errors).flatMap(([name, error]) => {
    if (error === undefined) return [];
    const fieldId = prefix + name;
    return typeof error.message === "string"
      ? [{ fieldId, sentence: error.message }]
      : flatComplaints(error as FieldErrors, `${fieldId}.`);
  });
}

/** What a field of this name needs to take part in its form: give it to any field of the design system. */
export function useField(name: string) {
  const { form, state, values } = useFormInHand();
  const complaint: unknown = get(form.formState.errors, `${name}.message`);
  const error = typeof complaint === "string" ? complaint : form.formState.isSubmitted ? undefined : state.fields?.[name];
  return { ...form.register(name), error, defaultValue: values[name] };
}

/** The same for a group of radio keys or rows, which take the registration apart from their name. */
export function useChoice(name: string) {
  const { name: fieldName, error, defaultValue, ...registered } = useField(name);
  return { name: fieldName, error, registered, ...(defaultValue === undefined ? {} : { defaultValue }) };
}

/** What a text field holds while it is typed, for a question that is asked only then. Without scripts the server's answer asks it. */
export function useTyped(name: string): string {
  const { form } = useFormInHand();
  const typed: unknown = useWatch({ control: form.control, name });
  return typeof typed === "string" ? typed : "";
}

export interface PressFormProps {
  readonly action: FormAction;
  readonly fixed: Readonly<Record<string, string>>;
  readonly kind?: "act" | "plain";
  readonly whilePending: string;
  readonly children: string;
}

/** One button that does one thing, with its answer under it: a refusal as a finding, a link to show once as text. */
export function PressForm({ action, fixed, kind = "plain", whilePending, children }: PressFormProps) {
  const [state, send, isPending] = useActionState(action, UNSENT);
  return (
    <form action={send}>
      <Stack gap={3}>
        {Object.entries(fixed).map(([name, value]) => (
          <input key={name} type="hidden" name={name} value={value} />
        ))}
        <div>
          <Button kind={kind} type="submit" pendingWords={isPending ? whilePending : undefined}>
            {children}
          </Button>
        </div>
        {state.kind === "refused" && (
          <div role="alert">
            <Finding level="hold" what={state.sentence} source="house" />
          </div>
        )}
        {state.kind === "done" && <ShownOnce state={state} />}
      </Stack>
    </form>
  );
}

/** A done form's sentence, and what it shows this once in a field that is easy to copy. */
export function ShownOnce({ state }: { readonly state: FormState }) {
  return (
    <div role="status">
      <p>{state.sentence}</p>
      {state.shownOnce !== undefined && <CopyLine text={state.shownOnce} />}
    </div>
  );
}

function CopyLine({ text }: { readonly text: string }) {
  return (
    <TextAreaField
      label="Link, shown this once"
      hint="Copy it and hand it over yourself: nothing is mailed."
      name="shown-once"
      readOnly
      rows={3}
      value={text}
      onFocus={(event) => {
        event.currentTarget.select();
      }}
    />
  );
}
