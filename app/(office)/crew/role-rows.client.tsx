"use client";

import { RadioRows, type RowChoice } from "#ui/choice-rows";
import { useField } from "../../action-form.client";

/** The roles to choose from, each with what it may do. */
export function RoleRows({ choices }: { readonly choices: readonly RowChoice[] }) {
  const { error, defaultValue, name, ...registered } = useField("role");
  return (
    <RadioRows
      label="May"
      name={name}
      choices={choices}
      registered={registered}
      error={error}
      {...(defaultValue === undefined ? {} : { defaultValue })}
    />
  );
}
